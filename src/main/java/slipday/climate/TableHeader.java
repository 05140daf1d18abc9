package slipday.climate;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import slipday.finding.Finding;

/** The first line of a table of days: which column is which, and in what unit. */
final class TableHeader {
  private static final Set<String> DATE = Set.of("date", "day");
  private static final Set<String> LOW =
      Set.of("low", "lo", "min", "minimum", "tmin", "tempmin", "mintemp", "coldest");
  private static final Set<String> HIGH =
      Set.of("high", "hi", "max", "maximum", "tmax", "tempmax", "maxtemp", "hottest");
  private static final Set<String> CELSIUS = Set.of("c", "celsius", "centigrade");
  private static final Set<String> FAHRENHEIT = Set.of("f", "fahrenheit");
  private static final Set<String> TENTHS = Set.of("tenths", "tenth");
  private static final Set<String> FILLERS =
      Set.of(
          "temp", "temperature", "air", "daily", "t", "deg", "degree", "degrees", "of", "a", "in");

  private static final int LONGEST_NAME = 80;
  private static final int LONGEST_SPAN = 160;
  private static final String EXAMPLE = "Begin the file with a line such as `date,low C,high C`.";

  private final WeatherLines lines;
  private final RowFindings findings;
  private final CsvRow row;
  private final char separator;
  private final List<List<String>> words;

  TableHeader(WeatherLines lines, RowFindings findings) {
    this.lines = lines;
    this.findings = findings;
    this.separator = CsvRow.separatorOf(lines.line(0));
    this.row = new CsvRow(lines.text(), separator);
    row.split(lines.start(0), lines.end(0));
    this.words = IntStream.range(0, row.size()).mapToObj(i -> wordsOf(row.cell(i))).toList();
  }

  private static List<String> wordsOf(String name) {
    String start = name.substring(0, Math.min(name.length(), LONGEST_NAME));
    return Arrays.stream(start.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
        .filter(w -> !w.isEmpty())
        .toList();
  }

  /** The table's layout; empty, with a finding, where a column or its unit is not known. */
  Optional<TableLayout> layout(Optional<TemperatureUnit> fromPlan) {
    if (IntStream.range(0, row.size()).anyMatch(i -> WeatherCell.looksLikeDate(row.cell(i)))) {
      tell(
          "weather-columns",
          "The first line of `" + lines.source().name() + "` has no column names.",
          EXAMPLE);
      return Optional.empty();
    }
    Optional<Integer> date = only(DATE, "the dates");
    Optional<Integer> low = only(LOW, "the lows");
    Optional<Integer> high = only(HIGH, "the highs");
    if (date.isEmpty() || low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    Optional<TableLayout.Column> lows = column(low.get(), high.get(), fromPlan);
    Optional<TableLayout.Column> highs = column(high.get(), low.get(), fromPlan);
    if (lows.isEmpty() || highs.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new TableLayout(separator, date.get(), lows.get(), highs.get(), named("station")));
  }

  private Optional<Integer> only(Set<String> meaning, String what) {
    int[] found =
        IntStream.range(0, row.size()).filter(i -> means(words.get(i), meaning)).toArray();
    if (found.length == 1) {
      return Optional.of(found[0]);
    }
    String count = found.length == 0 ? "No column" : "More than one column";
    tell(
        "weather-columns",
        count + " of `" + lines.source().name() + "` is named as holding " + what + ".",
        EXAMPLE);
    return Optional.empty();
  }

  private static boolean means(List<String> words, Set<String> meaning) {
    return words.stream().filter(meaning::contains).count() == 1
        && words.stream()
            .allMatch(w -> meaning.contains(w) || FILLERS.contains(w) || isUnitWord(w));
  }

  private static boolean isUnitWord(String word) {
    return CELSIUS.contains(word) || FAHRENHEIT.contains(word) || TENTHS.contains(word);
  }

  private Optional<TableLayout.Column> column(
      int index, int other, Optional<TemperatureUnit> fromPlan) {
    int attributes = named(row.cell(index) + "_attributes");
    Optional<TemperatureUnit> written = unitOf(words.get(index)).or(() -> unitOf(words.get(other)));
    if (written.isPresent() && fromPlan.isPresent() && !written.equals(fromPlan)) {
      findings.error(
          "weather-unit",
          row.start(index),
          row.end(index),
          String.format(
              Locale.ROOT,
              "The column says `%s` and the plan says `%s`.",
              written.get().word(),
              fromPlan.get().word()),
          "Take the unit out of the plan, or name the right one in the first line.");
      return Optional.empty();
    }
    Optional<TemperatureUnit> unit = written.or(() -> fromPlan);
    if (unit.isEmpty() && attributes >= 0 && named("station") >= 0) {
      unit = Optional.of(TemperatureUnit.TENTHS_OF_CELSIUS);
    }
    if (unit.isEmpty()) {
      findings.error(
          "weather-unit",
          row.start(index),
          row.end(index),
          RowFindings.quoted(row.cell(index)) + " does not say its unit.",
          "Name it in the first line, such as `low C`, `low F` or `low tenths C`, or in the plan.");
    }
    return unit.map(u -> new TableLayout.Column(index, u, attributes));
  }

  private static Optional<TemperatureUnit> unitOf(List<String> words) {
    if (words.stream().anyMatch(TENTHS::contains)) {
      return Optional.of(TemperatureUnit.TENTHS_OF_CELSIUS);
    }
    if (words.stream().anyMatch(FAHRENHEIT::contains)) {
      return Optional.of(TemperatureUnit.FAHRENHEIT);
    }
    return words.stream().anyMatch(CELSIUS::contains)
        ? Optional.of(TemperatureUnit.CELSIUS)
        : Optional.empty();
  }

  /** The column of exactly this name, whatever its case; −1 where there is none. */
  private int named(String name) {
    return IntStream.range(0, row.size())
        .filter(i -> row.cell(i).equalsIgnoreCase(name))
        .findFirst()
        .orElse(-1);
  }

  private void tell(String rule, String message, String help) {
    int start = lines.start(0);
    int end = Math.min(lines.end(0), start + LONGEST_SPAN);
    findings.add(Finding.error(rule, findings.span(start, end), message).withHelp(help));
  }
}
