package slipday.rules.seed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slipday.garden.CropFacts;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.genetics.Odds;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.seed.SeedsToSow;

/**
 * The seeds one planting takes.
 *
 * @param plants wanted
 * @param needed seeds to be sure of the plants in 19 of 20 cases
 * @param how what germination it is reckoned with; a sentence
 */
record Sowing(Planting planting, int plants, int needed, String how) {
  /** Plantings that say how many plants they want, by lot. */
  static Map<Lot, List<Sowing>> byLot(Season season) {
    Map<Lot, List<Sowing>> byLot = new TreeMap<>((a, b) -> a.span().compareTo(b.span()));
    for (Planting planting : season.garden().plantings()) {
      of(planting)
          .ifPresent(s -> byLot.computeIfAbsent(planting.lot(), lot -> new ArrayList<>()).add(s));
    }
    return byLot;
  }

  static Optional<Sowing> of(Planting planting) {
    return planting.plants().map(p -> of(planting, p.value()));
  }

  private static Sowing of(Planting planting, int plants) {
    Optional<Lot.GerminationTest> test = planting.lot().tested().map(Reasoned::value);
    if (test.isPresent()) {
      int seedlings = test.get().seedlings();
      int of = test.get().of();
      return new Sowing(
          planting,
          plants,
          SeedsToSow.of(planting.lot(), plants),
          seedlings
              + " of "
              + of
              + " came up in its test, and the test's own uncertainty is counted in"
              + " (beta-binomial, Jeffreys' prior).");
    }
    Optional<Reasoned<Double>> least = planting.facts().get(CropFacts.LEAST_GERMINATION);
    if (least.isPresent()) {
      return new Sowing(
          planting,
          plants,
          SeedsToSow.of(planting.lot(), plants),
          "It has no germination test, so it is taken to come up at "
              + Words.percent(least.get().value())
              + ". "
              + Words.note(least.get().reason()));
    }
    return new Sowing(planting, plants, plants, "Every seed is taken to come up.");
  }

  /** The seeds it will take: as many as the plan says, or as many as it needs. */
  int taken() {
    return planting.seedsToSow().map(Reasoned::value).orElse(needed);
  }

  /**
   * Tells a finding about the lot what this planting takes of it, and how that is reckoned.
   *
   * @param takes the words on the mark under the plants wanted
   */
  void tell(Reporter.Report report, String takes) {
    report.also(planting.places().of(PlanClauses.PLANTS), takes).concerns(planting).note(how);
  }

  String takes() {
    return "takes " + seeds(taken());
  }

  /** The chance that so many seeds give the plants wanted. */
  double chance(int seeds) {
    Optional<Lot.GerminationTest> test = planting.lot().tested().map(Reasoned::value);
    if (test.isPresent()) {
      return Odds.chanceOfPlants(seeds, plants, test.get().seedlings(), test.get().of());
    }
    double rate = planting.facts().valueOr(CropFacts.LEAST_GERMINATION, 1.0);
    return Odds.chanceOfPlants(seeds, plants, rate);
  }

  static String seeds(int number) {
    return number >= Odds.MOST ? "more seeds than there are" : Words.count(number, "seed", "seeds");
  }
}
