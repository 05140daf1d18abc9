package slipday.editor;

import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import slipday.app.LargePlan;
import slipday.source.Source;
import slipday.syntax.SeasonParser;

/**
 * Answers to an editor while a plan is typed: a key is struck in a plan, and the answer asked for
 * that the editor asks for next. Each includes taking in the whole text anew. Beside it what nobody
 * can be quicker than: reading the lines of the same text, and the way to and fro over a wire of an
 * answer that says nothing.
 */
@State(Scope.Benchmark)
public abstract class EditorAnswers {
  /** A gardener looks at the plan before typing, ms. */
  private static final long BEFORE_THE_FIRST_KEY = 5000;

  @Param("2000")
  public int lines;

  @Param("60")
  public int plantings;

  private String text = "";
  private int keys;
  private Path folder = Path.of("");
  private TextDocumentIdentifier plan = new TextDocumentIdentifier();
  private TextDocumentService documents = new Quiet();
  private final Told told = new Told();
  private Position crop = new Position();
  private Position clause = new Position();
  private Position lot = new Position();

  @Setup
  public void open() throws IOException, InterruptedException {
    text = LargePlan.of(lines, plantings);
    folder = Files.createTempDirectory("editor-bench");
    Path file = Files.writeString(folder.resolve("plan.season"), text);
    plan = new TextDocumentIdentifier(file.toUri().toString());
    crop = at("is a           muskmelon", 16);
    clause = at("flowers        cover the chosen", 3);
    lot = at("grow lot-7", 7);
    EditorServer server = new EditorServer("bench", () -> LocalDate.of(2026, 12, 31), m -> {});
    server.connect(told);
    server.initialize(new InitializeParams()).join();
    server.initialized(new InitializedParams());
    documents = server.getTextDocumentService();
    documents.didOpen(
        new DidOpenTextDocumentParams(new TextDocumentItem(plan.getUri(), "season", 1, text)));
    while (documents.inlayHint(new InlayHintParams(plan, screen())).join().isEmpty()) {
      Thread.sleep(50);
    }
    Thread.sleep(BEFORE_THE_FIRST_KEY);
  }

  /** A client whose server knows no document, so that each answer is empty. */
  @State(Scope.Benchmark)
  public static class Wire {
    private LanguageServer server = new EditorServer("bench", LocalDate::now, m -> {});

    @Setup
    public void lay() throws IOException {
      server = wire();
    }

    @TearDown
    public void cut() {
      server.shutdown().join();
      server.exit();
    }
  }

  private static LanguageServer wire() throws IOException {
    PipedInputStream toServer = new PipedInputStream(1 << 16);
    PipedInputStream toClient = new PipedInputStream(1 << 16);
    PipedOutputStream fromClient = new PipedOutputStream(toServer);
    PipedOutputStream fromServer = new PipedOutputStream(toClient);
    daemon(() -> new EditorServer("bench", LocalDate::now, m -> {}).serve(toServer, fromServer))
        .start();
    var launcher =
        LSPLauncher.createClientLauncher(
            new Silent(),
            toClient,
            fromClient,
            Executors.newCachedThreadPool(EditorAnswers::daemon),
            m -> m);
    launcher.startListening();
    return launcher.getRemoteProxy();
  }

  private static Thread daemon(Runnable task) {
    Thread thread = new Thread(task);
    thread.setDaemon(true);
    return thread;
  }

  @TearDown(Level.Trial)
  public void leave() throws IOException {
    Files.deleteIfExists(folder.resolve("plan.season"));
    Files.deleteIfExists(folder);
  }

  private Position at(String words, int column) {
    int offset = text.indexOf(words);
    long line = text.substring(0, offset).lines().count() - 1;
    int start = text.lastIndexOf('\n', offset) + 1;
    return new Position((int) line + (offset == start ? 1 : 0), offset - start + column);
  }

  private Range screen() {
    return new Range(lot, new Position(lot.getLine() + 60, 0));
  }

  /** One more seed in a lot, or one fewer: a key in the middle of the text. */
  private void strike() {
    keys++;
    String typed = text.replaceFirst("seeds          140", "seeds          " + (140 + keys % 9));
    change(typed);
  }

  private void change(String typed) {
    documents.didChange(
        new DidChangeTextDocumentParams(
            new VersionedTextDocumentIdentifier(plan.getUri(), keys),
            List.of(new TextDocumentContentChangeEvent(typed))));
  }

  @Benchmark
  public Object hoverOnACrop() {
    strike();
    return documents.hover(new HoverParams(plan, crop)).join();
  }

  @Benchmark
  public Object hoverOnAClause() {
    strike();
    return documents.hover(new HoverParams(plan, clause)).join();
  }

  @Benchmark
  public Object hoverOnAPlanting() {
    strike();
    return documents.hover(new HoverParams(plan, lot)).join();
  }

  @Benchmark
  public Object completeACrop() {
    strike();
    return documents.completion(new CompletionParams(plan, crop)).join();
  }

  @Benchmark
  public Object inlayHintsOfAScreen() {
    strike();
    return documents.inlayHint(new InlayHintParams(plan, screen())).join();
  }

  @Benchmark
  public Object semanticTokens() {
    strike();
    return documents.semanticTokensFull(new SemanticTokensParams(plan)).join();
  }

  @Benchmark
  public Object renameALot() {
    strike();
    return documents.rename(new RenameParams(plan, lot, "amber-of-the-hill")).join();
  }

  @Benchmark
  public Object mendsOfALine() {
    strike();
    Range here = new Range(clause, clause);
    return documents
        .codeAction(new CodeActionParams(plan, here, new CodeActionContext(List.of())))
        .join();
  }

  /** Until the season's findings are told again, the pause after a key among it. */
  @Benchmark
  public Object findingsOfTheSeason() throws InterruptedException {
    told.latest.drainPermits();
    strike();
    told.latest.acquire();
    return told;
  }

  /** A slip of the pen, until it is told. */
  @Benchmark
  public Object findingsOfNames() throws InterruptedException {
    told.latest.drainPermits();
    keys++;
    change(text.replaceFirst("of             line-3", "of             lime-" + keys));
    told.latest.acquire();
    return told;
  }

  /** The floor: the lines of the text, and nothing made of them. */
  @Benchmark
  public Object bareLines() {
    keys++;
    String typed = text.replaceFirst("seeds          140", "seeds          " + (140 + keys % 9));
    return SeasonParser.parse(Source.of("plan.season", typed));
  }

  /** The floor: lsp4j's way to and fro. */
  @Benchmark
  public Object emptyRoundTrip(Wire wire) {
    TextDocumentIdentifier nowhere = new TextDocumentIdentifier("file:///nowhere/none.season");
    return wire.server
        .getTextDocumentService()
        .semanticTokensFull(new SemanticTokensParams(nowhere))
        .join();
  }

  private static final class Quiet implements TextDocumentService {
    @Override
    public void didOpen(DidOpenTextDocumentParams params) {}

    @Override
    public void didChange(DidChangeTextDocumentParams params) {}

    @Override
    public void didClose(org.eclipse.lsp4j.DidCloseTextDocumentParams params) {}

    @Override
    public void didSave(org.eclipse.lsp4j.DidSaveTextDocumentParams params) {}
  }

  /** Counts what is told of a plan. */
  private static final class Told extends Silent {
    private final Semaphore latest = new Semaphore(0);

    @Override
    public void publishDiagnostics(PublishDiagnosticsParams diagnostics) {
      latest.release();
    }
  }

  private static class Silent implements LanguageClient {
    @Override
    public void telemetryEvent(Object object) {}

    @Override
    public void publishDiagnostics(PublishDiagnosticsParams diagnostics) {}

    @Override
    public void showMessage(MessageParams message) {}

    @Override
    public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams p) {
      return CompletableFuture.completedFuture(null);
    }

    @Override
    public void logMessage(MessageParams message) {}
  }
}
