package slipday.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.finding.Outcome;
import slipday.source.Source;

class WeatherReaderTest {
  private static final LocalDate MAY_14 = LocalDate.of(2024, 5, 14);

  private static Outcome<Optional<WeatherRecord>> read(String text) {
    return WeatherReader.read(Source.of("w.csv", text), Optional.empty());
  }

  private static WeatherRecord clean(String text) {
    Outcome<Optional<WeatherRecord>> outcome = read(text);
    assertThat(outcome.findings()).isEmpty();
    return outcome.value().orElseThrow();
  }

  /** {@code 3:12 rule: message}, as {@code line:column}. */
  private static List<String> said(Outcome<Optional<WeatherRecord>> outcome) {
    return outcome.findings().stream()
        .map(
            f ->
                f.place().orElseThrow().span().line()
                    + ":"
                    + f.place().orElseThrow().span().column()
                    + " "
                    + f.rule()
                    + ": "
                    + f.message())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "date,low C,high C\n2024-05-14,-1.5,12\n",
        "# made up\n\nDate;Low (°C);High (°C)\r\n2024-05-14;-1,5;12,0\r\n",
        "\uFEFFday\ttmin celsius\ttmax celsius\n2024/05/14\t-1.5\t12.0",
        "high,rain,date,low c\n12,0,20240514,\u22121.5\n",
        "date,temp_min_c,temp_max_c\r2024-05-14,-1.5,12\r",
        "date,TMIN (tenths of C),TMAX\n2024-05-14,-15,120\n",
        "date,tmin F,tmax F\n2024-05-14T00:00,29.3,53.6\n",
        "\"date\",\"minimum temperature, C\",\"maximum temperature, C\"\n\"2024-05-14\",\"-1.5\",\"12\"\n"
      })
  void readsATableWhateverItsDress(String text) {
    WeatherRecord record = clean(text);
    assertThat(record.first()).isEqualTo(MAY_14);
    assertThat(record.days()).isEqualTo(1);
    assertThat(record.low(MAY_14)).isCloseTo(-1.5, within(1e-9));
    assertThat(record.high(MAY_14)).isCloseTo(12, within(1e-9));
  }

  @Test
  void takesTheUnitFromThePlanWhereTheTableHasNone() {
    Source source = Source.of("w.csv", "date,low,high\n2024-05-14,32,50\n");
    var outcome = WeatherReader.read(source, Optional.of(TemperatureUnit.FAHRENHEIT));
    assertThat(outcome.value().orElseThrow().high(MAY_14)).isCloseTo(10, within(1e-9));
    var unstated = WeatherReader.read(source, Optional.empty());
    assertThat(unstated.value()).isEmpty();
    assertThat(said(unstated))
        .containsExactly(
            "1:6 weather-unit: `low` does not say its unit.",
            "1:10 weather-unit: `high` does not say its unit.");
  }

  @Test
  void refusesAUnitThatThePlanContradicts() {
    Source source = Source.of("w.csv", "date,low C,high C\n2024-05-14,1,5\n");
    var outcome = WeatherReader.read(source, Optional.of(TemperatureUnit.FAHRENHEIT));
    assertThat(said(outcome))
        .contains("1:6 weather-unit: The column says `C` and the plan says `F`.");
  }

  @Test
  void tellsEveryBrokenCellAtItsPlaceAndReadsTheRest() {
    var outcome =
        read(
            "date,low C,high C\n"
                + "2024-05-10,about 3,12\n"
                + "2024-02-30,1,2\n"
                + "2024-05-11,14,9\n"
                + "2024-05-12,1,20\n"
                + "2024-05-12,2,20\n"
                + "2024-05-13,-94,20\n"
                + "14.5.2024,3,20\n"
                + "2024-05-14,3,20\n");
    assertThat(said(outcome))
        .containsExactly(
            "2:12 weather-text: `about 3` in the low column is no number.",
            "3:1 weather-date: `2024-02-30` is not a date.",
            "7:12 weather-impossible: The low of 2024-05-13, -94.0 °C, is one that no place on"
                + " earth has.",
            "8:1 weather-date: `14.5.2024` is not a date.",
            "6:12 weather-repeated: 2024-05-12 has two different lows, 1.0 and 2.0 °C.",
            "4:12 weather-low-above-high: The low of 2024-05-11, 14.0 °C, is above its high, 9.0"
                + " °C.");
    assertThat(outcome.findings()).extracting(Finding::level).containsOnly(Level.ERROR);
    assertThat(outcome.findings()).extracting(Finding::help).doesNotContain("");
    WeatherRecord record = outcome.value().orElseThrow();
    assertThat(record.low(LocalDate.of(2024, 5, 12))).isEqualTo(1);
    assertThat(record.high(LocalDate.of(2024, 5, 11))).isNaN();
    assertThat(record.low(MAY_14)).isEqualTo(3);
  }

  @Test
  void foldsARuleOfTenThousandMistakesIntoACount() {
    var outcome = read("date,low C,high C\n2024-05-14,1,9\n" + "2024-05-15,x,9\n".repeat(10_000));
    assertThat(outcome.findings()).hasSize(21);
    assertThat(outcome.findings().get(20).message())
        .isEqualTo("From here on, `w.csv` has 9980 more mistakes of this kind.");
    assertThat(outcome.findings().get(20).place().orElseThrow().span().line()).isEqualTo(23);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''|weather-empty|The weather file `w.csv` is empty.",
        "'# only this'|weather-empty|The weather file `w.csv` is empty.",
        "'date,low C,high C'|weather-empty|The weather file `w.csv` has no day with a low and a high.",
        "'2024-05-14,1,9'|weather-columns|The first line of `w.csv` has no column names.",
        "'date,low C'|weather-columns|No column of `w.csv` is named as holding the highs.",
        "'date,low C,min C,high C'|weather-columns"
            + "|More than one column of `w.csv` is named as holding the lows."
      })
  void saysWhatAFileLacks(String text, String rule, String message) {
    var outcome = read(text);
    assertThat(outcome.value()).isEmpty();
    assertThat(outcome.findings()).hasSize(1);
    assertThat(outcome.findings().get(0).rule()).isEqualTo(rule);
    assertThat(outcome.findings().get(0).message()).isEqualTo(message);
  }

  @Test
  void tellsGapsAndKeepsMissingValuesMissing() {
    WeatherRecord record =
        clean(
            "date,low C,high C\n2024-05-10,1,9\n2024-05-11,,9\n2024-05-12,NA,-9999\n2024-05-14,1,9\n");
    assertThat(record.gaps())
        .containsExactly(
            new WeatherRecord.Gap(LocalDate.of(2024, 5, 11), LocalDate.of(2024, 5, 13)));
    assertThat(record.missingDays()).isEqualTo(3);
    assertThat(record.high(LocalDate.of(2024, 5, 11))).isEqualTo(9);
  }

  /** Field by field as the GHCN-Daily readme lays them out; station and values are invented. */
  private static String fixed(String element, int month, String... fields) {
    StringBuilder line = new StringBuilder("XX000000001" + "2024");
    line.append(String.format(java.util.Locale.ROOT, "%02d", month)).append(element);
    for (int day = 0; day < 31; day++) {
      line.append(day < fields.length ? fields[day] : "-9999   ");
    }
    return line.append('\n').toString();
  }

  @Test
  void readsTheFixedWidthStationFileWithItsQualityFlags() {
    WeatherRecord record =
        clean(
            fixed("PRCP", 5, "   12  X")
                + fixed("TMAX", 5, "  121  X", "  133 IX", "-9999   ", "   50H W")
                + fixed("TMIN", 5, "  -15  X", "   20  X", "   31  X", "  -12DGW"));
    assertThat(record.low(LocalDate.of(2024, 5, 1))).isEqualTo(-1.5);
    assertThat(record.high(LocalDate.of(2024, 5, 1))).isEqualTo(12.1);
    assertThat(record.high(LocalDate.of(2024, 5, 2))).isNaN();
    assertThat(record.high(LocalDate.of(2024, 5, 3))).isNaN();
    assertThat(record.low(LocalDate.of(2024, 5, 3))).isEqualTo(3.1);
    assertThat(record.high(LocalDate.of(2024, 5, 4))).isEqualTo(5);
    assertThat(record.low(LocalDate.of(2024, 5, 4))).isNaN();
    assertThat(record.droppedByQuality()).isEqualTo(2);
    assertThat(record.layout()).contains("tenths");
  }

  @Test
  void tellsWhatIsWrongInAFixedWidthFile() {
    String bad =
        fixed("TMAX", 4, "  121  X")
            + fixed("TMIN", 4, "  1x1  X")
            + fixed("TMIN", 13, "  -15  X")
            + "XX0000000012024\n"
            + fixed("TMIN", 5, "  -15  X").replace("XX000000001", "XX000000002");
    String thirtyFirst = fixed("TMAX", 4).stripTrailing();
    bad += thirtyFirst.substring(0, thirtyFirst.length() - 5) + "  100  X\n";
    var outcome = read(bad);
    assertThat(outcome.value()).isEmpty();
    assertThat(said(outcome))
        .containsExactly(
            "2:22 weather-text: `1x1` is not a whole number of tenths.",
            "3:12 weather-date: `202413` is not a year and month.",
            "4:1 weather-text: The line is too short for a station file's month.",
            "5:1 weather-stations: The file holds more than one station: `XX000000001` and"
                + " `XX000000002`.",
            "6:262 weather-date: The month has a value on a day that it does not have.");
  }

  @Test
  void readsTheTableByStationWithItsAttributes() {
    WeatherRecord record =
        clean(
            "\"STATION\",\"DATE\",\"NAME\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\",\"TMIN_ATTRIBUTES\"\n"
                + "\"XX000000001\",\"2024-05-14\",\"HILL, XX\",\"  121\",\",,W\",\"  -15\",\",,W,0700\"\n"
                + "\"XX000000001\",\"2024-05-15\",\"HILL, XX\",\"  999\",\",X,W\",\"   20\",\"H,,W\"\n"
                + "\"XX000000001\",\"2024-05-16\",\"HILL, XX\",,,\"   20\",\"H,,W\"\n");
    assertThat(record.low(MAY_14)).isEqualTo(-1.5);
    assertThat(record.high(MAY_14)).isEqualTo(12.1);
    assertThat(record.high(MAY_14.plusDays(1))).isNaN();
    assertThat(record.low(MAY_14.plusDays(2))).isEqualTo(2);
    assertThat(record.droppedByQuality()).isEqualTo(1);
  }

  @Test
  void doesNotTakeDegreesForTenths() {
    var outcome =
        read(
            "STATION,DATE,TMAX,TMAX_ATTRIBUTES,TMIN,TMIN_ATTRIBUTES\n"
                + "XX000000001,2024-05-14,12.1,\",,W\",-1.5,\",,W\"\n");
    assertThat(said(outcome))
        .containsExactly(
            "2:35 weather-unit: `-1.5` has a fraction, so it is not in tenths.",
            "2:24 weather-unit: `12.1` has a fraction, so it is not in tenths.");
    StringBuilder cool = new StringBuilder("date,low tenths C,high tenths C\n");
    LocalDate day = LocalDate.of(2023, 1, 1);
    for (int i = 0; i < 400; i++) {
      cool.append(day.plusDays(i)).append(",50,77\n");
    }
    assertThat(read(cool.toString()).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.level()).isEqualTo(Level.WARNING))
        .satisfies(f -> assertThat(f.rule()).isEqualTo("weather-unit"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n"})
  void readsTheRowsByYear(String header) {
    WeatherRecord record =
        clean(
            header
                + "XX000000001,20240514,TMAX,121,,,W,\n"
                + "XX000000001,20240514,PRCP,0,,,W,\n"
                + "XX000000001,20240514,TMIN,-15,,,W,0700\n"
                + "XX000000001,20240515,TMAX,999,,X,W,\n"
                + "XX000000001,20240515,TMIN,-9999,,,W,\n");
    assertThat(record.low(MAY_14)).isEqualTo(-1.5);
    assertThat(record.high(MAY_14)).isEqualTo(12.1);
    assertThat(record.days()).isEqualTo(1);
    assertThat(record.droppedByQuality()).isEqualTo(1);
  }

  @Test
  void tellsWhatIsWrongInRowsByYear() {
    var outcome =
        read(
            "XX000000001,20240514,TMAX,12.1,,,W,\n"
                + "XX000000001,20240230,TMIN,-15,,,W,\n"
                + "XX000000002,20240514,TMIN,-15,,,W,\n");
    assertThat(said(outcome))
        .containsExactly(
            "1:27 weather-text: `12.1` is not a whole number of tenths of a degree.",
            "2:13 weather-date: `20240230` is not a date.",
            "3:1 weather-stations: The file holds more than one station: `XX000000001` and"
                + " `XX000000002`.");
  }

  @Test
  void readsTheOpenRecordsWhole() {
    WeatherRecord seattle = OpenWeather.seattle();
    assertThat(seattle.first()).isEqualTo("2012-01-01");
    assertThat(seattle.last()).isEqualTo("2015-12-31");
    assertThat(seattle.gaps()).isEmpty();
    assertThat(seattle.low(LocalDate.of(2012, 1, 1))).isEqualTo(5.0);
    assertThat(seattle.high(LocalDate.of(2012, 1, 1))).isEqualTo(12.8);
  }

  @Test
  void aLineOfFiftyMillionCharactersIsOneMessage() {
    var outcome = read("date,low C,high C\n2024-05-14,1," + "9".repeat(50_000_000) + "\n");
    assertThat(outcome.findings()).hasSize(1);
    assertThat(outcome.findings().get(0).message()).hasSizeLessThan(120);
    var commas = read(",".repeat(50_000_000));
    assertThat(commas.findings()).extracting(Finding::rule).containsOnly("weather-columns");
  }

  @Property(tries = 300)
  void noTextThrows(@ForAll String text) {
    var outcome = read(text);
    assertThat(outcome.value().isPresent() || !outcome.findings().isEmpty()).isTrue();
  }

  @Property(tries = 500)
  void noMangledFileThrows(@ForAll("mangled") String text) {
    var outcome = WeatherReader.read(Source.of("w", text), Optional.of(TemperatureUnit.CELSIUS));
    assertThat(outcome.value().isPresent() || !outcome.findings().isEmpty()).isTrue();
    outcome.value().ifPresent(r -> WeatherYears.of(r, Hemisphere.SOUTH));
  }

  @Provide
  Arbitrary<String> mangled() {
    Arbitrary<String> whole =
        Arbitraries.of(
            "date,low C,high C\n2024-05-10,1,9\n2024-05-11,2,8\n",
            fixed("TMAX", 5, "  121  X", "  133 IX") + fixed("TMIN", 5, "  -15  X"),
            "XX000000001,20240514,TMAX,121,,,W,\nXX000000001,20240514,TMIN,-15,,,W,\n",
            "STATION,DATE,TMAX,TMAX_ATTRIBUTES,TMIN\nXX000000001,2024-05-14,121,\",,W\",-15\n");
    Arbitrary<String> noise =
        Arbitraries.strings().withChars("\n\r\t,;\"#-9.xé\u0000 ").ofMaxLength(5);
    return whole.flatMap(
        text ->
            Arbitraries.integers()
                .between(0, text.length() - 1)
                .flatMap(
                    from ->
                        Arbitraries.integers()
                            .between(from, Math.min(text.length(), from + 12))
                            .flatMap(
                                to ->
                                    noise.map(
                                        n -> text.substring(0, from) + n + text.substring(to)))));
  }
}
