package slipday.rules.seed;

import slipday.finding.Level;
import slipday.garden.Cross;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.language.Clause;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Seed of doubtful or unknown identity becomes a parent: of a cross, or of seed that is kept. */
public final class DoubtfulParent implements Rule {
  @Override
  public String id() {
    return "doubtful-parent";
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
    for (Cross cross : season.garden().crosses()) {
      crossed(cross, cross.seedParent(), PlanClauses.SEED_PARENT, reporter);
      crossed(cross, cross.pollenParent(), PlanClauses.POLLEN_PARENT, reporter);
    }
    season.garden().plantings().stream()
        .filter(p -> p.seedSaved() && doubtful(p.lot()))
        .forEach(p -> kept(p, reporter));
  }

  private static boolean doubtful(Lot lot) {
    return lot.identity() != Lot.Identity.KNOWN;
  }

  private static String doubt(Lot lot) {
    return lot.identity() == Lot.Identity.UNKNOWN ? "unknown" : "doubtful";
  }

  private static void crossed(Cross cross, Planting parent, Clause side, Reporter reporter) {
    Lot lot = parent.lot();
    if (!doubtful(lot)) {
      return;
    }
    reporter
        .report(
            cross,
            cross.places().of(side),
            "The "
                + side.name()
                + " of cross "
                + Words.tick(cross.name())
                + ", "
                + Words.tick(parent.name())
                + ", is of "
                + doubt(lot)
                + " identity.")
        .also(lot.places().of(PlanClauses.IDENTITY), "so it is told here")
        .concerns(parent)
        .concerns(lot)
        .note("What is behind it shows in the offspring, and can't be told from the cross itself.")
        .help("Grow it out a season first, or take another parent.");
  }

  private static void kept(Planting planting, Reporter reporter) {
    Lot lot = planting.lot();
    boolean trial = planting.line().purpose() == Line.Purpose.TRIAL;
    Reporter.Report report =
        reporter
            .report(
                !trial,
                planting,
                planting.places().of(PlanClauses.SEED),
                "Seed of "
                    + Words.tick(planting.name())
                    + " is kept, and the lot it grew from is of "
                    + doubt(lot)
                    + " identity.")
            .also(lot.places().of(PlanClauses.IDENTITY), "so it is told here")
            .concerns(lot)
            .concerns(planting.line())
            .help(
                trial
                    ? "Label its seed as of the trial, with its mother plant; do not mix it in."
                    : "Grow it out as a line `on trial` first, and keep its seed apart.");
    planting.bed().ifPresent(report::concerns);
  }
}
