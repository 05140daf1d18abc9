package slipday.rules.seed;

import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Plants;
import slipday.garden.record.Subject;
import slipday.measure.Reasoned;
import slipday.rules.Words;

/**
 * Which plants of a planting were tasted clean on record, and how many stand.
 *
 * @param plants by their numbers
 * @param standing planted, less those gone; empty where nobody tells how many
 */
record TastedClean(NavigableSet<Integer> plants, Optional<Integer> standing) {
  static TastedClean of(GardenRecord record, Planting planting) {
    NavigableSet<Integer> clean = new TreeSet<>();
    record
        .every(Fact.Tasted.class)
        .filter(t -> !t.bitter())
        .forEach(t -> number(t.subject(), record, planting).ifPresent(clean::add));
    record
        .every(Fact.Tasted.class)
        .filter(Fact.Tasted::bitter)
        .forEach(t -> number(t.subject(), record, planting).ifPresent(clean::remove));
    int gone = 0;
    for (Fact.Lost lost : record.every(Fact.Lost.class).toList()) {
      if (isOf(lost.plants(), record, planting)) {
        gone += lost.count();
        lost.plants().plant().ifPresent(clean::remove);
      }
    }
    int lost = gone;
    return new TastedClean(
        clean, planted(record, planting).map(n -> Math.max(0, n - lost)).filter(n -> n > 0));
  }

  private static Optional<Integer> number(Subject subject, GardenRecord record, Planting planting) {
    Optional<Plants> plants =
        subject instanceof Fruit fruit
            ? Optional.of(fruit.seedParent())
            : subject instanceof Plants p ? Optional.of(p) : Optional.empty();
    return plants.filter(p -> isOf(p, record, planting)).flatMap(Plants::plant);
  }

  private static boolean isOf(Plants plants, GardenRecord record, Planting planting) {
    return plants.stand().year() == record.season()
        && plants.stand().name().equals(planting.name());
  }

  /** As many as went out on record, or else as the plan means. */
  private static Optional<Integer> planted(GardenRecord record, Planting planting) {
    int out =
        record
            .every(Fact.PlantedOut.class)
            .filter(p -> p.stand().year() == record.season())
            .filter(p -> p.stand().name().equals(planting.name()))
            .mapToInt(p -> p.plants().orElse(0))
            .sum();
    return out > 0 ? Optional.of(out) : planting.plants().map(Reasoned::value);
  }

  /** Whether each plant that stands was tasted. */
  boolean all() {
    return standing.filter(n -> plants.size() >= n).isPresent();
  }

  /** How far the tasting is; empty where it has not begun. */
  Optional<String> progress() {
    return plants.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Tasted clean so far: plant "
                + String.join(", ", plants.stream().map(String::valueOf).toList())
                + standing
                    .map(
                        n ->
                            "; "
                                + Words.count(n - plants.size(), "plant is", "plants are")
                                + " not tasted, or not clean")
                    .orElse("")
                + ".");
  }
}
