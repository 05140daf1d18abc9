package slipday.garden.record;

import java.util.List;
import java.util.Optional;
import slipday.language.Bound;
import slipday.language.Entry;
import slipday.language.RecordClauses;
import slipday.measure.Reasoned;

/** Which diseases were seen on the plants that seed is of. */
final class DiseasesSeen {
  private final Entries entries;
  private final List<Entry> seen;

  DiseasesSeen(Entries entries) {
    this.entries = entries;
    this.seen = entries.all().stream().filter(e -> e.is(RecordClauses.DISEASE_SEEN)).toList();
  }

  /** On the parents of seed that was taken, or on their stands as a whole. */
  List<Reasoned<String>> on(Entry saved) {
    int year = entries.seasons().of(saved);
    return seen.stream()
        .filter(e -> entries.seasons().of(e.date()) == year && isOnParent(e.bound(), saved, year))
        .map(e -> new Reasoned<>(e.bound().words("what"), new At(e.date(), e.span()).reason()))
        .toList();
  }

  private boolean isOnParent(Bound seen, Entry saved, int year) {
    Bound taken = saved.bound();
    Optional<Bound> mating =
        entries.mating(Fruit.Key.of(year, taken.name("tag").text())).map(Entry::bound);
    if (mating.isEmpty()) {
      return isOn(seen, taken, "tag", "plant");
    }
    Bound made = mating.get();
    boolean other = made.has("fatherplant") || made.has("father");
    boolean onFather =
        other && isOn(seen, made, made.has("father") ? "father" : "planting", "fatherplant");
    return onFather || isOn(seen, made, "planting", "plant");
  }

  /** Where one of the two names no plant, it may be any. */
  private static boolean isOn(Bound seen, Bound other, String stand, String plant) {
    boolean anyPlant = !seen.has("plant") || !other.has(plant);
    return seen.name("planting").text().equals(other.name(stand).text())
        && (anyPlant || seen.count("plant") == other.count(plant));
  }
}
