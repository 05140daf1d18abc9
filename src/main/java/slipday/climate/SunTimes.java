package slipday.climate;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.shredzone.commons.suncalc.SunPosition;
import org.shredzone.commons.suncalc.SunTimes.Twilight;

/**
 * The sun of one local day at a place: the day around its solar noon, so that a sunset past
 * midnight still belongs to the day it ends. Horizon at sea level, upper limb, with refraction, as
 * almanacs give it.
 *
 * @param dawn the sun 6° below the horizon (civil); empty where that does not happen
 * @param dayLength from sunrise to sunset; none or a whole day where the sun does not rise or set
 */
public record SunTimes(
    LocalDate date,
    Optional<ZonedDateTime> dawn,
    Optional<ZonedDateTime> sunrise,
    ZonedDateTime noon,
    Optional<ZonedDateTime> sunset,
    Optional<ZonedDateTime> dusk,
    Duration dayLength) {
  private static final Duration HALF_A_DAY = Duration.ofHours(12);

  /** In the clock time of a zone. */
  public static SunTimes at(SitePlace place, LocalDate date, ZoneId zone) {
    ZonedDateTime noon = noon(place, date, zone);
    Optional<ZonedDateTime> rise = rise(place, noon, Twilight.VISUAL);
    Optional<ZonedDateTime> set = set(place, noon, Twilight.VISUAL);
    return new SunTimes(
        date,
        rise(place, noon, Twilight.CIVIL),
        rise,
        noon,
        set,
        set(place, noon, Twilight.CIVIL),
        dayLength(place, noon, rise, set));
  }

  private static ZonedDateTime noon(SitePlace place, LocalDate date, ZoneId zone) {
    var noon =
        org.shredzone.commons.suncalc.SunTimes.compute()
            .on(date)
            .timezone(zone)
            .at(place.latitude(), place.longitude())
            .oneDay()
            .execute()
            .getNoon();
    return Optional.ofNullable(noon).orElseGet(() -> date.atTime(12, 0).atZone(zone));
  }

  private static Optional<ZonedDateTime> rise(
      SitePlace place, ZonedDateTime noon, Twilight twilight) {
    return Optional.ofNullable(halfDay(place, noon.minus(HALF_A_DAY), twilight).getRise());
  }

  private static Optional<ZonedDateTime> set(
      SitePlace place, ZonedDateTime noon, Twilight twilight) {
    return Optional.ofNullable(halfDay(place, noon, twilight).getSet());
  }

  private static org.shredzone.commons.suncalc.SunTimes halfDay(
      SitePlace place, ZonedDateTime from, Twilight twilight) {
    return org.shredzone.commons.suncalc.SunTimes.compute()
        .on(from)
        .at(place.latitude(), place.longitude())
        .limit(HALF_A_DAY)
        .twilight(twilight)
        .execute();
  }

  private static Duration dayLength(
      SitePlace place,
      ZonedDateTime noon,
      Optional<ZonedDateTime> rise,
      Optional<ZonedDateTime> set) {
    if (rise.isEmpty() && set.isEmpty() && !isUp(place, noon)) {
      return Duration.ZERO;
    }
    return Duration.between(rise.orElse(noon.minus(HALF_A_DAY)), set.orElse(noon.plus(HALF_A_DAY)));
  }

  private static boolean isUp(SitePlace place, ZonedDateTime when) {
    return SunPosition.compute()
            .on(when)
            .at(place.latitude(), place.longitude())
            .execute()
            .getAltitude()
        > 0;
  }

  /** The clock time of an hour by the sun, 12 being solar noon. */
  public ZonedDateTime clockAt(double solarHour) {
    return noon.plusSeconds(Math.round((solarHour - 12) * 3600));
  }
}
