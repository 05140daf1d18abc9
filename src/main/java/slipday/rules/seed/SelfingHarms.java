package slipday.rules.seed;

import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Plants of a crop that suffers badly from inbreeding are selfed. */
public final class SelfingHarms implements Rule {
  private static final String BADLY = "badly";

  @Override
  public String id() {
    return "selfing-harms";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    season.garden().plantings().stream()
        .filter(p -> p.pollination().filter(w -> w.value().self()).isPresent())
        .forEach(
            p ->
                p.facts()
                    .get(CropFacts.INBREEDING)
                    .filter(harm -> harm.value().equals(BADLY))
                    .ifPresent(harm -> found(p, harm, reporter)));
  }

  private static void found(Planting planting, Reasoned<String> harm, Reporter reporter) {
    reporter
        .report(
            planting,
            planting.places().of(PlanClauses.POLLINATE),
            "Selfing harms "
                + Words.tick(planting.name())
                + ": its offspring will be weaker with every generation.")
        .concerns(planting.line())
        .concerns(planting.lot())
        .fact(harm.reason())
        .help("Pollinate it with mixed pollen of many of its plants: `pollinate sib by hand`.");
  }
}
