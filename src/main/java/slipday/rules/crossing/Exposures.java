package slipday.rules.crossing;

import java.util.Optional;
import java.util.stream.Stream;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Units;
import slipday.rules.PlanMends;
import slipday.rules.Reporter;
import slipday.rules.Words;
import slipday.season.Apart;
import slipday.season.Exposure;
import slipday.season.Season;
import slipday.source.Span;

/** What the rules of crossing say alike about an exposure. */
final class Exposures {
  private Exposures() {}

  /** Exposures within a species of seed that is kept; a bitter kind's are another rule's. */
  static Stream<Exposure> ofKeptSeed(Season season) {
    return season.exposures().stream()
        .filter(e -> e.intoSeed() && e.sameSpecies())
        .filter(e -> !BitterPollen.isDanger(e));
  }

  /**
   * A report of such an exposure, with its figures.
   *
   * @param grave whether the seed is in danger enough for the rule's own level
   * @param whose whose pollen it is
   */
  static Reporter.Report keptOpen(
      Reporter reporter, Exposure exposure, boolean grave, String whose) {
    Planting receiver = exposure.receiver();
    return described(
        reporter.report(
            grave,
            receiver,
            seedLine(receiver),
            "Seed of "
                + Words.tick(receiver.name())
                + (inOneCage(exposure)
                    ? " is kept from a cage that it shares with "
                    : " is kept from flowers that stand open to the pollen of ")
                + whose
                + "."),
        exposure);
  }

  /** Whether both stand in one cage, where distance is nothing. */
  private static boolean inOneCage(Exposure exposure) {
    return exposure
        .source()
        .planting()
        .filter(p -> exposure.receiver().flowers().cagedWith().contains(p.name()))
        .isPresent();
  }

  /** The wish that keeps the two apart by their dates, where it was granted. */
  static Optional<Apart> keptApart(Season season, Exposure exposure) {
    String receiver = exposure.receiver().name();
    String source = exposure.source().name();
    return season.apart().stream()
        .filter(Apart::honoured)
        .filter(a -> isBetween(a, receiver, source) || isBetween(a, source, receiver))
        .findFirst();
  }

  private static boolean isBetween(Apart apart, String asking, String other) {
    return apart.asking().name().equals(asking) && apart.other().name().equals(other);
  }

  /** What that wish came to. */
  static String inAllBut(Apart apart) {
    return "Their dates keep them apart, as asked, in all but "
        + Words.percent(apart.chance())
        + " of years.";
  }

  /** The line that says seed is kept, or else the planting. */
  static Span seedLine(Planting planting) {
    return planting.places().of(PlanClauses.SEED);
  }

  /** The source's place, the receiver's flowers, and the figures with where they are from. */
  static Reporter.Report described(Reporter.Report report, Exposure exposure) {
    Planting receiver = exposure.receiver();
    report.marked("seed is kept here").also(exposure.source().span(), "sheds the pollen");
    receiver.places().find(PlanClauses.FLOWERS).ifPresent(f -> report.also(f, "flowers"));
    exposure.source().planting().ifPresent(report::concerns);
    exposure.source().outsider().ifPresent(report::concerns);
    receiver.bed().ifPresent(report::concerns);
    report.concerns(receiver.lot());
    return figures(report, exposure);
  }

  static Reporter.Report figures(Reporter.Report report, Exposure exposure) {
    report.note(bloom(exposure)).because(exposure.reason());
    if (!inOneCage(exposure)) {
      report.note(distance(exposure, report.units()));
    }
    exposure.receiver().facts().get(CropFacts.ISOLATION).ifPresent(i -> report.fact(i.reason()));
    return report;
  }

  private static String bloom(Exposure exposure) {
    Optional<Exposure.Mornings> mornings = exposure.mornings();
    if (exposure.chance().isEmpty() || mornings.isEmpty()) {
      return "When it flowers nobody knows, so it is taken to flower at the same time.";
    }
    Exposure.Mornings m = mornings.get();
    return "The chance that they are in flower together is "
        + Words.percent(exposure.chance().get())
        + ": usually on "
        + Words.count(m.usual(), "morning", "mornings")
        + " ("
        + m.few()
        + " to "
        + m.many()
        + ").";
  }

  private static String distance(Exposure exposure, Units units) {
    String far =
        exposure
            .distance()
            .map(d -> "They stand " + units.distance(d) + " apart")
            .orElse("How far apart they stand is not told, so they are taken to be near");
    return far
        + "; a home garden's isolation distance is "
        + units.distance(exposure.isolation().low())
        + ", the strict one "
        + units.distance(exposure.isolation().high())
        + ".";
  }

  /**
   * How to keep the seed clean, with what an editor can offer towards it.
   *
   * @param more what else would help, a sentence or two; may be empty
   */
  static Reporter.Report mended(Reporter.Report report, Exposure exposure, String more) {
    if (inOneCage(exposure)) {
      return report.help("Give each a cage of its own, or do not save this seed." + more);
    }
    return report
        .help(mend(exposure, report.units()) + more)
        .mend(PlanMends.cover(exposure.receiver()));
  }

  private static String mend(Exposure exposure, Units units) {
    String byHand = "Cover the chosen flowers and pollinate them by hand, ";
    if (exposure.source().outsider().isEmpty()) {
      return byHand
          + "stand them "
          + units.distance(exposure.isolation().high())
          + " or more apart, or do not save this seed.";
    }
    boolean volunteer = exposure.source().outsider().get().volunteer();
    return (volunteer ? "Pull the volunteer before it flowers. " : "")
        + byHand
        + "or do not save this seed.";
  }
}
