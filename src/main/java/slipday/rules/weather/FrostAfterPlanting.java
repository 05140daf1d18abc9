package slipday.rules.weather;

import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Condition;
import slipday.season.Season;

/** A planting goes out, or comes up, into frost more often than the gardener accepts. */
public final class FrostAfterPlanting implements Rule {
  /** Frost in every other year: the plan fails as often as not. */
  private static final double AS_OFTEN_AS_NOT = 0.5;

  @Override
  public String id() {
    return "frost-after-planting";
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
    Judged.by(Condition.FROST, season)
        .filter(j -> j.fails(1 - risk.value()))
        .forEach(j -> found(j, risk, reporter));
  }

  private static void found(Judged judged, Reasoned<Double> risk, Reporter reporter) {
    Reporter.Report report =
        reporter.report(
            judged.chance() <= AS_OFTEN_AS_NOT,
            judged.planting(),
            judged.place(),
            judged.name()
                + ", "
                + judged.when()
                + ", meets a killing frost in "
                + Words.percent(1 - judged.chance())
                + " of years; "
                + Words.percent(risk.value())
                + " is accepted.");
    judged
        .told(report)
        .fact(risk.reason())
        .help(judged.later() + " A cover that guards against frost counts too.");
    judged.planting().facts().get(CropFacts.KILLED_AT).ifPresent(k -> report.fact(k.reason()));
  }
}
