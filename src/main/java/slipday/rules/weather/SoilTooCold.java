package slipday.rules.weather;

import java.util.List;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Condition;
import slipday.season.Event;
import slipday.season.Season;

/**
 * The soil is colder than is wanted on the day of sowing or planting out, in most years. Where the
 * date is free, no warmer day leaves time to ripen.
 */
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
  public Level milderLevel() {
    return Level.NOTE;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Judged.by(Condition.SOIL, season)
        .filter(j -> j.fails(USUALLY) && !isSettled(j))
        .forEach(
            j ->
                j.planting()
                    .facts()
                    .get(j.season().indoors() ? CropFacts.SET_OUT_AT : CropFacts.SOW_AT)
                    .ifPresent(wanted -> found(season, j, wanted, reporter)));
  }

  /** What is seen to be up, or to flower where it was planted out, has not rotted in cold soil. */
  private static boolean isSettled(Judged judged) {
    List<Event> after =
        judged.season().indoors()
            ? List.of(Event.FIRST_MALE, Event.FIRST_FRUITING, Event.RIPE, Event.SEED_RIPE)
            : List.of(Event.EMERGED, Event.FIRST_MALE, Event.FIRST_FRUITING, Event.RIPE);
    return after.stream()
        .anyMatch(e -> judged.season().date(e).filter(d -> d.value().decided()).isPresent());
  }

  private static boolean couldStartIndoors(Judged judged) {
    return !judged.season().indoors()
        && judged.planting().facts().get(CropFacts.SEEDLING_AGE).isPresent();
  }

  private static void found(
      Season season, Judged judged, Reasoned<Double> wanted, Reporter reporter) {
    Reporter.Report report =
        reporter.report(
            judged.choice().fixed(),
            judged.planting(),
            judged.place(),
            judged.name()
                + ", "
                + judged.when()
                + ", finds soil of "
                + reporter.units().written(wanted.value())
                + " or warmer in "
                + Words.percent(judged.chance())
                + " of years.");
    judged
        .told(report)
        .fact(wanted.reason())
        .note(
            season.climate().usableYears().isEmpty()
                ? season.climate().readSoil().reason(reporter.units()).says()
                : "Soil is estimated from the air; a reading of your own, told as `soil`, corrects"
                    + " it.")
        .help(
            ((judged.choice().fixed()
                        ? judged.later()
                        : "A day with warmer soil would come too late for fruit to ripen.")
                    + (couldStartIndoors(judged)
                        ? " It can be started indoors, where seed is warm."
                        : "")
                    + " Black plastic warms the soil sooner; tell by how much, as `mulch`.")
                .strip());
    judged.planting().facts().get(CropFacts.GERMINATES).ifPresent(g -> report.fact(g.reason()));
  }
}
