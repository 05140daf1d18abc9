package slipday.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slipday.climate.Climate;
import slipday.climate.FrostLaw;
import slipday.climate.SiteClimateInput;
import slipday.climate.SitePlace;
import slipday.climate.WeatherReader;
import slipday.climate.WeatherRecord;
import slipday.climate.WeatherYear;
import slipday.climate.WeatherYears;
import slipday.source.Source;

class TernHollowWeatherTest {
  private static WeatherRecord record() {
    var outcome =
        WeatherReader.read(
            Source.of("tern-hollow.csv", MakeTernHollowWeather.text()), Optional.empty());
    assertThat(outcome.findings()).isEmpty();
    return outcome.value().orElseThrow();
  }

  private static Climate climate() {
    return Climate.of(
        SiteClimateInput.bare(
                new SitePlace(44.21, -72.58, 310), ZoneId.of("America/New_York"), 2027)
            .withRecord(record()));
  }

  @Test
  void theFileIsWhatTheProgramMakes() throws IOException {
    assertThat(Files.readString(MakeTernHollowWeather.FILE))
        .isEqualTo(MakeTernHollowWeather.text());
  }

  @Test
  void itsGapsAreToldAndTheLongOneInMayCostsItsSeason() {
    WeatherRecord record = record();
    assertThat(record.days()).isEqualTo(10_958);
    assertThat(record.gaps()).hasSize(6);
    WeatherYears years = climate().years().orElseThrow();
    assertThat(years.usable()).hasSize(29);
    assertThat(years.leftOut()).extracting(WeatherYear::label).containsExactly("2008");
    // 4, 3, 2, 1 and 12 days; 28 and 29 February share a slot.
    assertThat(years.filledDays()).isEqualTo(4 + 3 + 1 + 1 + 12);
  }

  /** The climate that the example garden was invented with: common practice, no source. */
  @Test
  void itIsTheCoolHillClimateItClaimsToBe() {
    Climate climate = climate();
    FrostLaw spring = climate.lastSpringFrost().orElseThrow();
    FrostLaw autumn = climate.firstAutumnFrost().orElseThrow();
    assertThat(spring.median()).isBetween(slot(5, 12), slot(5, 18));
    assertThat(spring.slotAtRisk(0.1).orElseThrow()).isBetween(slot(5, 25), slot(6, 1));
    assertThat(autumn.median()).isBetween(slot(9, 25), slot(10, 1));
    assertThat(autumn.slotAtRisk(0.1).orElseThrow()).isBetween(slot(9, 12), slot(9, 20));
    WeatherYears years = climate.years().orElseThrow();
    assertThat(july(years.meanHighs())).isBetween(26.0, 28.0);
    assertThat(july(years.meanLows())).isBetween(13.0, 15.0);
  }

  private static double slot(int month, int day) {
    return LocalDate.of(2027, month, day).getDayOfYear() - 1.0;
  }

  private static double july(double[] means) {
    return Arrays.stream(means, (int) slot(7, 1), (int) slot(8, 1)).average().orElseThrow();
  }
}
