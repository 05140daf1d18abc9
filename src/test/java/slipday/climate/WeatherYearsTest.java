package slipday.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class WeatherYearsTest {
  private static WeatherRecord record(
      LocalDate first, LocalDate last, ToDoubleFunction<LocalDate> low) {
    double[] lows = first.datesUntil(last.plusDays(1)).mapToDouble(low).toArray();
    double[] highs = Arrays.stream(lows).map(l -> l + 10).toArray();
    return WeatherRecord.of("made", first, lows, highs);
  }

  private static double unlessIn(LocalDate date, LocalDate from, int days, double value) {
    boolean gone = !date.isBefore(from) && date.isBefore(from.plusDays(days));
    return gone ? Double.NaN : value;
  }

  @Test
  void tenMissingDaysBeforeMidsummerAreFilledAndCountedElevenLeaveTheSeasonOut() {
    LocalDate may = LocalDate.of(2020, 5, 1);
    for (int days : new int[] {10, 11}) {
      WeatherRecord record =
          record(
              LocalDate.of(2020, 1, 1),
              LocalDate.of(2021, 12, 31),
              d -> unlessIn(d, may, days, d.getDayOfMonth()));
      WeatherYears years = WeatherYears.of(record, Hemisphere.NORTH);
      assertThat(years.all()).hasSize(2);
      assertThat(years.usable()).hasSize(days == 10 ? 2 : 1);
      assertThat(years.filledDays()).isEqualTo(days == 10 ? 10 : 0);
    }
    WeatherYears years =
        WeatherYears.of(
            record(
                LocalDate.of(2020, 1, 1), LocalDate.of(2020, 12, 31), d -> unlessIn(d, may, 11, 0)),
            Hemisphere.NORTH);
    assertThat(years.leftOut().get(0).leftOut())
        .hasValue("2020 is left out: 11 days are missing from 1 March to 31 July.");
  }

  @Test
  void aShortGapIsAStraightLineAndMeasuredFrostStaysMeasured() {
    LocalDate gap = LocalDate.of(2021, 5, 3);
    WeatherRecord record =
        record(
            LocalDate.of(2021, 1, 1),
            LocalDate.of(2021, 12, 31),
            d -> unlessIn(d, gap, 3, d.isBefore(gap) ? -4 : 4));
    WeatherYear year = WeatherYears.of(record, Hemisphere.NORTH).usable().get(0);
    int slot = year.axis().slotOf(gap);
    assertThat(Arrays.copyOfRange(year.lows(), slot - 1, slot + 4))
        .usingComparatorWithPrecision(1e-9)
        .containsExactly(-4, -2, 0, 2, 4);
    assertThat(FrostDates.lastSpring(year, FrostThreshold.TENDER)).hasValue(slot - 1);
    assertThat(year.filledDays()).isEqualTo(3);
  }

  @Test
  void aLongGapInTheDeadOfWinterIsTheMeanOfTheOtherYears() {
    LocalDate january = LocalDate.of(2022, 1, 5);
    WeatherRecord record =
        record(
            LocalDate.of(2020, 1, 1),
            LocalDate.of(2022, 12, 31),
            d -> unlessIn(d, january, 30, d.getYear() == 2020 ? -10 : -20));
    WeatherYears years = WeatherYears.of(record, Hemisphere.NORTH);
    assertThat(years.usable()).hasSize(3);
    assertThat(years.usable().get(2).lows()[20]).isCloseTo(-15, within(1e-9));
    assertThat(years.usable().get(2).filledDays()).isEqualTo(30);
  }

  @Test
  void southernSeasonsCrossTheNewYear() {
    WeatherRecord record =
        record(
            LocalDate.of(2018, 1, 1),
            LocalDate.of(2020, 12, 31),
            d ->
                d.equals(LocalDate.of(2018, 11, 3)) || d.equals(LocalDate.of(2019, 4, 20))
                    ? -1
                    : 8);
    WeatherYears years = WeatherYears.of(record, Hemisphere.SOUTH);
    assertThat(years.all())
        .extracting(WeatherYear::label)
        .containsExactly("2017-18", "2018-19", "2019-20", "2020-21");
    assertThat(years.usable()).extracting(WeatherYear::label).containsExactly("2018-19", "2019-20");
    assertThat(years.leftOut().get(1).leftOut().orElseThrow())
        .isEqualTo("2020-21 is left out: 31 days are missing from 1 September to 31 January.");
    WeatherYear season = years.usable().get(0);
    int spring = FrostDates.lastSpring(season, FrostThreshold.TENDER).orElseThrow();
    int autumn = FrostDates.firstAutumn(season, FrostThreshold.TENDER).orElseThrow();
    assertThat(season.axis().dateOf(spring)).isEqualTo("2018-11-03");
    assertThat(season.axis().dateOf(autumn)).isEqualTo("2019-04-20");
  }

  @Test
  void aFrostOnLeapDayIsOneOfTheDayBefore() {
    WeatherRecord record =
        record(
            LocalDate.of(2020, 1, 1),
            LocalDate.of(2020, 12, 31),
            d -> d.equals(LocalDate.of(2020, 2, 29)) ? -1 : 5);
    WeatherYear year = WeatherYears.of(record, Hemisphere.NORTH).usable().get(0);
    int slot = FrostDates.lastSpring(year, FrostThreshold.TENDER).orElseThrow();
    assertThat(year.axis().dateOf(slot)).isEqualTo("2020-02-28");
  }

  @Test
  void aShiftedRecordIsColderByDayAndNight() {
    WeatherRecord record = OpenWeather.newYork();
    WeatherRecord colder = record.shifted(-1.5);
    LocalDate day = LocalDate.of(2013, 7, 1);
    assertThat(colder.low(day)).isCloseTo(record.low(day) - 1.5, within(1e-9));
    assertThat(colder.high(day)).isCloseTo(record.high(day) - 1.5, within(1e-9));
    WeatherRecord pocket = record.shifted(-2, 0);
    assertThat(pocket.high(day)).isEqualTo(record.high(day));
    assertThat(record.shifted(30, 0).low(day)).isEqualTo(record.high(day));
  }

  @Test
  void aCenturyIsReadInAMomentAndCutIntoSeasons() {
    StringBuilder text = new StringBuilder("date,low C,high C\n");
    LocalDate day = LocalDate.of(1920, 1, 1);
    for (int i = 0; i < 36_525; i++) {
      text.append(day.plusDays(i)).append(",3.4,15.6\n");
    }
    var source = slipday.source.Source.of("century.csv", text.toString());
    long start = System.nanoTime();
    WeatherRecord record =
        WeatherReader.read(source, java.util.Optional.empty()).value().orElseThrow();
    WeatherYears years = WeatherYears.of(record, Hemisphere.NORTH);
    double seconds = (System.nanoTime() - start) / 1e9;
    assertThat(years.usable()).hasSize(100);
    assertThat(seconds).isLessThan(5);
  }
}
