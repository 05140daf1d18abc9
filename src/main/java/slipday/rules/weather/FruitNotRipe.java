package slipday.rules.weather;

import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Condition;
import slipday.season.Season;

/** Frost takes the plants before a fruit is ripe, more often than the gardener accepts. */
public final class FruitNotRipe implements Rule {
  private static final double AS_OFTEN_AS_NOT = 0.5;

  @Override
  public String id() {
    return "fruit-not-ripe-before-frost";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public Level milderLevel() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Reasoned<Double> risk = season.garden().site().frostRisk();
    Judged.by(Condition.RIPENING, season)
        .filter(j -> j.fails(1 - risk.value()))
        .filter(j -> !seedTellsIt(j))
        .forEach(j -> found(j, risk, reporter));
  }

  /** Where seed is kept and ripens no sooner, the finding about the seed says it all. */
  private static boolean seedTellsIt(Judged judged) {
    Double seed = judged.choice().chances().get(Condition.SEED_RIPENING);
    return seed != null && seed <= judged.chance() + 1e-9;
  }

  private static void found(Judged judged, Reasoned<Double> risk, Reporter reporter) {
    Reporter.Report report =
        reporter.report(
            judged.chance() < AS_OFTEN_AS_NOT,
            judged.planting(),
            judged.place(),
            judged.name()
                + ", "
                + judged.when()
                + ", ripens a fruit before frost in "
                + Words.percent(judged.chance())
                + " of years; "
                + Words.percent(1 - risk.value())
                + " is wanted.");
    judged.told(report).fact(risk.reason()).help(judged.sooner());
    judged.planting().facts().get(CropFacts.RIPE).ifPresent(r -> report.fact(r.reason()));
  }
}
