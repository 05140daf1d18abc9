package slipday.rules.crossing;

import java.util.Optional;
import slipday.caution.Caution;
import slipday.finding.Level;
import slipday.garden.Planting;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Apart;
import slipday.season.Exposure;
import slipday.season.Season;

/** Another planting of the species sheds pollen on flowers whose seed is kept. */
public final class SeedOpenToCrossing implements Rule {
  @Override
  public String id() {
    return "seed-open-to-crossing";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public Level milderLevel() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Exposures.ofKeptSeed(season)
        .forEach(
            e -> e.source().planting().ifPresent(source -> found(season, e, source, reporter)));
  }

  private static void found(Season season, Exposure exposure, Planting source, Reporter reporter) {
    Planting receiver = exposure.receiver();
    Optional<Apart> apart = Exposures.keptApart(season, exposure);
    Reporter.Report report =
        Exposures.keptOpen(
            reporter, exposure, exposure.near() && apart.isEmpty(), Words.tick(source.name()));
    apart.map(Exposures::inAllBut).ifPresent(report::note);
    Exposures.mended(report, exposure, "")
        .note("Both are " + receiver.species().latin() + ": within a species everything crosses.");
    if (source.lot().bitterRisk(season.garden()) && !receiver.crop().isBitter()) {
      report.note(
          "Plants of "
              + Words.tick(source.name())
              + " may themselves be bitter. "
              + Caution.NEXT_GENERATION.words());
    }
  }
}
