package slipday.season.chore;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import slipday.garden.CropFacts;
import slipday.garden.record.FruitStory;
import slipday.measure.Reason;
import slipday.season.PlantingSeason;
import slipday.season.PollinationPlan;

/**
 * Unmarked young fruit comes off, once for a planting however many pollinations are done on it: a
 * fruit that grows already makes the vine drop later ones (common practice, no source).
 */
final class ThinChores {
  private static final int DAYS_TO_SHOW = 7;

  private ThinChores() {}

  static List<Chore> of(SeasonIndex season, PlantingSeason planting) {
    List<LocalDate> flowers = new ArrayList<>(season.mornings(planting.planting()));
    pollinated(season, planting)
        .filter(s -> s.state() == FruitStory.State.PENDING)
        .forEach(s -> flowers.add(s.fruit().date()));
    boolean counted = planting.planting().facts().get(CropFacts.CALLED).isPresent();
    if (flowers.isEmpty() || counted) { // an ear is no fruit that holds back the next
      return List.of();
    }
    String name = planting.name();
    Draft draft =
        new Draft(ChoreKind.THIN, name, "Take unmarked young fruit off " + name)
            .says(
                "Until the marked ones have set: a fruit that grows already makes the vine drop the"
                    + " flowers you pollinate. Afterwards unmarked fruit may stay, for the"
                    + " kitchen.");
    LocalDate first =
        Stream.concat(flowers.stream(), pollinated(season, planting).map(s -> s.fruit().date()))
            .min(LocalDate::compareTo)
            .orElseThrow();
    LocalDate last = last(season, planting, flowers).plusDays(DAYS_TO_SHOW);
    return List.of(
        draft.due(
            new ChoreTime.Days(first, last),
            season.on(planting.planting()).stream()
                .map(PollinationPlan::reason)
                .toArray(Reason[]::new)));
  }

  private static Stream<FruitStory> pollinated(SeasonIndex season, PlantingSeason planting) {
    return season.on(planting.planting()).stream().flatMap(p -> p.pollinated().stream());
  }

  /** Once a record is kept that tells of too few that set, more is done till the window closes. */
  private static LocalDate last(
      SeasonIndex season, PlantingSeason planting, List<LocalDate> flowers) {
    boolean kept = !season.garden().record().isEmpty();
    Stream<LocalDate> closes =
        season.on(planting.planting()).stream()
            .filter(p -> kept && p.left() > 0)
            .flatMap(p -> p.until().stream());
    return Stream.concat(flowers.stream(), closes).max(LocalDate::compareTo).orElseThrow();
  }
}
