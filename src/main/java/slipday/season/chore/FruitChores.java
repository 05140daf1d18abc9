package slipday.season.chore;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.measure.Reasoned;
import slipday.season.DateSpread;
import slipday.season.Event;
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
    LocalDate last = season.lastFruit(planting.planting(), late);
    String name = planting.name();
    Draft draft =
        new Draft(ChoreKind.LOOK_AT_FRUIT, name, "Look at the fruit of " + name)
            .says(slip(planting.planting(), season.pollinated(planting.planting())))
            .says(signs(planting.planting()))
            .says(marked(season, planting.planting()))
            .cautions(Cautions.ofFruit(season, planting.planting()));
    return List.of(draft.due(new ChoreTime.Days(first.get(), last), ripe.get().reason()));
  }

  private static Optional<String> slip(Planting planting, boolean byHand) {
    String age = age(planting, byHand);
    String slip = planting.facts().valueOr(CropFacts.SLIP, "");
    if (slip.equals("full")) {
      return Optional.of(
          age
              + "Ripe at full slip: it parts from the vine at a light push, and the scar is clean.");
    }
    if (slip.equals("half")) {
      return Optional.of(
          age
              + "Ripe at half slip: a crack runs half round the stem. At full slip it is past its"
              + " best.");
    }
    if (slip.equals("none")) {
      return Optional.of(age + "This type never slips, so the days come first, then the signs.");
    }
    return age.isEmpty() ? Optional.empty() : Optional.of(age.strip());
  }

  private static String age(Planting planting, boolean byHand) {
    return planting
        .facts()
        .get(CropFacts.RIPE)
        .map(Reasoned::value)
        .filter(r -> !r.heat())
        .map(
            r ->
                byHand
                    ? "Count the days since the pollination on the tag: usually ripe after "
                        + Words.days(r.after())
                        + ". "
                    : "Usually ripe " + Words.days(r.after()) + " after the flower. ")
        .orElse("");
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
