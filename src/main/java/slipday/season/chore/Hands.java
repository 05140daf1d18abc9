package slipday.season.chore;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.measure.Reasoned;
import slipday.season.PlantingSeason;
import slipday.season.PollinationPlan;
import slipday.season.Season;

/** What hand pollination means for the fruit of a planting. */
final class Hands {
  private Hands() {}

  /** Whether flowers of it are pollinated by hand, for itself or for a cross. */
  static boolean pollinate(Season season, Planting planting) {
    return on(season, planting).findAny().isPresent();
  }

  /** Whether it is selfed or sibbed by hand. */
  static boolean pollinateWithin(Season season, Planting planting) {
    return on(season, planting).anyMatch(p -> p.cross().isEmpty());
  }

  /**
   * When the fruit of the last hand pollination is ripe, where that is later than another day.
   * Where ripening is told as a heat sum the other day stands.
   */
  static LocalDate lastFruit(Season season, PlantingSeason planting, LocalDate otherwise) {
    Optional<Long> days =
        planting
            .planting()
            .facts()
            .get(CropFacts.RIPE)
            .map(Reasoned::value)
            .filter(r -> !r.heat())
            .map(r -> Math.round(r.after().high()));
    Optional<Integer> aWeek = season.garden().site().morningsAWeek().map(Reasoned::value);
    return on(season, planting.planting())
        .map(p -> Mornings.of(p, aWeek))
        .filter(m -> !m.isEmpty() && days.isPresent())
        .map((List<LocalDate> m) -> m.get(m.size() - 1).plusDays(days.orElseThrow()))
        .filter(day -> day.isAfter(otherwise))
        .max(LocalDate::compareTo)
        .orElse(otherwise);
  }

  static Stream<PollinationPlan> on(Season season, Planting planting) {
    return season.pollinations().stream()
        .filter(p -> p.seedParent().name().equals(planting.name()));
  }
}
