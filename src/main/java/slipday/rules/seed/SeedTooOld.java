package slipday.rules.seed;

import slipday.finding.Level;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.seed.Outlook;

/** Seed is older than its kind keeps, and no late test says that it is still good. */
public final class SeedTooOld implements Rule {
  @Override
  public String id() {
    return "seed-too-old";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    GrownLot.aged(season)
        .filter(g -> g.age() > g.life() && !g.lateTest())
        .forEach(g -> found(g, reporter));
  }

  private static void found(GrownLot grown, Reporter reporter) {
    Reporter.Report report =
        reporter.report(
            grown.lot(),
            grown.lot().places().of(PlanClauses.HARVESTED),
            "Seed of lot "
                + Words.tick(grown.lot().name())
                + " is "
                + Words.count(grown.age(), "year", "years")
                + " old, and such seed keeps "
                + Outlook.words(grown.keeps().value())
                + ".");
    grown
        .concerning(report)
        .fact(grown.keeps().reason())
        .note("Cool and dry seed lives longer than the figure, warm and damp seed less long.")
        .help(
            "Test some before you count on it (`tested 18 of 20 in "
                + grown.year()
                + "`), and sow more than usual.");
  }
}
