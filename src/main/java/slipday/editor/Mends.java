package slipday.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import slipday.finding.Finding;
import slipday.finding.Mend;

/** The mends of a finding as an editor takes them. */
final class Mends {
  private final Study study;

  Mends(Study study) {
    this.study = study;
  }

  /** None that was made for a text typed over since: its places may be others' by now. */
  List<CodeAction> of(Finding finding) {
    List<CodeAction> actions = new ArrayList<>();
    for (Mend mend : finding.mends()) {
      if (mend.edits().stream().allMatch(this::stillFits)) {
        actions.add(action(finding, mend));
      }
    }
    if (actions.size() == 1) {
      actions.get(0).setIsPreferred(true);
    }
    return actions;
  }

  private boolean stillFits(Mend.Edit edit) {
    return study
        .source(Where.path(edit.place().source()))
        .filter(now -> now.text().equals(edit.place().source().text()))
        .isPresent();
  }

  private static CodeAction action(Finding finding, Mend mend) {
    WorkspaceEdit whole = new WorkspaceEdit();
    for (Mend.Edit edit : mend.edits()) {
      Path path = Where.path(edit.place().source());
      whole
          .getChanges()
          .computeIfAbsent(Where.uri(path), uri -> new ArrayList<>())
          .add(new TextEdit(Where.range(edit.place()), edit.text()));
    }
    CodeAction action = new CodeAction(mend.label());
    action.setKind(CodeActionKind.QuickFix);
    action.setDiagnostics(List.of(Diagnostics.of(finding)));
    action.setEdit(whole);
    return action;
  }
}
