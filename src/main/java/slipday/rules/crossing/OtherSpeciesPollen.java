package slipday.rules.crossing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipday.caution.Caution;
import slipday.finding.Level;
import slipday.garden.Planting;
import slipday.measure.Range;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Exposure;
import slipday.season.Season;

/** Seed is kept from flowers open to a species that crosses now and then. */
public final class OtherSpeciesPollen implements Rule {
  private static final double AT_TIMES = 2;

  @Override
  public String id() {
    return "other-species-pollen";
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
    // A neighbour may grow several kinds of one species: it is told once, by the readiest.
    Map<List<String>, Exposure> once = new LinkedHashMap<>();
    season.exposures().stream()
        .filter(e -> e.intoSeed() && !e.sameSpecies())
        .forEach(
            e ->
                once.merge(
                    List.of(e.receiver().name(), e.source().name()),
                    e,
                    (a, b) -> readier(a, b) ? a : b));
    once.values().forEach(e -> found(e, reporter));
  }

  private static boolean readier(Exposure a, Exposure b) {
    boolean worse = b.degree().middle() > a.degree().middle();
    return !worse && (a.source().isBitter() || !b.source().isBitter());
  }

  private static void found(Exposure exposure, Reporter reporter) {
    Planting receiver = exposure.receiver();
    Range degree = exposure.degree();
    Reporter.Report report =
        reporter.report(
            degree.middle() >= AT_TIMES,
            receiver,
            Exposures.seedLine(receiver),
            "Seed of "
                + Words.tick(receiver.name())
                + " may now and then be crossed by "
                + Words.tick(exposure.source().name())
                + ", which is of another species.");
    Exposures.described(report, exposure)
        .note(
            exposure.source().crop().species().latin()
                + " on "
                + receiver.species().latin()
                + ": degree "
                + degree
                + ", where 0 is never, 1 very rarely, 2 at times and 3 readily.")
        .help(
            "Watch for off-types when this seed is grown, and cover the chosen flowers where the"
                + " line must stay pure.");
    exposure.reason().from().stream().findFirst().ifPresent(report::fact);
    if (exposure.source().isBitter()) {
      report.note(
          "The fruit of "
              + Words.tick(exposure.source().crop().name())
              + " is bitter and poisonous. "
              + Caution.TASTE_FIRST.words());
    }
  }
}
