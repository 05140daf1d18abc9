package slipday.garden.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import slipday.garden.SeasonYear;
import slipday.language.Bound;
import slipday.language.BoundFile;
import slipday.language.Clause;
import slipday.language.Entry;
import slipday.language.RecordClauses;
import slipday.syntax.Word;

/**
 * The lines of the record in an order of their own, by date and wording, so that the order they
 * stand in means nothing; what is written twice is one fact.
 */
final class Entries {
  private static final Set<Clause> MATINGS =
      Set.of(
          RecordClauses.SELFED,
          RecordClauses.SIBBED,
          RecordClauses.CROSSED,
          RecordClauses.BACKCROSSED);

  private final List<Entry> all;
  private final Set<String> mistaken = new HashSet<>();
  private final Seasons seasons;
  private final Map<Fruit.Key, Entry> matings = new HashMap<>();
  private final Map<StandKey, String> sownAs = new HashMap<>();
  private final Map<String, List<Entry>> saved = new TreeMap<>();

  private record StandKey(int year, String name) {}

  Entries(BoundFile said, SeasonYear season) {
    this.seasons = new Seasons(season);
    Map<String, Entry> byWording = new HashMap<>();
    said.entries().forEach(e -> byWording.putIfAbsent(e.wording(), e));
    // The wording begins with the date.
    this.all = List.copyOf(new TreeMap<>(byWording).values());
    said.unread().forEach(l -> l.words().stream().map(Word::text).forEach(mistaken::add));
    all.forEach(this::file);
  }

  private void file(Entry entry) {
    Bound bound = entry.bound();
    if (isMating(entry)) {
      Fruit.Key key = Fruit.Key.of(seasons.of(entry.date()), bound.name("tag").text());
      matings.putIfAbsent(key, entry);
    } else if (entry.is(RecordClauses.SOWED) && bound.has("as")) {
      StandKey key = new StandKey(seasons.of(entry.date()), bound.name("as").text());
      sownAs.putIfAbsent(key, bound.name("planting").text());
    } else if (entry.is(RecordClauses.SAVED)) {
      saved.computeIfAbsent(bound.name("lot").text(), n -> new ArrayList<>()).add(entry);
    }
  }

  static boolean isMating(Entry entry) {
    return MATINGS.contains(entry.clause());
  }

  List<Entry> all() {
    return all;
  }

  Seasons seasons() {
    return seasons;
  }

  /** Whether a word stands in a line that is mistaken, and may be what is missed. */
  boolean isInMistakenLine(String word) {
    return mistaken.contains(word);
  }

  /** The line that put a tag on a flower. */
  Optional<Entry> mating(Fruit.Key key) {
    return Optional.ofNullable(matings.get(key));
  }

  /** The lot sown under a name of its own in a season. */
  Optional<String> sownAs(int year, String name) {
    return Optional.ofNullable(sownAs.get(new StandKey(year, name)));
  }

  /** The lots that seed was saved into, with their lines. */
  Map<String, List<Entry>> saved() {
    return saved;
  }
}
