package slipday.editor;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import slipday.rules.RulePage;

/**
 * Asks a server of its own everything an editor asks, of the plans on the pages of the rules, and
 * leaves the answers aside: classes are loaded and code is compiled before a gardener waits for it.
 */
final class Rehearsal {
  private static final AtomicBoolean BEGUN = new AtomicBoolean();
  private static final Duration LONGEST = Duration.ofSeconds(10);
  private static final List<String> HEADINGS = List.of("Example", "Instead");

  private final Workspace workspace;
  private final Documents documents;

  private Rehearsal() {
    EditorServer server = new EditorServer("rehearsal", () -> LocalDate.MAX, fault -> {});
    this.workspace = server.workspace();
    this.documents = new Documents(workspace, server);
  }

  /** Once in a process, on a thread of its own. */
  static void begin() {
    if (BEGUN.compareAndSet(false, true)) {
      Thread thread = new Thread(() -> new Rehearsal().run(), "rehearsal");
      thread.setDaemon(true);
      thread.start();
    }
  }

  private void run() {
    long begun = System.nanoTime();
    for (RulePage page : RulePage.all()) {
      if (System.nanoTime() - begun > LONGEST.toNanos()) {
        return;
      }
      HEADINGS.stream()
          .flatMap(heading -> page.examples(heading).stream())
          .filter(example -> example.kind().equals("season"))
          .forEach(example -> plan(page.id(), example.plan()));
    }
  }

  private void plan(String name, String text) {
    Path path = Path.of("rehearsal", name + ".season").toAbsolutePath();
    TextDocumentIdentifier plan = new TextDocumentIdentifier(Where.uri(path));
    documents.didOpen(
        new DidOpenTextDocumentParams(new TextDocumentItem(plan.getUri(), "season", 1, text)));
    workspace.reckon(path);
    List<String> lines = text.lines().toList();
    Range whole = new Range(new Position(0, 0), new Position(lines.size(), 0));
    documents.inlayHint(new InlayHintParams(plan, whole)).join();
    documents.semanticTokensFull(new SemanticTokensParams(plan)).join();
    documents.documentSymbol(new DocumentSymbolParams(plan)).join();
    documents.foldingRange(new FoldingRangeRequestParams(plan)).join();
    documents.formatting(new DocumentFormattingParams(plan, new FormattingOptions(2, true))).join();
    documents
        .codeAction(new CodeActionParams(plan, whole, new CodeActionContext(List.of())))
        .join();
    for (int i = 0; i < lines.size(); i++) {
      line(plan, i, lines.get(i));
    }
    documents.didClose(new DidCloseTextDocumentParams(plan));
  }

  private void line(TextDocumentIdentifier plan, int line, String text) {
    int begins = (int) text.chars().takeWhile(c -> c == ' ').count();
    Stream.of(begins, text.lastIndexOf(' ') + 1)
        .map(column -> new Position(line, column))
        .forEach(
            place -> {
              documents.hover(new HoverParams(plan, place)).join();
              documents.completion(new CompletionParams(plan, place)).join();
              documents
                  .references(new ReferenceParams(plan, place, new ReferenceContext(true)))
                  .join();
            });
  }
}
