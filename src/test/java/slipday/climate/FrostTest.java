package slipday.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import slipday.measure.Reason;
import slipday.measure.Units;

class FrostTest {
  private static final SeasonAxis AXIS = SeasonAxis.northern(2027);

  /**
   * Last low at or below 0 °C before 1 August and first after, recomputed from the open records
   * named in OpenWeather.
   */
  @Test
  void findsTheFrostsOfTheOpenRecords() {
    assertThat(frosts(OpenWeather.seattle()))
        .containsExactly(
            "2012-03-19 2012-11-10",
            "2013-03-04 2013-11-21",
            "2014-02-09 2014-11-12",
            "2015-03-04 2015-11-23");
    assertThat(frosts(OpenWeather.newYork()))
        .containsExactly(
            "2012-03-27 2012-11-06",
            "2013-04-04 2013-11-12",
            "2014-04-16 2014-11-15",
            "2015-03-29 2015-11-24");
  }

  private static List<String> frosts(WeatherRecord record) {
    return WeatherYears.of(record, Hemisphere.NORTH).usable().stream()
        .map(
            y ->
                date(y, FrostDates.lastSpring(y, FrostThreshold.TENDER).orElseThrow())
                    + " "
                    + date(y, FrostDates.firstAutumn(y, FrostThreshold.TENDER).orElseThrow()))
        .toList();
  }

  private static LocalDate date(WeatherYear year, int slot) {
    return year.axis().dateOf(slot);
  }

  /** Hyndman and Fan 1996, definition 7: R gives 1.9, 5.5, 9.1 for 1 to 10 (from memory). */
  @Test
  void quantilesAreOfTypeSeven() {
    int[] ten = IntStream.rangeClosed(1, 10).toArray();
    assertThat(FrostDates.quantile(ten, 0.1)).isCloseTo(1.9, within(1e-12));
    assertThat(FrostDates.quantile(ten, 0.5)).isEqualTo(5.5);
    assertThat(FrostDates.quantile(ten, 0.9)).isCloseTo(9.1, within(1e-12));
    assertThat(FrostDates.quantile(ten, 0)).isEqualTo(1);
    assertThat(FrostDates.quantile(ten, 1)).isEqualTo(10);
  }

  @Test
  void aStatedFrostIsTheNormalThroughItsTwoDates() {
    int may18 = AXIS.slotOf(LocalDate.of(2027, 5, 18));
    int may30 = AXIS.slotOf(LocalDate.of(2027, 5, 30));
    StatedFrost law = StatedFrost.of(FrostSide.SPRING, AXIS, may18, may30, Reason.byDefault("x"));
    assertThat(law.chanceAfter(may18)).isCloseTo(0.5, within(1e-12));
    assertThat(law.chanceAfter(may30)).isCloseTo(0.1, within(1e-9));
    assertThat(law.spread()).isCloseTo(12 / 1.2815515655, within(1e-9));
    assertThat(law.slotAtRisk(0.1).orElseThrow()).isCloseTo(may30, within(1e-6));
    assertThat(law.describe())
        .isEqualTo(
            "The last spring frost is about 18 May, 1 in 10 after 30 May, as the plan states.");
    int september27 = AXIS.slotOf(LocalDate.of(2027, 9, 27));
    int september14 = AXIS.slotOf(LocalDate.of(2027, 9, 14));
    StatedFrost autumn =
        StatedFrost.of(FrostSide.AUTUMN, AXIS, september27, september14, Reason.byDefault("x"));
    assertThat(autumn.slotAtRisk(0.1).orElseThrow()).isCloseTo(september14, within(1e-6));
    assertThat(autumn.risk(september14)).isCloseTo(0.1, within(1e-9));
    assertThatThrownBy(
            () -> StatedFrost.of(FrostSide.AUTUMN, AXIS, may18, may30, Reason.byDefault("x")))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void yearsWithoutFrostAreAMassOfTheirOwn() {
    // Twenty seasons: ten with a last frost on slots 60, 62 … 78, ten without any.
    FrostLaw law = law(IntStream.range(0, 20).map(i -> i % 2 == 0 ? 60 + i : -1).toArray());
    assertThat(law.chanceNone()).isEqualTo(0.5);
    assertThat(law.chanceAfter(0)).isEqualTo(0.5);
    assertThat(law.chanceAfter(78)).isZero();
    assertThat(law.chanceAfter(77)).isEqualTo(0.05);
    assertThat(law.chanceBefore(62)).isEqualTo(0.05);
    // 1 year in 10 is 1 in 5 of those with a frost: their 80 % quantile.
    assertThat(law.slotAtRisk(0.1).orElseThrow()).isCloseTo(60 + 0.8 * 18, within(1e-9));
    assertThat(law.slotAtRisk(0.5)).isEmpty();
    assertThat(law.slotAtRisk(0.6)).isEmpty();
  }

  @Test
  void aPlaceWithoutFrostSaysSo() {
    FrostLaw law = law(IntStream.range(0, 15).map(i -> -1).toArray());
    assertThat(law.chanceNone()).isEqualTo(1);
    assertThat(law.slotAtRisk(0.1)).isEmpty();
    assertThat(law.describe())
        .isEqualTo("None of 15 seasons of `made` had a last spring frost (0 °C).");
  }

  @Test
  void fewerThanFifteenSeasonsGiveNoCountedOneInTen() {
    RecordedFrost law =
        (RecordedFrost)
            FrostDates.law(
                    WeatherYears.of(OpenWeather.newYork(), Hemisphere.NORTH),
                    AXIS,
                    FrostSide.SPRING,
                    FrostThreshold.TENDER,
                    Units.METRIC)
                .orElseThrow();
    assertThat(law.isCounted()).isFalse();
    assertThat(law.reason().from().get(1).says()).contains("no 1-in-10 date can be read off");
    // Mean and standard deviation of slots 85, 93, 105, 87.
    assertThat(law.normal().orElseThrow().getMean()).isEqualTo(92.5);
    assertThat(law.normal().orElseThrow().getStandardDeviation())
        .isCloseTo(Math.sqrt(243.0 / 3), within(1e-9));
    assertThat(law.slotAtRisk(0.1).orElseThrow()).isCloseTo(92.5 + 1.2815515655 * 9, within(1e-6));
  }

  @Test
  void tooFewDatesGiveNoLaw() {
    assertThat(lawOf(10, 60, 70)).isEmpty();
    assertThat(lawOf(10, 60, 70, 75)).isPresent();
  }

  private static Optional<FrostLaw> lawOf(int seasons, int... frosts) {
    int[] slots = new int[seasons];
    Arrays.fill(slots, -1);
    System.arraycopy(frosts, 0, slots, 0, frosts.length);
    return made(slots);
  }

  /** For each season the slot of its one freezing day, or −1. */
  private static FrostLaw law(int... slots) {
    return made(slots).orElseThrow();
  }

  private static Optional<FrostLaw> made(int... slots) {
    LocalDate first = LocalDate.of(1990, 1, 1);
    LocalDate last = LocalDate.of(1990 + slots.length - 1, 12, 31);
    int days = (int) (last.toEpochDay() - first.toEpochDay()) + 1;
    double[] lows = new double[days];
    double[] highs = new double[days];
    Arrays.fill(lows, 5);
    Arrays.fill(highs, 15);
    for (int i = 0; i < slots.length; i++) {
      if (slots[i] >= 0) {
        LocalDate frost = SeasonAxis.northern(1990 + i).dateOf(slots[i]);
        lows[(int) (frost.toEpochDay() - first.toEpochDay())] = -1;
      }
    }
    WeatherYears years =
        WeatherYears.of(WeatherRecord.of("made", first, lows, highs), Hemisphere.NORTH);
    return FrostDates.law(years, AXIS, FrostSide.SPRING, FrostThreshold.TENDER, Units.METRIC);
  }

  @Property(tries = 100)
  void chancesAddUp(
      @ForAll @Size(min = 15, max = 25) List<@IntRange(min = -1, max = 200) Integer> slots,
      @ForAll @IntRange(min = 0, max = 211) int slot) {
    FrostLaw law = law(slots.stream().mapToInt(i -> i).toArray());
    double on = slots.stream().filter(s -> s == slot).count() / (double) slots.size();
    assertThat(law.chanceAfter(slot) + law.chanceBefore(slot) + law.chanceNone() + on)
        .isCloseTo(1, within(1e-9));
    law.slotAtRisk(0.1)
        .ifPresent(
            at ->
                assertThat(law.risk(Math.ceil(at))).isLessThanOrEqualTo(0.1 + 1.0 / slots.size()));
  }

  @Test
  void thresholdsTakeTheirOwnValue() {
    assertThat(FrostThreshold.HARD.isReachedBy(-0.7 - 1.5)).isTrue();
    assertThat(FrostThreshold.HARD.isReachedBy(-2.1)).isFalse();
    assertThat(FrostThreshold.TENDER.isReachedBy(TemperatureUnit.FAHRENHEIT.toCelsius(32)))
        .isTrue();
    assertThat(FrostThreshold.TENDER.isReachedBy(Double.NaN)).isFalse();
    assertThat(FrostThreshold.GROUND.isReachedBy(2)).isTrue();
  }
}
