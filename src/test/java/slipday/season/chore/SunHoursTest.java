package slipday.season.chore;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import slipday.climate.SitePlace;
import slipday.climate.SunTimes;

class SunHoursTest {
  /**
   * Washington, 20 March 2002, standard time: sunrise 6:12, sunset 18:21, end of civil twilight
   * 18:47 (US Naval Observatory); the clock is on standard time that day. Solar noon lies halfway
   * between sunrise and sunset, within a minute at the equinox.
   */
  @Test
  void theHoursAreThoseOfTheAlmanacToFiveMinutes() {
    SunTimes day = sun(38.9, -77.0, LocalDate.of(2002, 3, 20), "America/New_York");
    assertHours(SunHours.dusk(day), "2002-03-20T18:20", "2002-03-20T18:50");
    assertHours(SunHours.beforeSunset(day), "2002-03-20T17:20", "2002-03-20T18:20");
    assertHours(SunHours.morning(day, false), "2002-03-20T06:10", "2002-03-20T10:15");
    assertHours(SunHours.morning(day, true), "2002-03-20T07:10", "2002-03-20T10:15");
  }

  @Test
  void everyDayOfEveryLatitudeHasAnEveningAndAMorning() {
    for (double latitude = -80; latitude <= 80; latitude += 5) {
      for (int week = 0; week < 52; week++) {
        SunTimes day = sun(latitude, 15, LocalDate.of(2026, 1, 1).plusWeeks(week), "Europe/Oslo");
        ChoreTime.Hours evening = (ChoreTime.Hours) SunHours.dusk(day);
        ChoreTime.Hours morning = (ChoreTime.Hours) SunHours.morning(day, true);
        assertThat(Duration.between(evening.from(), evening.to())).isGreaterThan(Duration.ZERO);
        assertThat(morning.from()).isBefore(morning.to());
        assertThat(morning.from().getMinute() % 5).isZero();
        assertThat(SunHours.beforeSunset(day).start()).isBefore(evening.from());
      }
    }
  }

  /** No sunset at Tromsø at midsummer: an hour by the clock. */
  @Test
  void whereTheSunDoesNotSetTheClockTellsTheEvening() {
    SunTimes day = sun(69.6492, 18.9553, LocalDate.of(2023, 6, 20), "Europe/Oslo");
    assertHours(SunHours.dusk(day), "2023-06-20T20:00", "2023-06-20T21:00");
  }

  private static SunTimes sun(double latitude, double longitude, LocalDate date, String zone) {
    return SunTimes.at(new SitePlace(latitude, longitude, 0), date, ZoneId.of(zone));
  }

  private static void assertHours(ChoreTime time, String from, String to) {
    assertThat(time)
        .isEqualTo(new ChoreTime.Hours(LocalDateTime.parse(from), LocalDateTime.parse(to)));
  }
}
