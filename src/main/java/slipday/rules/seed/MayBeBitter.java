package slipday.rules.seed;

import java.util.List;
import slipday.caution.Caution;
import slipday.finding.Level;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.source.Span;

/** A lot is grown whose plants may bear bitter, poisonous fruit. */
public final class MayBeBitter implements Rule {
  @Override
  public String id() {
    return "may-be-bitter";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Garden garden = season.garden();
    garden.plantings().stream()
        .filter(p -> !p.crop().isBitter() && p.lot().bitterRisk(garden))
        .forEach(p -> judge(p, TastedClean.of(garden.record(), p), reporter));
  }

  private static void judge(Planting planting, TastedClean tasted, Reporter reporter) {
    if (tasted.all()) {
      return;
    }
    Lot lot = planting.lot();
    List<String> kin = lot.exposedTo().stream().map(c -> c.value().name()).toList();
    Reporter.Report report =
        reporter
            .report(
                planting,
                planting.span(),
                "Fruit of "
                    + Words.tick(planting.name())
                    + " may be bitter and poisonous: "
                    + (kin.isEmpty()
                        ? (lot.byDistance()
                            ? "distance, or what its label does not say, kept other pollen from its"
                                + " seed."
                            : "nobody knows what pollinated its seed.")
                        : "its seed was exposed to " + Words.list(kin) + "."))
            .marked("taste each plant first")
            .also(why(lot), "because of this")
            .concerns(lot)
            .concerns(planting.line())
            .note(
                "Bitter kin of this species are grown in gardens, and their pollen reaches far. "
                    + Caution.POISON.words())
            .note("Seed and pollen of this planting carry the risk on.")
            .help(Caution.TASTE_FIRST.words());
    tasted.progress().ifPresent(report::note);
    planting.bed().ifPresent(report::concerns);
  }

  private static Span why(Lot lot) {
    return lot.exposedTo().stream()
        .map(Reasoned::reason)
        .flatMap(r -> r.place().stream())
        .findFirst()
        .orElseGet(() -> lot.places().of(PlanClauses.IDENTITY));
  }
}
