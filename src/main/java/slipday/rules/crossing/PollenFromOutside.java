package slipday.rules.crossing;

import slipday.finding.Level;
import slipday.garden.Outsider;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Exposure;
import slipday.season.Season;

/** A neighbour's or volunteer's pollen reaches flowers whose seed is kept. */
public final class PollenFromOutside implements Rule {
  @Override
  public String id() {
    return "pollen-from-outside";
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
    Exposures.ofKeptSeed(season)
        .forEach(e -> e.source().outsider().ifPresent(outsider -> found(e, outsider, reporter)));
  }

  private static void found(Exposure exposure, Outsider outsider, Reporter reporter) {
    String who = outsider.volunteer() ? "the volunteer " : "the neighbour ";
    Reporter.Report report =
        Exposures.keptOpen(
            reporter,
            exposure,
            exposure.near(),
            who + Words.tick(outsider.name()) + " (" + exposure.source().crop().name() + ")");
    outsider.places().find(PlanClauses.DISTANCE).ifPresent(d -> report.also(d, "this far away"));
    Exposures.mended(
        report,
        exposure,
        exposure.distance().isEmpty()
            ? " If it is far off, say so: `" + PlanClauses.DISTANCE.example() + "`."
            : "");
  }
}
