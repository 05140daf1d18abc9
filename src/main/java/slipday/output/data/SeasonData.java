package slipday.output.data;

import java.time.LocalDate;
import slipday.climate.Climate;
import slipday.garden.Garden;
import slipday.season.Season;

/**
 * The season and the garden a document is about.
 *
 * @param label {@code 2026}, or {@code 2026-27} where it crosses the new year
 * @param weatherYears how many seasons of a weather record it is reckoned with; 0 without one
 */
public record SeasonData(
    String label, LocalDate first, LocalDate last, String site, String title, int weatherYears) {
  public static SeasonData of(Season season) {
    return of(season.garden(), season.climate());
  }

  static SeasonData of(Garden garden, Climate climate) {
    return new SeasonData(
        garden.season().label(),
        garden.season().first(),
        garden.season().last(),
        garden.site().name(),
        garden.site().title(),
        climate.usableYears().size());
  }
}
