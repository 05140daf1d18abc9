package slipday.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.measure.Units;

class ClimateTest {
  private static final SitePlace NEW_YORK = new SitePlace(40.8, -74, 40);
  private static final ZoneId ZONE = ZoneId.of("America/New_York");
  private static final SiteClimateInput BARE = SiteClimateInput.bare(NEW_YORK, ZONE, 2027);

  private static SiteClimateInput with(
      Optional<WeatherRecord> record,
      double offset,
      double nights,
      Optional<StatedFrost> last,
      List<SoilReading> readings) {
    return new SiteClimateInput(
        NEW_YORK,
        ZONE,
        2027,
        record,
        offset == 0
            ? Optional.empty()
            : Optional.of(new Reasoned<>(offset, Reason.byDefault("stated"))),
        nights == 0
            ? Optional.empty()
            : Optional.of(new Reasoned<>(nights, Reason.byDefault("stated"))),
        last,
        Optional.empty(),
        readings,
        Units.METRIC);
  }

  private static StatedFrost stated() {
    return StatedFrost.of(
        FrostSide.SPRING, BARE.axis(), 137, 149, Reason.byDefault("the plan's line"));
  }

  @Test
  void aBarePlaceHasTheSunAndNothingElse() {
    Climate climate = Climate.of(BARE);
    assertThat(climate.years()).isEmpty();
    assertThat(climate.usableYears()).isEmpty();
    assertThat(climate.lastSpringFrost()).isEmpty();
    assertThat(climate.reasons()).isEmpty();
    assertThat(climate.sun(LocalDate.of(2027, 6, 1)).sunrise()).isPresent();
  }

  @Test
  void aRecordGivesYearsAndFrostsAndSaysFromWhat() {
    Climate climate = Climate.of(BARE.withRecord(OpenWeather.newYork()));
    assertThat(climate.usableYears()).hasSize(4);
    assertThat(climate.lastSpringFrost()).containsInstanceOf(RecordedFrost.class);
    assertThat(climate.firstAutumnFrost().orElseThrow().axis()).isEqualTo(climate.axis());
    assertThat(climate.reasons())
        .extracting(Reason::says)
        .contains(
            "`new-york.csv` is a table of days in degrees Celsius: 4 seasons are used (2012 to"
                + " 2015) and 0 left out.")
        .anyMatch(s -> s.startsWith("Soil temperature is an estimate"));
  }

  @Test
  void aColderGardenHasLaterFrostsAndAFrostPocketLaterStill() {
    double there = medianLastFrost(0, 0);
    double colderHere = medianLastFrost(-1.5, 0);
    assertThat(colderHere).isGreaterThan(there);
    assertThat(medianLastFrost(-1.5, -3)).isGreaterThan(colderHere);
    Climate colder =
        Climate.of(with(Optional.of(OpenWeather.newYork()), -1.5, 0, Optional.empty(), List.of()));
    assertThat(colder.reasons())
        .extracting(Reason::says)
        .contains("The garden is taken to be 1.5 °C colder than the station day and night.");
  }

  private static double medianLastFrost(double offset, double nights) {
    return Climate.of(
            with(Optional.of(OpenWeather.newYork()), offset, nights, Optional.empty(), List.of()))
        .lastSpringFrost()
        .orElseThrow()
        .median();
  }

  @Test
  void theGardenersOwnFrostWinsOverTheRecords() {
    Climate climate =
        Climate.of(
            with(Optional.of(OpenWeather.newYork()), 0, 0, Optional.of(stated()), List.of()));
    assertThat(climate.lastSpringFrost()).containsInstanceOf(StatedFrost.class);
    assertThat(climate.firstAutumnFrost()).containsInstanceOf(RecordedFrost.class);
    assertThat(climate.frost(FrostSide.SPRING, FrostThreshold.GROUND))
        .containsInstanceOf(RecordedFrost.class);
  }

  @Test
  void statedFrostIsEnoughWithoutARecord() {
    Climate climate = Climate.of(with(Optional.empty(), 0, 0, Optional.of(stated()), List.of()));
    assertThat(climate.lastSpringFrost().orElseThrow().median()).isEqualTo(137);
    assertThat(climate.frost(FrostSide.SPRING, FrostThreshold.GROUND)).isEmpty();
    assertThat(climate.reasons()).hasSize(1);
  }

  @Test
  void soilFollowsSteadyAirAndLagsBehindAJump() {
    double[] lows = new double[SeasonAxis.SLOTS];
    double[] highs = new double[SeasonAxis.SLOTS];
    Arrays.fill(lows, 0, 100, 5);
    Arrays.fill(highs, 0, 100, 15);
    Arrays.fill(lows, 100, SeasonAxis.SLOTS, 15);
    Arrays.fill(highs, 100, SeasonAxis.SLOTS, 25);
    double[] soil = SoilTemperature.unread().estimate(lows, highs);
    assertThat(soil[99]).isCloseTo(10, within(1e-9));
    assertThat(soil[100]).isCloseTo(10 + 10 * 11 / 66.0, within(1e-9));
    assertThat(soil[105]).isBetween(16.0, 20.0);
    assertThat(soil[110]).isCloseTo(20, within(1e-9));
    assertThat(soil[0]).isCloseTo(10, within(1e-9));
  }

  @Test
  void theGardenersReadingsMoveTheSoilAndFadeAway() {
    double[] lows = new double[SeasonAxis.SLOTS];
    double[] highs = new double[SeasonAxis.SLOTS];
    Arrays.fill(highs, 20);
    SoilTemperature soil =
        SoilTemperature.read(
            List.of(new SoilReading(130, 13), new SoilReading(134, 12), new SoilReading(900, 40)),
            lows,
            highs);
    assertThat(soil.shift()).isCloseTo(2.5, within(1e-9));
    assertThat(soil.estimate(lows, highs)[132]).isCloseTo(12.5, within(1e-9));
    assertThat(soil.estimate(lows, highs)[134 + 35]).isCloseTo(11.25, within(1e-9));
    assertThat(soil.estimate(lows, highs)[134 + 60]).isCloseTo(10, within(1e-9));
    assertThat(soil.width()).isEqualTo(2);
    assertThat(soil.reason(Units.METRIC).from())
        .extracting(Reason::says)
        .contains("Your own 2 readings moved it by +2.5 °C near their days.");
    assertThat(SoilTemperature.unread().width()).isEqualTo(3);
  }

  @Test
  void soilOfAYearIsThatOfItsOwnClimate() {
    Climate climate = Climate.of(BARE.withRecord(OpenWeather.newYork()));
    WeatherYear year = climate.usableYears().get(0);
    assertThat(climate.soil(year)).hasSize(SeasonAxis.SLOTS);
    // By mid May the soil of that mild place has long passed 12 °C, in mid January it has not.
    assertThat(climate.soil(year)[135]).isBetween(12.0, 24.0);
    assertThat(climate.soil(year)[15]).isLessThan(8);
    Climate other = Climate.of(BARE.withRecord(OpenWeather.seattle()));
    assertThatThrownBy(() -> other.soil(year)).isInstanceOf(IllegalArgumentException.class);
  }
}
