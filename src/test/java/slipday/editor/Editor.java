package slipday.editor;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.Pipe;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesCapabilities;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;

/** An editor of the simplest kind, talking to the server over the wire's own bytes. */
final class Editor implements LanguageClient, AutoCloseable {
  private static final long PATIENCE_SECONDS = 60;

  final LanguageServer server;
  final List<String> log = new ArrayList<>();

  /** What the server asked to be told of. */
  final CompletableFuture<String> asked = new CompletableFuture<>();

  private final Map<String, List<Diagnostic>> told = new HashMap<>();
  private final Map<Path, String> texts = new HashMap<>();
  private final Thread serving;
  private final OutputStream toServer;
  private boolean goodbye;
  private int version;

  Editor() throws IOException {
    Pipe there = Pipe.open();
    Pipe back = Pipe.open();
    toServer = Channels.newOutputStream(there.sink());
    InputStream serverReads = Channels.newInputStream(there.source());
    OutputStream fromServer = Channels.newOutputStream(back.sink());
    InputStream editorReads = Channels.newInputStream(back.source());
    EditorServer ours =
        new EditorServer("test", () -> LocalDate.of(2029, 1, 1), fault -> log.add(fault));
    serving = new Thread(() -> goodbye = ours.serve(serverReads, fromServer), "server");
    serving.start();
    Launcher<LanguageServer> launcher =
        LSPLauncher.createClientLauncher(this, editorReads, toServer);
    launcher.startListening();
    server = launcher.getRemoteProxy();
    get(server.initialize(abilities()));
    server.initialized(new InitializedParams());
  }

  /** It looks after files, as most editors do. */
  private static InitializeParams abilities() {
    DidChangeWatchedFilesCapabilities files = new DidChangeWatchedFilesCapabilities();
    files.setDynamicRegistration(true);
    WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
    workspace.setDidChangeWatchedFiles(files);
    ClientCapabilities all = new ClientCapabilities();
    all.setWorkspace(workspace);
    InitializeParams params = new InitializeParams();
    params.setCapabilities(all);
    return params;
  }

  @Override
  public CompletableFuture<Void> registerCapability(RegistrationParams params) {
    params.getRegistrations().forEach(r -> asked.complete(r.getMethod()));
    return CompletableFuture.completedFuture(null);
  }

  static <T> T get(CompletableFuture<T> answer) {
    try {
      return answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (ExecutionException | TimeoutException e) {
      throw new IllegalStateException(e.getMessage(), e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  static TextDocumentIdentifier document(Path path) {
    return new TextDocumentIdentifier(path.toUri().toString());
  }

  void open(Path path) {
    try {
      open(path, Files.readString(path, UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void open(Path path, String text) {
    texts.put(path, text);
    server
        .getTextDocumentService()
        .didOpen(
            new DidOpenTextDocumentParams(
                new TextDocumentItem(path.toUri().toString(), "season", ++version, text)));
  }

  void type(Path path, String text) {
    texts.put(path, text);
    server
        .getTextDocumentService()
        .didChange(
            new DidChangeTextDocumentParams(
                new VersionedTextDocumentIdentifier(path.toUri().toString(), ++version),
                List.of(new TextDocumentContentChangeEvent(text))));
  }

  String text(Path path) {
    return texts.get(path);
  }

  /** The place of the first, or just behind it. */
  Position at(Path path, String words, boolean behind) {
    String text = texts.get(path);
    int offset = text.indexOf(words);
    if (offset < 0) {
      throw new IllegalArgumentException("no `" + words + "` in " + path);
    }
    offset += behind ? words.length() : 0;
    int line = (int) text.substring(0, offset).chars().filter(c -> c == '\n').count();
    return new Position(line, offset - (text.lastIndexOf('\n', offset - 1) + 1));
  }

  /** What is told of a file once it is as wanted. */
  List<Diagnostic> await(Path path, Predicate<List<Diagnostic>> wanted) {
    return await(path.toUri().toString(), wanted);
  }

  synchronized List<Diagnostic> await(String uri, Predicate<List<Diagnostic>> wanted) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (!told.containsKey(uri) || !wanted.test(told.get(uri))) {
      long left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
      if (left <= 0) {
        throw new AssertionError("still told of " + uri + ": " + told.get(uri) + "\n" + log);
      }
      try {
        wait(left);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException(e);
      }
    }
    return told.get(uri);
  }

  List<Diagnostic> awaitRule(Path path, String rule) {
    return await(path, all -> all.stream().anyMatch(d -> rule.equals(d.getCode().getLeft())));
  }

  List<Diagnostic> awaitNo(Path path, String rule) {
    return await(path, all -> all.stream().noneMatch(d -> rule.equals(d.getCode().getLeft())));
  }

  List<String> complete(Path path, Position at) {
    return items(path, at).stream().map(CompletionItem::getLabel).toList();
  }

  List<CompletionItem> items(Path path, Position at) {
    return get(server.getTextDocumentService().completion(new CompletionParams(document(path), at)))
        .getLeft();
  }

  List<InlayHint> hints(Path path) {
    Range all = new Range(new Position(0, 0), new Position(100_000, 0));
    return get(server.getTextDocumentService().inlayHint(new InlayHintParams(document(path), all)));
  }

  List<CodeAction> mends(Path path, Diagnostic of) {
    CodeActionContext context = new CodeActionContext(List.of(of));
    return get(
            server
                .getTextDocumentService()
                .codeAction(new CodeActionParams(document(path), of.getRange(), context)))
        .stream()
        .map(e -> e.getRight())
        .toList();
  }

  /** Applies an edit to the open texts and types the result. */
  void apply(WorkspaceEdit edit) {
    edit.getChanges()
        .forEach(
            (uri, edits) -> {
              Path path = Where.path(uri).orElseThrow();
              type(path, applied(texts.get(path), edits));
            });
  }

  static String applied(String text, List<TextEdit> edits) {
    List<TextEdit> last = new ArrayList<>(edits);
    last.sort(
        Comparator.comparing((TextEdit e) -> offset(text, e.getRange().getStart())).reversed());
    StringBuilder out = new StringBuilder(text);
    for (TextEdit e : last) {
      int from = offset(text, e.getRange().getStart());
      out.replace(from, offset(text, e.getRange().getEnd()), e.getNewText());
    }
    return out.toString();
  }

  private static int offset(String text, Position at) {
    int offset = 0;
    for (int line = 0; line < at.getLine(); line++) {
      offset = text.indexOf('\n', offset) + 1;
    }
    return offset + at.getCharacter();
  }

  @Override
  public synchronized void publishDiagnostics(PublishDiagnosticsParams params) {
    told.put(params.getUri(), params.getDiagnostics());
    notifyAll();
  }

  @Override
  public void telemetryEvent(Object object) {
    throw new AssertionError("no telemetry is sent");
  }

  @Override
  public void showMessage(MessageParams params) {
    log.add(params.getMessage());
  }

  @Override
  public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams params) {
    return CompletableFuture.completedFuture(new MessageActionItem(""));
  }

  @Override
  public void logMessage(MessageParams params) {
    log.add(params.getMessage());
  }

  /** Whether the server said goodbye as the protocol wants. */
  boolean leave() {
    get(server.shutdown());
    server.exit();
    try {
      serving.join(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return goodbye && !serving.isAlive();
  }

  @Override
  public void close() throws IOException {
    toServer.close();
  }
}
