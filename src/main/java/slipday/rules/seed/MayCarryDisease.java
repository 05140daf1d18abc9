package slipday.rules.seed;

import java.util.List;
import slipday.caution.Caution;
import slipday.finding.Level;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** A lot is grown whose seed comes of plants on which a disease was seen that seed can carry. */
public final class MayCarryDisease implements Rule {
  @Override
  public String id() {
    return "may-carry-disease";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    season.garden().plantings().stream()
        .filter(p -> !p.lot().diseases().isEmpty())
        .forEach(p -> found(p, reporter));
  }

  private static void found(Planting planting, Reporter reporter) {
    Lot lot = planting.lot();
    List<String> names = lot.diseases().stream().map(Reasoned::value).toList();
    Reporter.Report report =
        reporter
            .report(
                planting,
                planting.span(),
                "The seed of "
                    + Words.tick(planting.name())
                    + " may carry disease: "
                    + Words.list(names)
                    + " was seen on the plants it comes of.")
            .marked("grown here")
            .concerns(lot)
            .concerns(planting.line());
    lot.diseases()
        .forEach(
            d -> d.reason().place().ifPresent(s -> report.also(s, "`" + d.value() + "` seen")));
    report
        .note(Caution.SEED_TREATMENT.words())
        .help(
            "Raise it apart from the rest, look at every seedling and destroy what shows it; give"
                + " none of the seed away. Where it no longer holds, record why: `lifted "
                + lot.name()
                + ", disease, …`.");
    planting.bed().ifPresent(report::concerns);
  }
}
