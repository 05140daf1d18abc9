package slipday.rules.record;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.garden.record.Stand;
import slipday.rules.Reporter;
import slipday.rules.Words;
import slipday.season.Season;

/** Seed taken into a lot that matters this season: taken in it, or grown in it. */
record Taking(Fact.Saved saved) {
  /** In the order of their dates. */
  static Stream<Taking> of(Season season) {
    Set<String> grown = new HashSet<>();
    season.garden().plantings().forEach(p -> grown.add(p.lot().name()));
    int year = season.garden().season().year();
    return season
        .garden()
        .record()
        .every(Fact.Saved.class)
        .map(Taking::new)
        .filter(t -> t.stand().year() == year || grown.contains(t.lot().name()));
  }

  Lot lot() {
    return saved.lot();
  }

  /** The marked fruit; empty for unmarked ones. */
  Optional<Fruit> fruit() {
    return saved.from() instanceof Fruit fruit ? Optional.of(fruit) : Optional.empty();
  }

  /** The plant that bore the fruit, or its stand where nobody told the plant. */
  Plants mother() {
    return saved.from() instanceof Fruit fruit ? fruit.seedParent() : (Plants) saved.from();
  }

  /** The mother, and the plant that gave the pollen where it is another. */
  Stream<Plants> parents() {
    return Stream.concat(Stream.of(mother()), fruit().map(Fruit::pollenParent).stream()).distinct();
  }

  Stand stand() {
    return mother().stand();
  }

  /** The planting it grew in; empty for one of an earlier season. */
  Optional<Planting> planting() {
    return stand().planting();
  }

  /** The fruit by its tag, or the plants it is of, in backticks. */
  String name() {
    return Words.tick(fruit().map(Fruit::tag).orElseGet(() -> mother().toString()));
  }

  /** A finding at the line that says its seed was taken, about its lot. */
  Reporter.Report report(Reporter reporter, boolean grave, String message) {
    Reporter.Report report =
        reporter.report(grave, lot(), saved.span(), message).concerns(lot().line());
    planting()
        .ifPresent(
            p -> {
              report.concerns(p);
              p.bed().ifPresent(report::concerns);
            });
    return report.marked("seed taken here");
  }
}
