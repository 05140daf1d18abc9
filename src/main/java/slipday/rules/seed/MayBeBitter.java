package slipday.rules.seed;

import java.util.List;
import slipday.caution.Caution;
import slipday.finding.Level;
import slipday.garden.Crop;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.Outsider;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.source.Span;

/** A lot is grown, or a volunteer has come up, whose plants may bear bitter, poisonous fruit. */
public final class MayBeBitter implements Rule {
  private static final String KIN_ARE_GROWN =
      "Bitter kin of this species are grown in gardens, and their pollen reaches far. "
          + Caution.POISON.words();

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
        // Seed of a plant that tasted bitter is told of by a rule of its own: it is to be
        // destroyed.
        .filter(p -> p.lot().bitterParent(garden).isEmpty())
        .forEach(p -> judge(p, TastedClean.of(garden.record(), p), reporter));
    garden.outsiders().stream()
        .filter(Outsider::volunteer)
        .filter(v -> v.crops().stream().anyMatch(c -> fatherMatters(garden, c.value())))
        .forEach(v -> judge(v, reporter));
  }

  private static boolean fatherMatters(Garden garden, Crop crop) {
    return !crop.isBitter() && garden.hasBitterKin(crop.species());
  }

  private static void judge(Outsider volunteer, Reporter reporter) {
    reporter
        .report(
            volunteer,
            volunteer.span(),
            "Fruit of the volunteer "
                + Words.tick(volunteer.name())
                + " may be bitter and poisonous: nobody knows what pollinated its seed.")
        .marked("taste it before any is eaten")
        .also(volunteer.places().of(PlanClauses.IS_A), "a species with bitter kin")
        .note(KIN_ARE_GROWN)
        .note("Its pollen carries the risk on.")
        .help("It is safest pulled, with nothing of it eaten. " + Caution.TASTE_FIRST.words());
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
            .note(KIN_ARE_GROWN)
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
