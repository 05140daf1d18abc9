package slipday.rules.pollination;

import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.garden.Sex;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** A kind with males and females on two plants is too few plants to be sure of both. */
public final class OneSexOnly implements Rule {
  private static final double SURE = 0.95;

  @Override
  public String id() {
    return "one-sex-only";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    season.garden().plantings().stream()
        .filter(p -> p.seedSaved() && p.line().sex() == Sex.ON_TWO_PLANTS)
        .forEach(p -> p.plants().ifPresent(plants -> judge(p, plants.value(), reporter)));
  }

  /** Each plant is male or female with even chance: 1 − 2 · ½ⁿ that there are both. */
  static double bothSexes(int plants) {
    return plants < 1 ? 0 : 1 - Math.pow(0.5, plants - 1.0);
  }

  private static void judge(Planting planting, int plants, Reporter reporter) {
    if (bothSexes(plants) >= SURE) {
      return;
    }
    int enough = plants;
    while (bothSexes(enough) < SURE) {
      enough++;
    }
    Reporter.Report report =
        reporter
            .report(
                planting,
                planting.places().of(PlanClauses.PLANTS),
                Words.count(plants, "plant", "plants")
                    + " of "
                    + Words.tick(planting.name())
                    + " are of both sexes in "
                    + Words.percent(bothSexes(plants))
                    + " of cases only.")
            .also(planting.places().of(PlanClauses.SEED), "seed is wanted here")
            .concerns(planting.lot())
            .help(
                "Grow " + enough + " plants or more: both sexes are then there in 19 of 20 cases.");
    planting.facts().get(CropFacts.SEX).map(Reasoned::reason).ifPresent(report::fact);
  }
}
