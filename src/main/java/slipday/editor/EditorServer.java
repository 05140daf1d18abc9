package slipday.editor;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionOptions;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesRegistrationOptions;
import org.eclipse.lsp4j.FileSystemWatcher;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.RenameOptions;
import org.eclipse.lsp4j.SaveOptions;
import org.eclipse.lsp4j.SemanticTokensLegend;
import org.eclipse.lsp4j.SemanticTokensWithRegistrationOptions;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.TextDocumentSyncOptions;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;
import slipday.finding.Finding;

/** The language server (LSP 3.17) over a pair of streams. */
public final class EditorServer implements LanguageServer {
  private final Workspace workspace;
  private final Documents documents;
  private final String version;
  private final Consumer<String> messages;
  private Optional<Publisher> publisher = Optional.empty();
  private Optional<Future<Void>> listening = Optional.empty();
  private boolean shutDown;
  private boolean refreshesHints;
  private boolean watchesFiles;
  private Optional<LanguageClient> client = Optional.empty();

  /**
   * @param version told to the editor
   * @param today the last day that can have been
   * @param messages takes what goes wrong, for a log
   */
  public EditorServer(String version, Supplier<LocalDate> today, Consumer<String> messages) {
    this.version = version;
    this.messages = messages;
    this.workspace = new Workspace(today);
    this.documents = new Documents(workspace, this);
  }

  /**
   * Serves one editor until it goes.
   *
   * @return whether it said goodbye as the protocol wants
   */
  public boolean serve(InputStream in, OutputStream out) {
    Launcher<LanguageClient> launcher = LSPLauncher.createServerLauncher(this, in, out);
    connect(launcher.getRemoteProxy());
    Future<Void> listens = launcher.startListening();
    listening = Optional.of(listens);
    try {
      listens.get();
    } catch (CancellationException e) {
      // It was told to go.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      log(e);
    }
    publisher.ifPresent(Publisher::close);
    return shutDown;
  }

  void connect(LanguageClient to) {
    client = Optional.of(to);
    publisher = Optional.of(new Publisher(workspace, to, this::log, this::refresh));
  }

  private void refresh() {
    if (refreshesHints) {
      client.ifPresent(
          c -> {
            Future<Void> unused = c.refreshInlayHints();
          });
    }
  }

  Workspace workspace() {
    return workspace;
  }

  void changed() {
    publisher.ifPresent(Publisher::changed);
  }

  /** The plans whose findings are told. */
  Set<Path> plansTold() {
    return publisher.map(Publisher::plans).orElse(Set.of());
  }

  List<Finding> told(Path plan) {
    return publisher.map(p -> p.told(plan)).orElse(List.of());
  }

  void log(Throwable fault) {
    StringWriter text = new StringWriter();
    fault.printStackTrace(new PrintWriter(text));
    messages.accept(text.toString());
  }

  @Override
  public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
    Optional<WorkspaceClientCapabilities> workspace =
        Optional.ofNullable(params.getCapabilities())
            .flatMap(c -> Optional.ofNullable(c.getWorkspace()));
    watchesFiles =
        workspace
            .flatMap(w -> Optional.ofNullable(w.getDidChangeWatchedFiles()))
            .map(f -> Boolean.TRUE.equals(f.getDynamicRegistration()))
            .orElse(false);
    refreshesHints =
        workspace
            .flatMap(w -> Optional.ofNullable(w.getInlayHint()))
            .map(h -> Boolean.TRUE.equals(h.getRefreshSupport()))
            .orElse(false);
    ServerCapabilities can = new ServerCapabilities();
    TextDocumentSyncOptions sync = new TextDocumentSyncOptions();
    sync.setOpenClose(true);
    sync.setChange(TextDocumentSyncKind.Full);
    sync.setSave(new SaveOptions(false));
    can.setTextDocumentSync(sync);
    can.setCompletionProvider(new CompletionOptions(false, List.of(" ")));
    can.setHoverProvider(true);
    can.setDefinitionProvider(true);
    can.setReferencesProvider(true);
    can.setRenameProvider(new RenameOptions(true));
    can.setDocumentSymbolProvider(true);
    can.setFoldingRangeProvider(true);
    can.setDocumentFormattingProvider(true);
    can.setInlayHintProvider(true);
    can.setCodeActionProvider(new CodeActionOptions(List.of(CodeActionKind.QuickFix)));
    can.setSemanticTokensProvider(
        new SemanticTokensWithRegistrationOptions(
            new SemanticTokensLegend(Tokens.TYPES, List.of()), true));
    return CompletableFuture.completedFuture(
        new InitializeResult(can, new ServerInfo("slipday", version)));
  }

  /** The editor is ready; what it will ask first is still some seconds off. */
  @Override
  public void initialized(InitializedParams params) {
    if (watchesFiles) {
      client.ifPresent(EditorServer::watchFiles);
    }
    Rehearsal.begin();
  }

  /** A line added to the record by a command, or pulled by git, is to show without a key struck. */
  private static void watchFiles(LanguageClient client) {
    var watched =
        new DidChangeWatchedFilesRegistrationOptions(
            List.of(new FileSystemWatcher(Either.forLeft("**/*.{season,csv,dly}"))));
    Registration files = new Registration("files", "workspace/didChangeWatchedFiles", watched);
    Future<Void> unused = client.registerCapability(new RegistrationParams(List.of(files)));
  }

  @Override
  @SuppressWarnings("NullAway") // the protocol's answer is null
  public CompletableFuture<Object> shutdown() {
    shutDown = true;
    return CompletableFuture.completedFuture(null);
  }

  @Override
  public void exit() {
    publisher.ifPresent(Publisher::close);
    listening.ifPresent(l -> l.cancel(true));
  }

  @Override
  public TextDocumentService getTextDocumentService() {
    return documents;
  }

  @Override
  public WorkspaceService getWorkspaceService() {
    return new WorkspaceService() {
      @Override
      public void didChangeConfiguration(DidChangeConfigurationParams params) {
        // There is nothing to set.
      }

      @Override
      public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
        workspace.refresh();
        changed();
      }
    };
  }
}
