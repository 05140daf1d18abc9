package slipday.editor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import slipday.garden.Crop;
import slipday.garden.CropBook;
import slipday.garden.OtherName;
import slipday.garden.Species;
import slipday.language.Clause;
import slipday.language.Clauses;
import slipday.language.Declaration;
import slipday.language.Kind;
import slipday.language.Shape;
import slipday.measure.Unit;
import slipday.rules.RuleCatalog;
import slipday.source.Source;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** What can be typed next, out of the one table of clauses and the names there are. */
final class Completions {
  private static final List<Symbols.Group> NAMED =
      List.of(
          Symbols.Group.LINE,
          Symbols.Group.SEED,
          Symbols.Group.BED,
          Symbols.Group.CROP,
          Symbols.Group.OTHER);

  private final Study study;
  private final Supplier<CropBook> crops;
  private final Typed typed;
  private final Range replaced;
  private final Map<String, CompletionItem> items = new LinkedHashMap<>();

  /**
   * @param crops asked only where a crop can stand
   */
  Completions(Study study, Supplier<CropBook> crops, Typed typed, Source source, int at) {
    this.study = study;
    this.crops = crops;
    this.typed = typed;
    this.replaced = new Range(Where.position(source, typed.start()), Where.position(source, at));
  }

  List<CompletionItem> items() {
    if (typed.silent()) {
      return List.of();
    }
    List<Word> words = typed.words();
    if (words.isEmpty()) {
      beginnings();
    } else if (words.get(0).is(WordKind.DATE)) {
      dated(words);
    } else {
      rest(words);
    }
    return List.copyOf(items.values());
  }

  private void beginnings() {
    typed.under().ifPresent(d -> Clauses.under(d).forEach(c -> clause(c, 0)));
    if (!typed.indented() || typed.under().isEmpty()) {
      for (Declaration d : Declaration.values()) {
        add(d.word(), CompletionItemKind.Keyword, "declaration", d.sentence(), d.example());
      }
    }
  }

  private void dated(List<Word> words) {
    List<Word> rest = words.subList(1, words.size());
    Optional<Clause> verb = rest.isEmpty() ? Optional.empty() : Clauses.dated(rest);
    if (verb.isPresent()) {
      values(verb.get().shape(), words, 1 + verb.get().words().size());
    }
    Clauses.all().stream()
        .filter(Clause::isDated)
        .filter(c -> goesOn(c, rest))
        .forEach(c -> clause(c, rest.size()));
  }

  private void rest(List<Word> words) {
    Optional<Declaration> declaration =
        words.get(0).is(WordKind.WORD) ? Declaration.named(words.get(0).text()) : Optional.empty();
    if (declaration.isPresent()) {
      values(declaration.get().head(), words, 1);
      return;
    }
    typed
        .under()
        .ifPresent(
            d -> {
              Clauses.of(d, words).ifPresent(c -> values(c.shape(), words, c.words().size()));
              Clauses.under(d).stream()
                  .filter(c -> goesOn(c, words))
                  .forEach(c -> clause(c, words.size()));
            });
  }

  /** Whether a clause of several words begins with the words there are, and has more. */
  private static boolean goesOn(Clause clause, List<Word> words) {
    if (clause.words().size() <= words.size()) {
      return false;
    }
    for (int i = 0; i < words.size(); i++) {
      if (!words.get(i).isWord(clause.words().get(i))) {
        return false;
      }
    }
    return true;
  }

  private void clause(Clause clause, int wordsThere) {
    List<String> left = clause.words().subList(wordsThere, clause.words().size());
    CompletionItemKind kind =
        clause.isDated() ? CompletionItemKind.Event : CompletionItemKind.Property;
    add(String.join(" ", left), kind, "clause", clause.sentence(), clause.example());
  }

  private void values(Shape shape, List<Word> words, int from) {
    Shape.Next next = shape.next(words, from);
    boolean figure =
        !words.isEmpty() && words.size() > from && words.get(words.size() - 1).is(WordKind.NUMBER);
    for (String word : next.words()) {
      if (Character.isLetter(word.charAt(0))) {
        add(word, CompletionItemKind.EnumMember, "", "", "");
      }
    }
    for (Kind kind : next.kinds()) {
      if (figure) {
        kind.unitWords().forEach(this::unit);
      }
      names(kind);
    }
  }

  private void unit(String word) {
    String measures =
        Unit.named(word).map(u -> "measures " + u.dimension().withArticle()).orElse("");
    add(word, CompletionItemKind.Unit, measures, "", "");
  }

  private void names(Kind kind) {
    switch (kind) {
      case NAME -> {
        for (Symbols.Group group : NAMED) {
          declared(group, group.name().toLowerCase(Locale.ROOT));
        }
      }
      case BED -> declared(Symbols.Group.BED, "bed");
      case LINE -> declared(Symbols.Group.LINE, "line");
      case LOT, PLANTING -> declared(Symbols.Group.SEED, kind.word());
      case TAG -> {
        declared(Symbols.Group.TAG, "tag");
        declared(Symbols.Group.SEED, "planting or lot");
      }
      case CROP -> crops.get().crops().values().forEach(this::crop);
      case SPECIES -> crops.get().species().values().forEach(this::species);
      case RULE ->
          RuleCatalog.rules()
              .forEach(r -> add(r.id(), CompletionItemKind.EnumMember, "rule", "", ""));
      default -> {
        // Figures and texts are the gardener's own.
      }
    }
  }

  private void declared(Symbols.Group group, String what) {
    for (String name : study.symbols().declared(group)) {
      Symbols.Symbol symbol = new Symbols.Symbol(group, name.toLowerCase(Locale.ROOT), 0);
      String line =
          study
              .symbols()
              .declaration(symbol)
              .map(o -> o.span().source().line(o.span().line()).strip())
              .orElse("");
      add(name, CompletionItemKind.Variable, what, "", line);
    }
  }

  private void crop(Crop crop) {
    add(crop.name(), CompletionItemKind.Class, "crop, " + crop.species().latin(), "", "");
    for (OtherName other : crop.otherNames()) {
      if (other.alone()) {
        add(other.word(), CompletionItemKind.Class, "another word for " + crop.name(), "", "");
      }
    }
  }

  private void species(Species species) {
    add(species.name(), CompletionItemKind.Class, "species, " + species.latin(), "", "");
  }

  private void add(
      String word, CompletionItemKind kind, String detail, String sentence, String example) {
    CompletionItem item = new CompletionItem(word);
    item.setKind(kind);
    if (!detail.isEmpty()) {
      item.setDetail(detail);
    }
    List<String> parts = new ArrayList<>();
    if (!sentence.isEmpty()) {
      parts.add(sentence);
    }
    if (!example.isEmpty()) {
      parts.add("```season\n" + example + "\n```");
    }
    if (!parts.isEmpty()) {
      item.setDocumentation(new MarkupContent(MarkupKind.MARKDOWN, String.join("\n\n", parts)));
    }
    item.setTextEdit(Either.forLeft(new TextEdit(replaced, word)));
    items.putIfAbsent(word, item);
  }
}
