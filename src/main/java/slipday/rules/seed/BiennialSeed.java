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

/** Seed is wanted of a biennial in the year it is sown. */
public final class BiennialSeed implements Rule {
  @Override
  public String id() {
    return "biennial-seed-in-first-year";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    season.garden().plantings().stream()
        .filter(Planting::seedSaved)
        .forEach(
            p ->
                p.facts()
                    .get(CropFacts.BIENNIAL)
                    .filter(Reasoned::value)
                    .ifPresent(b -> found(p, b, reporter)));
  }

  private static void found(Planting planting, Reasoned<Boolean> biennial, Reporter reporter) {
    Reporter.Report report =
        reporter
            .report(
                planting,
                planting.places().of(PlanClauses.SEED),
                "Seed of "
                    + Words.tick(planting.name())
                    + " is wanted this year, and it flowers only in its second.")
            .marked("no seed this year")
            .concerns(planting.lot())
            .concerns(planting.line())
            .fact(biennial.reason())
            .help(
                "Keep the best plants over winter, cool but free of hard frost, and save seed next"
                    + " year; for now write `seed not saved`.");
    planting.bed().ifPresent(report::concerns);
  }
}
