package slipday.climate;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import slipday.measure.Reasoned;
import slipday.measure.Units;

/**
 * What a plan says of its site's climate.
 *
 * @param year the calendar year the season planned begins in
 * @param record the station's record, as read
 * @param offset °C that the garden is warmer than the station, day and night; negative for colder
 * @param nightOffset °C on top of it at night: a frost pocket's is negative
 * @param lastFrost the gardener's own last spring frost
 * @param firstFrost the gardener's own first autumn frost
 * @param soilReadings soil temperatures read at sowing depth
 * @param units those the gardener is answered in
 */
public record SiteClimateInput(
    SitePlace place,
    ZoneId zone,
    int year,
    Optional<WeatherRecord> record,
    Optional<Reasoned<Double>> offset,
    Optional<Reasoned<Double>> nightOffset,
    Optional<StatedFrost> lastFrost,
    Optional<StatedFrost> firstFrost,
    List<SoilReading> soilReadings,
    Units units) {
  public SiteClimateInput {
    soilReadings = List.copyOf(soilReadings);
  }

  /** The axis of the season planned, on which stated frosts and readings have their slots. */
  public SeasonAxis axis() {
    return new SeasonAxis(place.hemisphere(), year);
  }

  /** A place of which nothing more is known. */
  public static SiteClimateInput bare(SitePlace place, ZoneId zone, int year) {
    return new SiteClimateInput(
        place,
        zone,
        year,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Units.METRIC);
  }

  public SiteClimateInput withRecord(WeatherRecord weather) {
    return new SiteClimateInput(
        place,
        zone,
        year,
        Optional.of(weather),
        offset,
        nightOffset,
        lastFrost,
        firstFrost,
        soilReadings,
        units);
  }

  /** Without any reading of the soil. */
  SiteClimateInput unread() {
    return new SiteClimateInput(
        place, zone, year, record, offset, nightOffset, lastFrost, firstFrost, List.of(), units);
  }
}
