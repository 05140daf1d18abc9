package slipday.rules.weather;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.climate.SunTimes;
import slipday.finding.Level;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/**
 * Flowers are to be covered at dusk where, on those days, the sun does not set, or does not rise.
 */
public final class SunNeverSets implements Rule {
  /** Degrees from the equator within which the sun rises and sets on every day, amply. */
  private static final double SETS_EVERY_DAY = 60;

  @Override
  public String id() {
    return "sun-never-sets";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    double latitude = season.garden().site().place().value().latitude();
    if (Math.abs(latitude) < SETS_EVERY_DAY) {
      return;
    }
    List<PlantingSeason> without =
        season.plantings().stream().filter(p -> days(p).anyMatch(d -> noDusk(season, d))).toList();
    if (without.isEmpty()) {
      return;
    }
    LocalDate day = days(without.get(0)).filter(d -> noDusk(season, d)).findFirst().orElseThrow();
    Reporter.Report report =
        reporter
            .report(
                season.garden().site(),
                season.garden().site().places().of(PlanClauses.PLACE),
                "While "
                    + Words.list(without.stream().map(PlantingSeason::name).limit(3).toList())
                    + (without.size() > 3
                        ? " and others flower"
                        : without.size() > 1 ? " flower" : " flowers")
                    + ", the sun does not both rise and set here: on "
                    + Words.day(day)
                    + " it stays "
                    + (season.climate().sun(day).dayLength().toHours() > 12 ? "up." : "down."))
            .help(
                "Hours of dusk are then told by the clock, from eight in the evening. Look when your"
                    + " flowers open and when bees fly, and go by that. If the garden does not lie"
                    + " so far from the equator, mend its latitude.");
    without.forEach(p -> report.concerns(p.planting()));
  }

  private static Stream<LocalDate> days(PlantingSeason planting) {
    return Stream.of(Event.FIRST_MALE, Event.FIRST_FRUITING, Event.BLOOM_ENDS)
        .flatMap(e -> planting.date(e).stream())
        .map(d -> d.value())
        .map(DateSpread::usual)
        .flatMap(Optional::stream);
  }

  private static boolean noDusk(Season season, LocalDate day) {
    SunTimes sun = season.climate().sun(day);
    return sun.sunset().isEmpty() || sun.sunrise().isEmpty();
  }
}
