package slipday.rules.seed;

import java.util.List;
import slipday.finding.Level;
import slipday.garden.Lot;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** A lot is sown to its last seed, or nearly, with no remnant kept back. */
public final class LastSeedSown implements Rule {
  @Override
  public String id() {
    return "last-seed-sown";
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
    Sowing.byLot(season)
        .forEach(
            (lot, sowings) -> {
              if (lot.keepBack().map(Reasoned::value).orElse(0) == 0) {
                lot.seeds().ifPresent(s -> judge(lot, s.value(), sowings, reporter));
              }
            });
  }

  private static void judge(Lot lot, int seeds, List<Sowing> sowings, Reporter reporter) {
    long taken = sowings.stream().mapToLong(Sowing::taken).sum();
    long left = Math.max(0, seeds - taken);
    if (left >= taken) {
      return;
    }
    String what =
        left == 0
            ? " is sown to its last seed."
            : " has " + Sowing.seeds((int) left) + " left after sowing: too few to sow again.";
    Reporter.Report report =
        reporter
            .report(
                left == 0,
                lot,
                lot.places().of(PlanClauses.SEEDS),
                "Lot " + Words.tick(lot.name()) + what)
            .marked("seeds in hand");
    for (Sowing sowing : sowings) {
      report
          .also(
              sowing.planting().places().of(PlanClauses.PLANTS),
              "takes " + Sowing.seeds(sowing.taken()))
          .concerns(sowing.planting())
          .note(sowing.how());
    }
    report.help(
        "Keep some back under the lot (`"
            + PlanClauses.KEEP_BACK.example()
            + "`), so that a lost season does not lose the line.");
  }
}
