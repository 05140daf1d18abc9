package slipday.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slipday.measure.Reason;

/** Measured on the two open records of {@link OpenWeather}. */
class FrostDepthTest {
  private static final SeasonAxis AXIS = SeasonAxis.northern(2027);
  private static final double[] LOWS = {-2, -1, 0, 1, 2};

  private static WeatherYears years(WeatherRecord record) {
    return WeatherYears.of(record, Hemisphere.NORTH);
  }

  /** Days the last low of spring, or the first of autumn, moves with a degree: least squares. */
  private static double daysPerDegree(WeatherRecord record, boolean spring) {
    double sum = 0;
    double squares = 0;
    for (double low : LOWS) {
      sum += low * meanSlot(years(record).usable(), spring, low);
      squares += low * low;
    }
    return sum / squares;
  }

  private static double meanSlot(List<WeatherYear> years, boolean spring, double celsius) {
    int midsummer = AXIS.midsummer();
    return years.stream()
        .flatMapToInt(
            y -> {
              IntStream cold =
                  IntStream.range(spring ? 0 : midsummer, spring ? midsummer : SeasonAxis.SLOTS)
                      .filter(s -> y.measuredLows()[s] <= celsius);
              return (spring ? cold.max() : cold.min()).stream();
            })
        .average()
        .orElseThrow();
  }

  @Test
  void aDegreeIsAboutFiveDaysAndMoreBySeaInSpring() {
    assertThat(daysPerDegree(OpenWeather.newYork(), false)).isCloseTo(-5, within(0.5));
    assertThat(daysPerDegree(OpenWeather.seattle(), false)).isCloseTo(-4, within(0.5));
    assertThat(daysPerDegree(OpenWeather.newYork(), true)).isCloseTo(4, within(0.5));
    assertThat(daysPerDegree(OpenWeather.seattle(), true)).isCloseTo(14, within(0.5));
    assertThat(FrostDepth.DAYS_PER_DEGREE).isEqualTo(5);
  }

  @Test
  void aDeeperFrostEndsSoonerAndBeginsLater() {
    StatedFrost law = StatedFrost.of(FrostSide.SPRING, AXIS, 134, 146, Reason.byDefault("told"));
    assertThat(FrostDepth.chanceAfter(law, 146, 0)).isCloseTo(0.1, within(1e-6));
    assertThat(FrostDepth.chanceAfter(law, 136, -2)).isCloseTo(0.1, within(1e-6));
    assertThat(FrostDepth.chanceAfter(law, 156, 2)).isCloseTo(0.1, within(1e-6));
    assertThat(FrostDepth.autumnSlot(270, -2)).isEqualTo(280);
    assertThat(FrostDepth.isNear(-8)).isTrue();
    assertThat(FrostDepth.isNear(-9)).isFalse();
  }

  /** From the middle of April to the middle of June the air is taken to warm as the soil does. */
  @Test
  void soilWarmsBetweenWhatTheTwoRecordsTell() {
    double newYork = rise(OpenWeather.newYork());
    double seattle = rise(OpenWeather.seattle());
    assertThat(newYork).isCloseTo(0.18, within(0.015));
    assertThat(seattle).isCloseTo(0.11, within(0.015));
    assertThat(ReadSoil.RISE).isBetween(seattle, newYork);
  }

  private static double rise(WeatherRecord record) {
    WeatherYears all = years(record);
    return (month(all, 151, 181) - month(all, 90, 120)) / 61;
  }

  private static double month(WeatherYears years, int from, int to) {
    return IntStream.range(from, to)
        .mapToDouble(s -> (years.meanLows()[s] + years.meanHighs()[s]) / 2)
        .average()
        .orElseThrow();
  }

  @Test
  void readSoilRunsEvenlyBetweenReadingsAndWarmsBesideThem() {
    ReadSoil soil =
        new ReadSoil(
            List.of(new SoilReading(150, 16), new SoilReading(130, 10), new SoilReading(260, 15)),
            AXIS);
    assertThat(soil.at(140).orElseThrow()).isCloseTo(13, within(1e-9));
    assertThat(soil.at(120).orElseThrow()).isCloseTo(8.5, within(1e-9));
    assertThat(soil.at(170).orElseThrow()).isCloseTo(19, within(1e-9));
    assertThat(soil.at(AXIS.midsummer())).isEmpty();
    assertThat(soil.chance(140, 13).orElseThrow()).isCloseTo(0.5, within(1e-9));
    assertThat(soil.chance(140, 15).orElseThrow()).isCloseTo(0.1587, within(1e-3));
    assertThat(soil.width(175)).isEqualTo(SoilTemperature.WIDTH);
    assertThat(new ReadSoil(List.of(new SoilReading(260, 15)), AXIS).isKnown()).isFalse();
  }
}
