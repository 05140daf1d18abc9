package slipday.season.chore;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.measure.Reasoned;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.MarkedFruit;
import slipday.season.PlantingSeason;

/** Ripe fruit, by the signs of its type. */
final class FruitChores {
  private FruitChores() {}

  static List<Chore> of(SeasonIndex season, PlantingSeason planting) {
    Optional<Reasoned<DateSpread>> ripe = planting.date(Event.RIPE);
    Optional<LocalDate> first = ripe.map(Reasoned::value).flatMap(s -> s.early().or(s::usual));
    if (ripe.isEmpty() || first.isEmpty()) {
      return List.of();
    }
    DateSpread spread = ripe.get().value();
    LocalDate late = spread.late().or(spread::usual).orElse(first.get());
    LocalDate last = season.lastRipe(planting.planting(), late);
    String name = planting.name();
    Draft draft =
        new Draft(ChoreKind.LOOK_AT_FRUIT, name, "Look at the fruit of " + name)
            .says(age(season, planting.planting()))
            .says(slip(season, planting.planting()))
            .says(signs(planting.planting()))
            .says(forSeed(season, planting.planting()))
            .says(marked(season, planting.planting()))
            .says(hanging(season, planting.planting()))
            .cautions(Cautions.ofFruit(season, planting.planting()));
    return List.of(draft.due(new ChoreTime.Days(first.get(), last), ripe.get().reason()));
  }

  /** The tags that hang, each with its days. */
  private static Optional<String> hanging(SeasonIndex season, Planting planting) {
    List<String> fruits = season.hanging(planting).stream().map(FruitChores::hanging).toList();
    return fruits.isEmpty()
        ? Optional.empty()
        : Optional.of("By the record these hang: " + Words.list(fruits) + ".");
  }

  private static String hanging(MarkedFruit fruit) {
    DateSpread spread = fruit.expected().value();
    String expected =
        spread.early().map(d -> ", from " + Words.day(d)).orElse("")
            + spread.usual().map(d -> ", usually " + Words.day(d)).orElse("");
    return fruit.tag() + ", pollinated " + Words.day(fruit.pollinated()) + expected;
  }

  private static Optional<String> slip(SeasonIndex season, Planting planting) {
    String slip = planting.facts().valueOr(CropFacts.SLIP, "");
    if (slip.equals("full")) {
      return Optional.of(
          "Ripe at full slip: it parts from the vine at a light push, and the scar is clean.");
    }
    if (slip.equals("half")) {
      return Optional.of(
          "Ripe at half slip: a crack runs half round the stem. At full slip it is past its best.");
    }
    return slip.equals(SeasonIndex.NEVER_SLIPS) && season.speciesSlips(planting)
        ? Optional.of("This type never slips, so the days come first, then the signs.")
        : Optional.empty();
  }

  private static Optional<String> age(SeasonIndex season, Planting planting) {
    return season
        .ripeAfter(planting)
        .map(
            days ->
                season.pollinated(planting)
                    ? "Count the days since the pollination on the tag: usually ripe after "
                        + Words.days(days)
                        + "."
                    : "Usually ripe " + Words.days(days) + " after the flower.");
  }

  /** Where seed wants longer than the kitchen, a fruit picked to be eaten is lost for seed. */
  private static Optional<String> forSeed(SeasonIndex season, Planting planting) {
    if (!planting.seedSaved() && !season.pollinated(planting)) {
      return Optional.empty();
    }
    return season
        .seedLater(planting)
        .map(
            d ->
                "Fruit for seed is left on the plant past that, till "
                    + Words.days(d)
                    + " after its pollination.");
  }

  private static Optional<String> signs(Planting planting) {
    List<String> signs =
        planting.facts().all(CropFacts.SIGN).stream().map(Reasoned::value).toList();
    return signs.isEmpty() ? Optional.empty() : Optional.of("Signs: " + Words.list(signs) + ".");
  }

  private static Optional<String> marked(SeasonIndex season, Planting planting) {
    boolean openSeedToo = planting.seedSaved() && planting.flowers().seedFlowersOpen();
    return season.pollinated(planting) && !openSeedToo
        ? Optional.of(
            "Only a marked fruit is seed; keep its tag on it. An unmarked fruit is for the kitchen.")
        : Optional.empty();
  }
}
