package slipday.rules.seed;

import slipday.finding.Level;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Seed has more than half its life behind it, and no late test. */
public final class OldSeedUntested implements Rule {
  @Override
  public String id() {
    return "old-seed-untested";
  }

  @Override
  public Level level() {
    return Level.NOTE;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    GrownLot.aged(season)
        .filter(g -> g.age() <= g.life())
        .filter(g -> g.age() * 2 > g.life() && g.age() > 1 && !g.lateTest())
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
                + grown.age()
                + " years old and has no germination test of this year or the last.");
    grown
        .concerning(report)
        .fact(grown.keeps().reason())
        .help(
            "Count seedlings of 20 or 50 seeds in moist paper, and write it down: `tested 44 of 50"
                + " in "
                + grown.year()
                + "`.");
  }
}
