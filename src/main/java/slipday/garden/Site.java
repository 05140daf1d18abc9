package slipday.garden;

import java.time.MonthDay;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import slipday.language.Value;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.measure.Units;
import slipday.source.Span;

/**
 * Where the garden lies and what is known of its weather.
 *
 * @param units those its gardener is answered in
 */
public record Site(
    String name,
    String title,
    Reasoned<Place> place,
    ZoneId zone,
    Optional<WeatherFile> weather,
    double warmerThanStation,
    Reasoned<Double> frostRisk,
    Optional<StatedFrost> lastFrost,
    Optional<StatedFrost> firstFrost,
    List<Reasoned<SoilReading>> soil,
    Optional<Reasoned<Integer>> morningsAWeek,
    Reasoned<Hands> hands,
    Units units,
    Places places)
    implements Named {

  /** Degrees north and east, metres above the sea. */
  public record Place(double latitude, double longitude, Optional<Double> height) {
    public boolean isSouthern() {
      return latitude < 0;
    }
  }

  /** The path as written, the unit if told, and the clause it stands in. */
  public record WeatherFile(String path, Optional<String> unit, Span span) {}

  /** A usual day, and where told a share of years beyond a second day. */
  public record StatedFrost(MonthDay usual, Optional<Odds> odds, Reason reason) {}

  /** In this share of years the frost comes later (spring) or earlier (autumn) than the day. */
  public record Odds(double share, MonthDay day) {}

  /** A soil temperature (°C) the gardener read on a day. */
  public record SoilReading(double celsius, Value.Day day) {}

  /** How many people pollinate and how many flowers each does in a morning. */
  public record Hands(int people, int flowersEach) {}

  @Override
  public Span span() {
    return places.block().span();
  }
}
