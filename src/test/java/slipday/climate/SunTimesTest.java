package slipday.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SunTimesTest {
  private static SunTimes sun(double latitude, double longitude, String date, String zone) {
    return SunTimes.at(
        new SitePlace(latitude, longitude, 0), LocalDate.parse(date), ZoneId.of(zone));
  }

  private static void assertWithin(
      Optional<ZonedDateTime> time, String expected, Duration tolerance) {
    ZonedDateTime wanted = ZonedDateTime.parse(expected);
    assertThat(Duration.between(wanted, time.orElseThrow()).abs())
        .as("%s for %s", time, expected)
        .isLessThanOrEqualTo(tolerance);
  }

  /** US Naval Observatory, Washington, 20 March 2002, EST; two minutes for the rounded place. */
  @Test
  void agreesWithTheNavalObservatory() {
    SunTimes sun = sun(38.9, -77.0, "2002-03-20", "-05:00");
    Duration two = Duration.ofMinutes(2);
    assertWithin(sun.dawn(), "2002-03-20T05:45:00-05:00", two);
    assertWithin(sun.sunrise(), "2002-03-20T06:12:00-05:00", two);
    assertWithin(sun.sunset(), "2002-03-20T18:21:00-05:00", two);
    assertWithin(sun.dusk(), "2002-03-20T18:47:00-05:00", two);
  }

  /**
   * Three libraries independent of this one agree on these to 10 s; this one may differ by a
   * minute, an almanac's own rounding.
   */
  @Test
  void agreesWithOtherLibraries() {
    Duration one = Duration.ofMinutes(1);
    SunTimes milwaukee = sun(42.955, -87.9044, "2024-05-15", "America/Chicago");
    assertWithin(milwaukee.sunrise(), "2024-05-15T10:27:57Z", one);
    assertWithin(milwaukee.sunset(), "2024-05-16T01:08:40Z", one);
    SunTimes greenwich = sun(51.4779, 0, "2024-06-20", "Europe/London");
    assertWithin(greenwich.sunrise(), "2024-06-20T03:42:40Z", one);
    assertWithin(greenwich.sunset(), "2024-06-20T20:20:45Z", one);
    SunTimes oslo = sun(59.9139, 10.7522, "2024-06-20", "Europe/Oslo");
    assertWithin(oslo.sunrise(), "2024-06-20T01:53:42Z", one);
    assertWithin(oslo.sunset(), "2024-06-20T20:43:43Z", one);
    SunTimes sydney = sun(-33.8688, 151.2093, "2024-12-21", "Australia/Sydney");
    assertWithin(sydney.sunset(), "2024-12-21T09:05:39Z", one);
  }

  @Test
  void theSunOfTromsoNeitherSetsNorRisesAtTheSolstices() {
    SunTimes midsummer = sun(69.6492, 18.9553, "2024-06-21", "Europe/Oslo");
    assertThat(midsummer.sunrise()).isEmpty();
    assertThat(midsummer.sunset()).isEmpty();
    assertThat(midsummer.dawn()).isEmpty();
    assertThat(midsummer.dayLength()).isEqualTo(Duration.ofDays(1));
    SunTimes midwinter = sun(69.6492, 18.9553, "2024-12-21", "Europe/Oslo");
    assertThat(midwinter.sunrise()).isEmpty();
    assertThat(midwinter.sunset()).isEmpty();
    assertThat(midwinter.dawn()).isPresent();
    assertThat(midwinter.dayLength()).isZero();
  }

  @Property(tries = 200)
  void everyTimeBelongsToTheLocalDayAndComesInOrder(
      @ForAll @DoubleRange(min = -55, max = 55) double latitude,
      @ForAll @IntRange(min = -12, max = 12) int hoursEast,
      @ForAll @IntRange(min = 0, max = 3000) int day) {
    LocalDate date = LocalDate.of(2020, 1, 1).plusDays(day);
    SunTimes sun =
        SunTimes.at(
            new SitePlace(latitude, hoursEast * 15, 0), date, ZoneOffset.ofHours(hoursEast));
    assertThat(sun.noon().toLocalDate()).isEqualTo(date);
    assertThat(sun.sunrise().orElseThrow().toLocalDate()).isEqualTo(date);
    assertThat(sun.sunset().orElseThrow().toLocalDate()).isEqualTo(date);
    assertThat(sun.dawn().orElseThrow()).isBefore(sun.sunrise().orElseThrow());
    assertThat(sun.sunrise().orElseThrow()).isBefore(sun.noon());
    assertThat(sun.noon()).isBefore(sun.sunset().orElseThrow());
    assertThat(sun.sunset().orElseThrow()).isBefore(sun.dusk().orElseThrow());
  }

  /** A sunset past midnight, in summer time far north, ends the day it belongs to. */
  @Test
  void aSunsetPastMidnightBelongsToTheDayBefore() {
    SunTimes sun = sun(65.3, -18.5, "2024-06-18", "Atlantic/Reykjavik");
    assertThat(sun.sunrise().orElseThrow()).isBefore(sun.noon());
    assertThat(sun.sunset().orElseThrow().toLocalDate()).isEqualTo("2024-06-19");
  }

  @Test
  void givesTheClockTimeOfAnHourByTheSun() {
    SunTimes sun = sun(44.21, -72.58, "2027-07-08", "America/New_York");
    assertThat(sun.clockAt(12)).isEqualTo(sun.noon());
    assertThat(Duration.between(sun.clockAt(10), sun.noon())).isEqualTo(Duration.ofHours(2));
    // 72.58 W is 9.7 minutes east of the zone's meridian, summer time adds an hour, and the
    // equation of time about five minutes.
    assertThat(sun.noon().toLocalTime()).isBetween(LocalTime.of(12, 53), LocalTime.of(12, 58));
  }
}
