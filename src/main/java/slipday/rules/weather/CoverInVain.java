package slipday.rules.weather;

import java.util.Optional;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Words;
import slipday.season.PlantingSeason;
import slipday.source.Span;

/** What a plan says of a cover that the season can't go by. */
final class CoverInVain {
  private CoverInVain() {}

  static void fromSowing(PlantingSeason season, Reporter reporter) {
    Planting planting = season.planting();
    boolean said = planting.cover().filter(c -> c.value().saidFromSowing()).isPresent();
    if (said && season.indoors()) {
      reporter
          .mild(
              planting,
              planting.places().of(PlanClauses.COVER),
              Words.tick(planting.name())
                  + " is raised indoors, so that it is under this cover from planting out, and not"
                  + " from sowing.")
          .help("Write `from planting out`, or `start outdoors`, if it is sown where it stands.");
    }
  }

  static void withoutRecord(Planting planting, Planting.Cover cover, Reporter reporter) {
    Span span = planting.places().find(PlanClauses.COVER).orElse(planting.span());
    Optional<Double> guards = cover.guardsTo();
    String says =
        guards.isPresent()
            ? "Of this cover only the frost it guards against counts, not that the air under it is "
                + reporter.units().writtenDifference(cover.warmer())
                + " warmer: without a weather record plants grow in calendar days."
            : "This cover moves no date: it names no frost that it guards against, and without a"
                + " weather record plants grow in calendar days.";
    reporter
        .mild(planting, span, says)
        .help(
            (guards.isPresent()
                    ? ""
                    : "Add what it guards against, such as `guards to "
                        + reporter.units().written(-2)
                        + "`. ")
                + ToldInVain.RECORD);
  }
}
