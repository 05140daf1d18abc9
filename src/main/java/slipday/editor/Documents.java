package slipday.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameDefaultBehavior;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.services.TextDocumentService;
import slipday.finding.Finding;
import slipday.format.Formatter;
import slipday.source.Source;
import slipday.syntax.SeasonFile;

/** What an editor asks about a document. A fault of ours costs one answer, never the server. */
final class Documents implements TextDocumentService {
  private final Workspace workspace;
  private final EditorServer server;

  Documents(Workspace workspace, EditorServer server) {
    this.workspace = workspace;
    this.server = server;
  }

  @Override
  public void didOpen(DidOpenTextDocumentParams params) {
    String text = params.getTextDocument().getText();
    changed(params.getTextDocument().getUri(), path -> workspace.open(path, text));
  }

  /** A document that is no file is none of ours, and is passed over. */
  private void changed(String uri, Consumer<Path> change) {
    Where.path(uri)
        .ifPresent(
            path -> {
              change.accept(path);
              server.changed();
            });
  }

  /** Whole texts are asked for, so the last is the text as it stands. */
  @Override
  public void didChange(DidChangeTextDocumentParams params) {
    changed(
        params.getTextDocument().getUri(),
        path -> params.getContentChanges().forEach(c -> workspace.change(path, c.getText())));
  }

  @Override
  public void didClose(DidCloseTextDocumentParams params) {
    changed(params.getTextDocument().getUri(), workspace::close);
  }

  @Override
  public void didSave(DidSaveTextDocumentParams params) {
    workspace.refresh();
    server.changed();
  }

  /** A document in its plan. */
  private record Asked(Path path, Study study, SeasonFile file) {
    Source source() {
      return file.source();
    }
  }

  private Optional<Asked> asked(Path path) {
    Study study = workspace.study(path);
    return study.file(path).map(file -> new Asked(path, study, file));
  }

  private <T> CompletableFuture<T> answer(
      TextDocumentIdentifier document, T nothing, Function<Asked, T> answer) {
    try {
      return CompletableFuture.completedFuture(
          Where.path(document.getUri()).flatMap(this::asked).map(answer).orElse(nothing));
    } catch (ResponseErrorException e) {
      return CompletableFuture.failedFuture(e);
    } catch (RuntimeException | StackOverflowError e) {
      server.log(e);
      return CompletableFuture.completedFuture(nothing);
    }
  }

  private <T> CompletableFuture<T> answerAt(
      TextDocumentIdentifier document,
      Position position,
      T nothing,
      BiFunction<Asked, Integer, T> answer) {
    return answer(
        document, nothing, asked -> answer.apply(asked, Where.offset(asked.source(), position)));
  }

  @Override
  public CompletableFuture<Either<List<CompletionItem>, CompletionList>> completion(
      CompletionParams params) {
    return answerAt(
        params.getTextDocument(),
        params.getPosition(),
        Either.forLeft(List.of()),
        (asked, offset) -> {
          Typed typed = Typed.at(asked.file, offset);
          Completions completions =
              new Completions(asked.study, asked.study::crops, typed, asked.source(), offset);
          return Either.forLeft(completions.items());
        });
  }

  @Override
  @SuppressWarnings("NullAway") // the protocol's way of saying that there is nothing
  public CompletableFuture<Hover> hover(HoverParams params) {
    CompletableFuture<Optional<Hover>> hover =
        answerAt(
            params.getTextDocument(),
            params.getPosition(),
            Optional.<Hover>empty(),
            (asked, offset) ->
                new Hovers(workspace, asked.study, asked.path).at(asked.source(), offset));
    return hover.thenApply(h -> h.orElse(null));
  }

  @Override
  public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>>
      definition(DefinitionParams params) {
    return answerAt(
        params.getTextDocument(),
        params.getPosition(),
        Either.forLeft(List.of()),
        (asked, offset) ->
            Either.forLeft(
                asked.study.symbols().at(asked.source().name(), offset).stream()
                    .flatMap(o -> asked.study.symbols().declaration(o.symbol()).stream())
                    .map(o -> Where.location(o.span()))
                    .toList()));
  }

  @Override
  public CompletableFuture<List<? extends Location>> references(ReferenceParams params) {
    boolean declarations = params.getContext().isIncludeDeclaration();
    return answerAt(
        params.getTextDocument(),
        params.getPosition(),
        List.of(),
        (asked, offset) ->
            asked.study.symbols().at(asked.source().name(), offset).stream()
                .flatMap(o -> asked.study.symbols().of(o.symbol()).stream())
                .filter(o -> declarations || !o.declares())
                .map(o -> Where.location(o.span()))
                .toList());
  }

  @Override
  @SuppressWarnings("NullAway") // the protocol's way of saying that nothing can be renamed here
  public CompletableFuture<Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>>
      prepareRename(PrepareRenameParams params) {
    return answerAt(
            params.getTextDocument(),
            params.getPosition(),
            Optional.<Symbols.Occurrence>empty(),
            (asked, offset) -> {
              Symbols symbols = asked.study.symbols();
              Optional<Symbols.Occurrence> found = symbols.at(asked.source().name(), offset);
              found
                  .flatMap(o -> new Renaming(symbols).refusal(o.symbol()))
                  .ifPresent(Documents::refuse);
              return found;
            })
        .thenApply(
            found ->
                found
                    .map(
                        o ->
                            Either3
                                .<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>forFirst(
                                    Where.range(o.span())))
                    .orElse(null));
  }

  @Override
  public CompletableFuture<WorkspaceEdit> rename(RenameParams params) {
    return answerAt(
        params.getTextDocument(),
        params.getPosition(),
        new WorkspaceEdit(),
        (asked, offset) -> {
          Symbols symbols = asked.study.symbols();
          Symbols.Symbol symbol =
              symbols
                  .at(asked.source().name(), offset)
                  .map(Symbols.Occurrence::symbol)
                  .orElseThrow(() -> refused("There is no name here."));
          Renaming renaming = new Renaming(symbols);
          renaming.refusal(symbol, params.getNewName()).ifPresent(Documents::refuse);
          return renaming.edit(symbol, params.getNewName());
        });
  }

  private static void refuse(String why) {
    throw refused(why);
  }

  private static ResponseErrorException refused(String why) {
    return new ResponseErrorException(
        new ResponseError(ResponseErrorCode.RequestFailed, why, null));
  }

  @Override
  public CompletableFuture<List<Either<SymbolInformation, DocumentSymbol>>> documentSymbol(
      DocumentSymbolParams params) {
    return answer(
        params.getTextDocument(),
        List.of(),
        asked -> {
          List<Either<SymbolInformation, DocumentSymbol>> symbols = new ArrayList<>();
          Optional.ofNullable(asked.study.said().get(asked.path))
              .ifPresent(f -> Outline.symbols(f).forEach(s -> symbols.add(Either.forRight(s))));
          return symbols;
        });
  }

  @Override
  public CompletableFuture<List<FoldingRange>> foldingRange(FoldingRangeRequestParams params) {
    return answer(params.getTextDocument(), List.of(), asked -> Outline.folds(asked.file));
  }

  @Override
  public CompletableFuture<SemanticTokens> semanticTokensFull(SemanticTokensParams params) {
    return answer(
        params.getTextDocument(),
        new SemanticTokens(List.of()),
        asked ->
            new SemanticTokens(
                Tokens.of(asked.file, asked.study.symbols().in(asked.source().name()))));
  }

  /** As the command does it: a file with a mistaken line is left as it is. */
  @Override
  public CompletableFuture<List<? extends TextEdit>> formatting(DocumentFormattingParams params) {
    return answer(
        params.getTextDocument(),
        List.of(),
        asked -> {
          var formatted = Formatter.format(asked.file);
          Source source = asked.source();
          boolean mistaken = !formatted.findings().isEmpty();
          if (mistaken || formatted.value().equals(source.text())) {
            return List.of();
          }
          Range whole =
              new Range(new Position(0, 0), Where.position(source, source.text().length()));
          return List.of(new TextEdit(whole, formatted.value()));
        });
  }

  @Override
  public CompletableFuture<List<InlayHint>> inlayHint(InlayHintParams params) {
    Range wanted = params.getRange();
    return answer(
        params.getTextDocument(),
        List.of(),
        asked ->
            workspace
                .reckoned(asked.study.plan())
                .map(r -> hints(new Hints(r), asked, wanted))
                .orElse(List.of()));
  }

  private static List<InlayHint> hints(Hints hints, Asked asked, Range wanted) {
    int first = wanted.getStart().getLine() + 1;
    int last = wanted.getEnd().getLine() + 1;
    return hints
        .of(asked.study.blocks(asked.path), s -> s.line() >= first && s.line() <= last)
        .stream()
        .sorted(Comparator.comparingInt(h -> h.getPosition().getLine()))
        .toList();
  }

  @Override
  public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams params) {
    return answer(
        params.getTextDocument(),
        List.of(),
        asked -> {
          // Of a file that several plans take in, each may have its own to tell.
          Set<CodeAction> actions = new LinkedHashSet<>();
          for (Path plan : server.plansTold()) {
            Mends mends = new Mends(workspace.study(plan));
            for (Finding finding : server.told(plan)) {
              if (concerns(finding, asked.source(), params.getRange())) {
                actions.addAll(mends.of(finding));
              }
            }
          }
          return actions.stream().map(Either::<Command, CodeAction>forRight).toList();
        });
  }

  private static boolean concerns(Finding finding, Source source, Range range) {
    boolean here =
        finding.place().filter(l -> l.span().source().name().equals(source.name())).isPresent();
    Range place = Diagnostics.range(finding);
    return here
        && !before(place.getEnd(), range.getStart())
        && !before(range.getEnd(), place.getStart());
  }

  private static boolean before(Position a, Position b) {
    return a.getLine() != b.getLine()
        ? a.getLine() < b.getLine()
        : a.getCharacter() < b.getCharacter();
  }
}
