package slipday.rules.crossing;

import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.Crop;
import slipday.garden.CropFacts;
import slipday.garden.Facts;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Apart;
import slipday.season.Exposure;
import slipday.season.PollenSource;
import slipday.season.Season;

/** Kernels that show their pollen parent meet pollen of another type, seed kept or not. */
public final class KernelsSpoilt implements Rule {
  @Override
  public String id() {
    return "kernels-spoilt";
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
    season.exposures().stream()
        .filter(Exposure::sameSpecies)
        .filter(e -> e.receiver().facts().valueOr(CropFacts.KERNELS_SHOW, false))
        .filter(e -> !type(e.receiver().facts()).equals(type(facts(e.source()))))
        .forEach(e -> found(season, e, reporter));
  }

  private static Facts facts(PollenSource source) {
    return source.planting().map(Planting::facts).orElseGet(() -> of(source.crop()));
  }

  private static Facts of(Crop crop) {
    return crop.facts();
  }

  private static Optional<String> type(Facts facts) {
    return facts.get(CropFacts.KERNEL_TYPE).map(t -> t.value());
  }

  private static void found(Season season, Exposure exposure, Reporter reporter) {
    Optional<Apart> apart = Exposures.keptApart(season, exposure);
    Planting receiver = exposure.receiver();
    Reporter.Report report =
        reporter.report(
            exposure.near() && apart.isEmpty(),
            receiver,
            receiver.span(),
            "Kernels of "
                + Words.tick(receiver.name())
                + " will show the pollen of "
                + Words.tick(exposure.source().name())
                + ", which has another kernel type.");
    report.marked("these kernels").also(exposure.source().span(), "sheds the pollen");
    exposure.source().planting().ifPresent(report::concerns);
    exposure.source().outsider().ifPresent(report::concerns);
    Exposures.figures(report, exposure)
        .note(
            Words.tick(receiver.name())
                + " is "
                + type(receiver.facts()).orElse("of a type not told")
                + ", the pollen "
                + type(facts(exposure.source())).orElse("of a type not told")
                + "; the kernel eaten this year is the seed.")
        .help(
            (apart.isPresent()
                    ? "To be surer, stand them "
                    : "Sow one of them three to four weeks later (`"
                        + PlanClauses.BLOOM_APART.name()
                        + "`), stand them ")
                + reporter.units().distance(exposure.isolation().high())
                + " or more apart, or grow one type.");
    apart.map(Exposures::inAllBut).ifPresent(report::note);
  }
}
