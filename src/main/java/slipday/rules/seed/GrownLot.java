package slipday.rules.seed;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.garden.CropFacts;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.season.Season;
import slipday.seed.Outlook;

/**
 * A lot grown this season, with the age of its seed.
 *
 * @param age whole years from the harvest to this season
 * @param keeps how many years such seed keeps
 */
record GrownLot(Lot lot, List<Planting> plantings, int age, Reasoned<Range> keeps, int year) {
  /** Lots grown this season of which harvest and storage life are known. */
  static Stream<GrownLot> aged(Season season) {
    Map<String, List<Planting>> byLot = new LinkedHashMap<>();
    season
        .garden()
        .plantings()
        .forEach(p -> byLot.computeIfAbsent(p.lot().name(), n -> new ArrayList<>()).add(p));
    int year = season.garden().season().year();
    return byLot.values().stream().flatMap(p -> of(p, year).stream());
  }

  private static Optional<GrownLot> of(List<Planting> plantings, int year) {
    Lot lot = plantings.get(0).lot();
    return lot.harvested()
        .flatMap(
            harvested ->
                lot.line()
                    .facts()
                    .get(CropFacts.SEED_KEEPS)
                    .map(k -> new GrownLot(lot, plantings, year - harvested.value(), k, year)));
  }

  /** Years that such seed keeps, as all is reckoned with. */
  double life() {
    return Outlook.life(keeps.value());
  }

  /** Whether a test of this season or the last says what the seed is still worth. */
  boolean lateTest() {
    return lot.tested().flatMap(t -> t.value().year()).filter(y -> y >= year - 1).isPresent();
  }

  /** Names the plantings, so that an allowance in one of them holds. */
  Reporter.Report concerning(Reporter.Report report) {
    plantings.forEach(p -> report.concerns(p).also(p.span(), "grown here"));
    return report;
  }
}
