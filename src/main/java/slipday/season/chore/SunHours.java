package slipday.season.chore;

import java.time.LocalDateTime;
import slipday.climate.SunTimes;

/** The hours of pollination by the sun, to five minutes. */
public final class SunHours {
  private static final int STEP = 5;

  /** Where the sun does not set there is no dusk: an hour by the clock instead. */
  private static final int EVENING_BY_THE_CLOCK = 20;

  private static final double LAST_SOLAR_HOUR = 10;

  private SunHours() {}

  /** From sunset, when the bees are home, while there is light to see by: civil dusk. */
  public static ChoreTime dusk(SunTimes day) {
    LocalDateTime sunset = sunset(day);
    LocalDateTime dusk =
        day.dusk().map(t -> rounded(t.toLocalDateTime())).orElse(sunset.plusHours(1));
    LocalDateTime least = sunset.plusMinutes(30);
    return new ChoreTime.Hours(sunset, dusk.isBefore(least) ? least : dusk);
  }

  public static ChoreTime beforeSunset(SunTimes day) {
    LocalDateTime sunset = sunset(day);
    return new ChoreTime.Hours(sunset.minusHours(1), sunset);
  }

  private static LocalDateTime sunset(SunTimes day) {
    return day.sunset()
        .map(t -> rounded(t.toLocalDateTime()))
        .orElse(day.date().atTime(EVENING_BY_THE_CLOCK, 0));
  }

  /**
   * From sunrise to ten o'clock solar; perfect flowers from an hour later, for they open after the
   * males (a floral biology of Cucumis melo in India: males 05:45 to 07:00, perfect ones 07:00 to
   * 08:30).
   */
  public static ChoreTime morning(SunTimes day, boolean perfect) {
    LocalDateTime end = rounded(day.clockAt(LAST_SOLAR_HOUR).toLocalDateTime());
    LocalDateTime sunrise =
        day.sunrise().map(t -> rounded(t.toLocalDateTime())).orElse(end.minusHours(4));
    LocalDateTime open = perfect ? sunrise.plusHours(1) : sunrise;
    LocalDateTime latest = end.minusHours(1);
    return new ChoreTime.Hours(open.isAfter(latest) ? latest : open, end);
  }

  private static LocalDateTime rounded(LocalDateTime time) {
    LocalDateTime shifted = time.plusSeconds(STEP * 30L);
    return shifted.withMinute(shifted.getMinute() / STEP * STEP).withSecond(0).withNano(0);
  }
}
