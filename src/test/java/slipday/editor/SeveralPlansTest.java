package slipday.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which plan a file belongs to, where that is more than one, changes, or no file was saved. */
class SeveralPlansTest {
  private static final String SHARED =
      """
      lot tern-f3
        of             tern-amber
      """;
  private static final String PLAN =
      """
      season 2026

      include "shared.season"

      site hill
        place          44 N, 72 W
        time zone      America/New_York
        last frost     18 May, 1 in 10 after 30 May
        first frost    27 September, 1 in 10 before 14 September

      line tern-amber
        is a           muskmelon
      """;
  private static final String WITHOUT = PLAN.replace("include \"shared.season\"\n", "");

  @TempDir Path folder;
  private Path shared;
  private Path plan;
  private Path other;
  private Editor editor;

  @BeforeEach
  void open() throws IOException {
    folder = folder.toRealPath();
    shared = Files.writeString(folder.resolve("shared.season"), SHARED);
    plan = Files.writeString(folder.resolve("a.season"), PLAN);
    other = Files.writeString(folder.resolve("b.season"), PLAN);
    editor = new Editor();
  }

  @AfterEach
  void nothingWentWrong() throws IOException {
    assertThat(editor.leave()).isTrue();
    editor.close();
    assertThat(editor.log).isEmpty();
  }

  private void close(Path path) {
    editor
        .server
        .getTextDocumentService()
        .didClose(new DidCloseTextDocumentParams(Editor.document(path)));
  }

  private static boolean has(List<Diagnostic> all, String words) {
    return all.stream().anyMatch(d -> d.getMessage().contains(words));
  }

  @Test
  void aSharedFileShowsWhatEveryOpenPlanFindsInIt() {
    editor.open(shared, SHARED + "\nlot amber-f3\n  of             gone-line\n");
    editor.open(plan, PLAN + "\nline gone-line\n  is a           muskmelon\n");
    editor.awaitNo(shared, "unknown-name");
    editor.open(other);
    editor.awaitRule(shared, "unknown-name");
    // What the first plan finds changes again, and does not wipe what the second has found.
    editor.type(plan, PLAN + "\nline gone-lime\n  is a           muskmelon\n");
    editor.await(shared, all -> has(all, "gone-lime"));
    assertThat(editor.await(shared, all -> all.size() > 1)).hasSize(2);
    close(plan);
    assertThat(editor.await(shared, all -> !has(all, "gone-lime"))).hasSize(1);
    close(other);
    close(shared);
    editor.await(shared, List::isEmpty);
  }

  @Test
  void anIncludeTypedInIsNoticedAtOnce() throws IOException {
    Files.delete(other);
    Files.writeString(plan, WITHOUT);
    editor.open(shared);
    editor.await(shared, all -> !all.isEmpty());
    editor.open(plan);
    editor.awaitNo(plan, "unknown-name");
    editor.type(plan, PLAN);
    editor.await(shared, List::isEmpty);
    editor.apply(
        Editor.get(
            editor
                .server
                .getTextDocumentService()
                .rename(
                    new RenameParams(
                        Editor.document(shared),
                        editor.at(shared, "tern-amber", false),
                        "tern-gold"))));
    assertThat(editor.text(shared)).contains("of             tern-gold");
    assertThat(editor.text(plan)).contains("line tern-gold");
    editor.type(plan, WITHOUT);
    editor.await(shared, all -> !all.isEmpty());
  }

  @Test
  void onlyWhatThePlanDeclaresIsOfferedForRenaming() {
    editor.open(plan);
    editor.open(shared);
    var offered =
        Editor.get(
            editor
                .server
                .getTextDocumentService()
                .prepareRename(
                    new PrepareRenameParams(
                        Editor.document(shared), editor.at(shared, "tern-amber", false))));
    assertThat(offered.getFirst().getStart()).isEqualTo(editor.at(shared, "tern-amber", false));
    assertThatThrownBy(
            () ->
                Editor.get(
                    editor
                        .server
                        .getTextDocumentService()
                        .prepareRename(
                            new PrepareRenameParams(
                                Editor.document(plan), editor.at(plan, "muskmelon", false)))))
        .hasMessageContaining("`muskmelon` is not declared in this plan");
  }

  @Test
  void aTextNeverSavedIsLookedThroughAsWell() {
    open("untitled:Untitled-1", WITHOUT.replace("muskmelon", "gone"));
    assertThat(editor.await("untitled:Untitled-1", all -> !all.isEmpty()).get(0).getMessage())
        .contains("gone");
    open("untitled:/garden%20plans/new.season", WITHOUT.replace("muskmelon", "gone"));
    editor.await("untitled:/garden%20plans/new.season", all -> has(all, "gone"));
  }

  @Test
  void whatIsNoFileIsPassedOver() {
    open("git:/garden/a.season?%7B%22ref%22%3A%22HEAD%22%7D", PLAN);
    open("no uri", PLAN);
    var hover =
        new HoverParams(
            new TextDocumentIdentifier("git:/garden/a.season?%7B%22ref%22%3A%22HEAD%22%7D"),
            new org.eclipse.lsp4j.Position(0, 0));
    assertThat(Editor.get(editor.server.getTextDocumentService().hover(hover))).isNull();
  }

  private void open(String uri, String text) {
    editor
        .server
        .getTextDocumentService()
        .didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "season", 1, text)));
  }
}
