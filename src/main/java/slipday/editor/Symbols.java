package slipday.editor;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.BoundFile;
import slipday.language.Clause;
import slipday.language.Declaration;
import slipday.language.Entry;
import slipday.language.Kind;
import slipday.language.KindClauses;
import slipday.language.RecordClauses;
import slipday.language.Shape;
import slipday.language.Value;
import slipday.source.Span;

/** Every name in the files of a plan: where it is declared and where it is used. */
final class Symbols {
  /** What names are names of. A planting goes by its lot's name unless told otherwise. */
  enum Group {
    LINE,
    SEED,
    BED,
    CROP,
    SPECIES,
    TAG,
    RULE,
    OTHER
  }

  /** A name; tags are apart from season to season. */
  record Symbol(Group group, String name, int season) {}

  record Occurrence(Symbol symbol, Span span, boolean declares) {}

  private static final Set<Declaration> OTHERS =
      EnumSet.of(
          Declaration.SITE,
          Declaration.NEIGHBOUR,
          Declaration.VOLUNTEER,
          Declaration.CROSS,
          Declaration.SOURCE,
          Declaration.TRAIT);

  private static final int SOUTHERN_START = 7;

  private final List<Occurrence> all = new ArrayList<>();
  private final Map<Symbol, List<Occurrence>> bySymbol = new HashMap<>();
  private final List<Span> undecided = new ArrayList<>();
  private final List<Tag> tags = new ArrayList<>();
  private final boolean acrossNewYear;

  /** What may be a tag, or the name of a planting or lot. */
  private record Tag(Value.Name name, int season) {}

  private Symbols(boolean acrossNewYear) {
    this.acrossNewYear = acrossNewYear;
  }

  /**
   * @param acrossNewYear whether the garden's seasons cross the new year
   */
  static Symbols of(Iterable<BoundFile> files, boolean acrossNewYear) {
    Symbols symbols = new Symbols(acrossNewYear);
    for (BoundFile file : files) {
      file.blocks().forEach(symbols::block);
      file.entries().forEach(symbols::entry);
    }
    symbols.decide();
    symbols.all.sort(Comparator.comparing(Occurrence::span));
    return symbols;
  }

  private void block(Block block) {
    block.head().ifPresent(head -> head(block.declaration(), head));
    block.clauses().forEach(this::clause);
  }

  private void head(Declaration declaration, Bound head) {
    switch (declaration) {
      case BED -> declared(Group.BED, head);
      case LINE -> declared(Group.LINE, head);
      case CROP -> declared(Group.CROP, head);
      case SPECIES -> declared(Group.SPECIES, head);
      case LOT -> declared(Group.SEED, head);
      case GROW -> {
        used(declaration.head(), head, 0);
        head.find("as").ifPresent(as -> add(Group.SEED, as, 0, true));
      }
      default -> {
        if (OTHERS.contains(declaration)) {
          declared(Group.OTHER, head);
        } else {
          used(declaration.head(), head, 0);
        }
      }
    }
  }

  private void declared(Group group, Bound head) {
    head.find("name").ifPresent(name -> add(group, name, 0, true));
  }

  private void clause(BoundClause clause) {
    if (clause.clause().equals(KindClauses.ALSO_CALLED)) {
      add(Group.CROP, clause.bound().name("word"), 0, true);
    } else {
      used(clause.clause().shape(), clause.bound(), 0);
    }
  }

  private void entry(Entry entry) {
    int season =
        entry.bound().find("season").stream()
            .map(Value.SeasonName.class::cast)
            .mapToInt(Value.SeasonName::year)
            .findFirst()
            .orElseGet(() -> season(entry.date()));
    Clause clause = entry.clause();
    used(clause.shape(), entry.bound(), season);
    if (clause.equals(RecordClauses.SAVED)) {
      entry.bound().find("lot").ifPresent(lot -> add(Group.SEED, lot, 0, true));
    }
    if (isPollination(clause)) {
      entry.bound().find("tag").ifPresent(tag -> add(Group.TAG, tag, season, true));
    }
  }

  /** Southern seasons begin in the middle of the year they are called by. */
  private int season(LocalDate date) {
    boolean second = acrossNewYear && date.getMonthValue() < SOUTHERN_START;
    return date.getYear() - (second ? 1 : 0);
  }

  private static boolean isPollination(Clause clause) {
    return clause.equals(RecordClauses.SELFED)
        || clause.equals(RecordClauses.SIBBED)
        || clause.equals(RecordClauses.CROSSED)
        || clause.equals(RecordClauses.BACKCROSSED);
  }

  private void used(Shape shape, Bound bound, int season) {
    shape.kinds().forEach((name, kind) -> bound.all(name).forEach(v -> used(kind, v, season)));
  }

  private void used(Kind kind, Value value, int season) {
    switch (kind) {
      case BED -> add(Group.BED, value, 0, false);
      case LINE -> add(Group.LINE, value, 0, false);
      case LOT, PLANTING -> add(Group.SEED, value, 0, false);
      case CROP -> add(Group.CROP, value, 0, false);
      case SPECIES -> add(Group.SPECIES, value, 0, false);
      case TAG -> tags.add(new Tag((Value.Name) value, season));
      case RULE -> add(Group.RULE, value, 0, false);
      case NAME -> undecided.add(value.span());
      default -> {
        // not a name
      }
    }
  }

  private void add(Group group, Value value, int season, boolean declares) {
    if (value instanceof Value.Name name) {
      add(new Symbol(group, folded(name.text()), season), name.span(), declares);
    }
  }

  private void add(Symbol symbol, Span span, boolean declares) {
    List<Occurrence> same = bySymbol.computeIfAbsent(symbol, s -> new ArrayList<>());
    // A saved lot and a tag are used and declared by one word.
    same.removeIf(o -> o.span().equals(span) && declares);
    all.removeIf(o -> declares && o.symbol().equals(symbol) && o.span().equals(span));
    if (same.stream().noneMatch(o -> o.span().equals(span))) {
      Occurrence occurrence = new Occurrence(symbol, span, declares);
      same.add(occurrence);
      all.add(occurrence);
    }
  }

  /** Where any name may stand, it is whatever is declared by it. */
  private void decide() {
    for (Tag tag : tags) {
      boolean seed = declaration(new Symbol(Group.SEED, folded(tag.name.text()), 0)).isPresent();
      add(seed ? Group.SEED : Group.TAG, tag.name, seed ? 0 : tag.season, false);
    }
    for (Span span : undecided) {
      String name = folded(span.text());
      for (Group group : Group.values()) {
        Symbol symbol = new Symbol(group, name, 0);
        if (declaration(symbol).isPresent()) {
          add(symbol, span, false);
          break;
        }
      }
    }
  }

  private static String folded(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** The name at an offset; just behind its last letter counts as at it. */
  Optional<Occurrence> at(String file, int offset) {
    return all.stream()
        .filter(o -> o.span().source().name().equals(file))
        .filter(o -> o.span().start() <= offset && offset <= o.span().end())
        .findFirst();
  }

  List<Occurrence> of(Symbol symbol) {
    return bySymbol.getOrDefault(symbol, List.of());
  }

  /** The first declaration; a tag that no pollination bears has none. */
  Optional<Occurrence> declaration(Symbol symbol) {
    return of(symbol).stream().filter(Occurrence::declares).findFirst();
  }

  /** Names declared of a group, as written. */
  List<String> declared(Group group) {
    return all.stream()
        .filter(o -> o.declares() && o.symbol().group() == group)
        .map(o -> o.span().text())
        .distinct()
        .toList();
  }

  List<Occurrence> in(String file) {
    return all.stream().filter(o -> o.span().source().name().equals(file)).toList();
  }
}
