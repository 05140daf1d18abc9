package slipday.rules.seed;

import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** Seed is started where it is too cold or too hot for its kind to come up at all. */
public final class SeedWillNotComeUp implements Rule {
  @Override
  public String id() {
    return "seed-will-not-come-up";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    season.plantings().stream()
        .filter(PlantingSeason::indoors)
        .map(PlantingSeason::planting)
        .forEach(p -> judge(p, reporter));
  }

  private static void judge(Planting planting, Reporter reporter) {
    planting
        .start()
        .flatMap(Planting.Start::temperature)
        .ifPresent(
            at ->
                planting
                    .facts()
                    .get(CropFacts.GERMINATES)
                    .filter(limits -> outside(at, limits.value()))
                    .ifPresent(limits -> found(planting, at, limits, reporter)));
  }

  /** A rounding of degrees Fahrenheit puts nothing outside. */
  private static boolean outside(double celsius, Range limits) {
    return celsius < limits.low() - 0.1 || celsius > limits.high() + 0.1;
  }

  private static void found(
      Planting planting, double at, Reasoned<Range> limits, Reporter reporter) {
    Reporter.Report report =
        reporter.report(
            planting,
            planting.places().find(PlanClauses.START).orElseGet(planting::span),
            "Seed of "
                + Words.tick(planting.name())
                + " does not come up at "
                + reporter.units().written(at)
                + ": it is too "
                + (at < limits.value().low() ? "cold" : "hot")
                + ".");
    report
        .concerns(planting.lot())
        .fact(limits.reason())
        .note("The days that follow are reckoned as if it came up in a week.")
        .help(
            "Tell how warm the pots themselves stand until the seed is up, by night too; with no"
                + " temperature told they are taken to stand at "
                + reporter.units().written(PlantingSeason.INDOORS)
                + ".");
    planting.bed().ifPresent(report::concerns);
  }
}
