package slipday.rules.bed;

import slipday.finding.Level;
import slipday.garden.Bed;
import slipday.garden.Planting;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Beds are declared, and nothing says in which of them a planting grows. */
public final class BedNotTold implements Rule {
  @Override
  public String id() {
    return "bed-not-told";
  }

  @Override
  public Level level() {
    return Level.NOTE;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    if (season.garden().beds().isEmpty()) {
      return;
    }
    season.garden().plantings().stream()
        .filter(p -> p.bed().isEmpty())
        .forEach(p -> found(p, season.garden().beds().get(0), reporter));
  }

  private static void found(Planting planting, Bed first, Reporter reporter) {
    reporter
        .report(
            planting,
            planting.span(),
            "Nothing says in which bed "
                + Words.tick(planting.name())
                + " grows: its room, what grew there before and how far its kin stands are not"
                + " judged.")
        .concerns(planting.lot())
        .help("Add a line such as `in " + first.name() + "`.");
  }
}
