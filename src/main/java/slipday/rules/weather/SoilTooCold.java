package slipday.rules.weather;

import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.measure.Quantity;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Condition;
import slipday.season.Season;

/** The soil is too cold on the day of sowing or planting out, in most years. */
public final class SoilTooCold implements Rule {
  private static final double USUALLY = 0.5;

  @Override
  public String id() {
    return "soil-too-cold";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Judged.by(Condition.SOIL, season)
        .filter(j -> j.fails(USUALLY))
        .forEach(
            j ->
                j.planting()
                    .facts()
                    .get(j.season().indoors() ? CropFacts.SET_OUT_AT : CropFacts.SOW_AT)
                    .ifPresent(wanted -> found(j, wanted, reporter)));
  }

  private static void found(Judged judged, Reasoned<Double> wanted, Reporter reporter) {
    Reporter.Report report =
        reporter.report(
            judged.planting(),
            judged.place(),
            judged.name()
                + ", "
                + judged.when()
                + ", finds soil of "
                + Quantity.plain(Math.rint(wanted.value() * 10) / 10)
                + " C or warmer in "
                + Words.percent(judged.chance())
                + " of years.");
    judged
        .told(report)
        .fact(wanted.reason())
        .note("Soil is estimated from the air; a reading of your own, told as `soil`, corrects it.")
        .help(judged.later() + " Black plastic or a tunnel warms the soil sooner.");
  }
}
