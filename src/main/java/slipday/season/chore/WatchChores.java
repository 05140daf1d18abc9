package slipday.season.chore;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.FlowerCare;
import slipday.garden.Planting;
import slipday.garden.Sex;
import slipday.measure.Reasoned;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.PlantingSeason;

/** The first flowers, where something has to be done before the bees find them. */
final class WatchChores {
  private WatchChores() {}

  static List<Chore> of(SeasonIndex season, PlantingSeason planting) {
    Optional<String> task = task(season, planting.planting());
    Optional<DateSpread> fruiting = planting.date(Event.FIRST_FRUITING).map(Reasoned::value);
    Optional<LocalDate> from =
        planting
            .date(Event.FIRST_MALE)
            .map(Reasoned::value)
            .or(() -> fruiting)
            .flatMap(s -> s.early().or(s::usual));
    Optional<LocalDate> to = fruiting.flatMap(s -> s.usual().or(s::late));
    if (task.isEmpty() || from.isEmpty() || to.isEmpty()) {
      return List.of();
    }
    String name = planting.name();
    Draft draft =
        new Draft(ChoreKind.WATCH_FLOWERS, name, "Watch for the first flowers of " + name)
            .says(order(planting.planting()))
            .says(task.get());
    LocalDate last = to.get().isBefore(from.get()) ? from.get() : to.get();
    return List.of(
        draft.due(
            new ChoreTime.Days(from.get(), last),
            planting.date(Event.FIRST_FRUITING).orElseThrow().reason()));
  }

  private static Optional<String> order(Planting planting) {
    Sex sex = planting.line().sex();
    if (!sex.hasMaleFlowers() || sex == Sex.ON_TWO_PLANTS) {
      return Optional.empty();
    }
    String earlier =
        planting
            .facts()
            .get(CropFacts.MALES_EARLIER)
            .map(d -> ", some " + Words.days(d.value()) + " before the others")
            .orElse("");
    if (planting.facts().get(CropFacts.CALLED).isPresent()) {
      return Optional.of(
          Words.sentence(
              planting.maleFlowers()
                  + " come first"
                  + earlier.replace("the others", planting.fruitingFlowers())));
    }
    return Optional.of(
        "Male flowers come first, on thin stalks"
            + earlier
            + "; the "
            + sex.fruitingFlower()
            + " ones have a small fruit behind the petals.");
  }

  private static Optional<String> task(SeasonIndex season, Planting planting) {
    FlowerCare.How how = planting.flowers().how();
    if (how == FlowerCare.How.CAGED) {
      return Optional.of("Before any of them opens the cage is shut.");
    }
    if (how == FlowerCare.How.MALES_REMOVED) {
      return Optional.of("From now on take off the male buds before they open, every day.");
    }
    if (how == FlowerCare.How.FEMALES_REMOVED) {
      return Optional.of("From now on take off the fruiting buds before they open, every day.");
    }
    if (how == FlowerCare.How.ALL_REMOVED) {
      return Optional.of("From now on take off every bud before it opens, every day.");
    }
    boolean byHand = season.pollinated(planting) || season.givesPollen(planting);
    return byHand
        ? Optional.of(
            "Have tape, bags and tags ready: its pollination by hand begins with the first "
                + planting.fruitingFlowers()
                + ", which set best.")
        : Optional.empty();
  }
}
