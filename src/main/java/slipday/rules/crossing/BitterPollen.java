package slipday.rules.crossing;

import slipday.caution.Caution;
import slipday.finding.Level;
import slipday.garden.Planting;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Exposure;
import slipday.season.Season;

/** Seed of an edible kind is kept from flowers open to bitter, poisonous kin. */
public final class BitterPollen implements Rule {
  @Override
  public String id() {
    return "bitter-pollen";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public Level milderLevel() {
    return Level.WARNING;
  }

  /** Bitter kin of an edible kind, within its species. */
  static boolean isDanger(Exposure exposure) {
    return exposure.source().isBitter()
        && exposure.sameSpecies()
        && !exposure.receiver().crop().isBitter();
  }

  @Override
  public void check(Season season, Reporter reporter) {
    season.exposures().stream()
        .filter(e -> e.intoSeed() && isDanger(e))
        .forEach(e -> found(e, reporter));
  }

  private static void found(Exposure exposure, Reporter reporter) {
    Planting receiver = exposure.receiver();
    String bitter = exposure.source().crop().name();
    Reporter.Report report =
        reporter.report(
            exposure.near(),
            receiver,
            Exposures.seedLine(receiver),
            "Seed of "
                + Words.tick(receiver.name())
                + " is kept from flowers that stand open to the bitter, poisonous "
                + Words.tick(bitter)
                + (bitter.equals(exposure.source().name())
                    ? "."
                    : " of " + Words.tick(exposure.source().name()) + "."));
    Exposures.mended(Exposures.described(report, exposure), exposure, "")
        .note(Caution.NEXT_GENERATION.words())
        .note(
            "If the seed is kept all the same, write `exposed to "
                + bitter
                + "` under its lot. "
                + Caution.TASTE_FIRST.words());
  }
}
