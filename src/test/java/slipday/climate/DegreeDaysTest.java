package slipday.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DegreeDaysTest {
  /** The first three: Ohio State University, Ohioline AGF-101; the rest: extension bulletins. */
  @ParameterizedTest
  @CsvSource({
    "80, 60, 20",
    "60, 40, 5",
    "90, 70, 28",
    "87, 63, 24.5",
    "90, 65, 25.5",
    "72, 46, 11",
    "63, 42, 6.5"
  })
  void holdsBothLimits(double high, double low, double expected) {
    assertThat(DegreeDays.ofDay(DegreeDayMethod.AVERAGE_BOTH_LIMITS, low, high, 50, 86))
        .isEqualTo(expected);
  }

  /**
   * Iowa State University, Agronomy 541 (70/50, base 50); University of California IPM (64, 53).
   */
  @ParameterizedTest
  @CsvSource({"70, 50, 50, 10", "70, 58, 53, 11"})
  void takesThePlainAverage(double high, double low, double base, double expected) {
    assertThat(DegreeDays.ofDay(DegreeDayMethod.AVERAGE, low, high, base, DegreeDays.NO_LIMIT))
        .isEqualTo(expected);
  }

  /**
   * Baskerville and Emin 1969, Ecology 50:514: the method; the values recomputed from its closed
   * form and by numerical integration.
   */
  @ParameterizedTest
  @CsvSource({
    "40, 70, 50, Infinity, 7.542449",
    "45, 75, 50, Infinity, 10.881608",
    "60, 95, 50, 86, 25.508551",
    "5, 20, 10, 30, 3.771224",
    "8, 33, 10, 30, 10.295484",
    "14, 36, 10, 30, 13.630221",
    "7, 14, 12, 33, 0.468059"
  })
  void integratesASingleSine(double low, double high, double base, double limit, double expected) {
    assertThat(DegreeDays.ofDay(DegreeDayMethod.SINGLE_SINE, low, high, base, limit))
        .isCloseTo(expected, within(1e-6));
  }

  /** Where the base is the day's mean, a sine of amplitude a has a/π above it. */
  @Property
  void sineAroundTheBaseGivesItsAmplitudeOverPi(
      @ForAll @DoubleRange(min = -20, max = 40) double base,
      @ForAll @DoubleRange(min = 0.01, max = 30) double amplitude) {
    double sum =
        DegreeDays.ofDay(
            DegreeDayMethod.SINGLE_SINE,
            base - amplitude,
            base + amplitude,
            base,
            DegreeDays.NO_LIMIT);
    assertThat(sum).isCloseTo(amplitude / Math.PI, within(1e-9));
  }

  @Property
  void noMethodGivesLessThanNoneOrMoreThanTheLimitAllows(
      @ForAll DegreeDayMethod method,
      @ForAll @DoubleRange(min = -40, max = 45) double low,
      @ForAll @DoubleRange(min = 0, max = 30) double range) {
    double sum = DegreeDays.ofDay(method, low, low + range, 10, 30);
    assertThat(sum).isBetween(-1e-9, 20 + 1e-9);
  }

  /** Whole years by average, base 10 °C: recomputed from the open records named in OpenWeather. */
  @Test
  void addsUpWholeYearsOfTheOpenRecords() {
    assertThat(years(OpenWeather.seattle(), DegreeDayMethod.AVERAGE, DegreeDays.NO_LIMIT))
        .usingComparatorWithPrecision(0.005)
        .containsExactly(1133.40, 1369.25, 1490.20, 1541.05);
    assertThat(years(OpenWeather.newYork(), DegreeDayMethod.AVERAGE, DegreeDays.NO_LIMIT))
        .usingComparatorWithPrecision(0.005)
        .containsExactly(2140.55, 1977.15, 1994.65, 2290.35);
    assertThat(years(OpenWeather.seattle(), DegreeDayMethod.AVERAGE_BOTH_LIMITS, 30))
        .usingComparatorWithPrecision(0.005)
        .containsExactly(1260.65, 1493.65, 1610.65, 1667.50);
  }

  private static double[] years(WeatherRecord record, DegreeDayMethod method, double limit) {
    return WeatherYears.of(record, Hemisphere.NORTH).usable().stream()
        .mapToDouble(
            y -> DegreeDays.sum(method, y.lows(), y.highs(), 0, SeasonAxis.SLOTS, 10, limit))
        .toArray();
  }

  @Test
  void theRunningSumReachesWhatItShould() {
    double[] lows = IntStream.range(0, 30).mapToDouble(i -> 10).toArray();
    double[] highs = IntStream.range(0, 30).mapToDouble(i -> 20).toArray();
    double[] sums = DegreeDays.accumulate(DegreeDayMethod.AVERAGE, lows, highs, 10, 10, 30);
    assertThat(sums).hasSize(20).startsWith(5, 10, 15).endsWith(100);
    assertThat(DegreeDays.slotReaching(15, DegreeDayMethod.AVERAGE, lows, highs, 10, 10, 30))
        .isEqualTo(12);
    assertThat(DegreeDays.slotReaching(101, DegreeDayMethod.AVERAGE, lows, highs, 10, 10, 30))
        .isEqualTo(-1);
  }

  @Test
  void totalsOfDifferentKindsAreRefused() {
    var span = new HeatSpan.EmergenceToFlower();
    var tenToThirty = new DegreeDayKind<>(span, DegreeDayMethod.AVERAGE, 10, 30);
    var twelveToThirty = new DegreeDayKind<>(span, DegreeDayMethod.AVERAGE, 12, 30);
    var bySine = new DegreeDayKind<>(span, DegreeDayMethod.SINGLE_SINE, 10, 30);
    assertThat(tenToThirty.total(100).plus(tenToThirty.total(50)).celsiusDays()).isEqualTo(150);
    assertThat(tenToThirty.total(100)).isGreaterThan(tenToThirty.total(50));
    assertThatThrownBy(() -> tenToThirty.total(1).plus(twelveToThirty.total(1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("base 12 °C");
    assertThatThrownBy(() -> tenToThirty.total(1).compareTo(bySine.total(1)))
        .isInstanceOf(IllegalArgumentException.class);
    var days = new HeatSpan.DayToDay("1 May", "30 September");
    assertThat(new DegreeDayKind<>(days, DegreeDayMethod.AVERAGE, 10, 30).describe())
        .isEqualTo("base 10 °C, limit 30 °C, daily average, from 1 May to 30 September");
  }
}
