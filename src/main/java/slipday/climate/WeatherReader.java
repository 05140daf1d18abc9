package slipday.climate;

import java.util.Locale;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.source.Source;

/**
 * Reads a weather file, whichever of four layouts it has: a gardener's table of date, low and high;
 * GHCN-Daily's fixed-width station file; its table by station; its rows by year.
 *
 * <p>Whatever is wrong is a finding at its cell. The rows that can be used are used, so one wrong
 * row hides nothing; the record is empty only where there is nothing to use.
 */
public final class WeatherReader {
  /** A hottest day below this, in °C, means tenths were assumed where degrees stood. */
  private static final double TOO_COOL_FOR_A_GARDEN = 10;

  private WeatherReader() {}

  /**
   * @param unit the unit the plan states for a table that does not state its own
   */
  public static Outcome<Optional<WeatherRecord>> read(
      Source source, Optional<TemperatureUnit> unit) {
    RowFindings findings = new RowFindings(source);
    WeatherLines lines = new WeatherLines(source);
    Optional<WeatherRecord> record =
        lines.count() == 0 ? Optional.empty() : readLines(lines, unit, findings);
    if (record.isEmpty() && findings.isEmpty()) {
      findings.add(empty(source, lines));
    }
    return new Outcome<>(record, findings.all());
  }

  private static Finding empty(Source source, WeatherLines lines) {
    String message =
        lines.count() == 0
            ? "The weather file `" + source.name() + "` is empty."
            : "The weather file `" + source.name() + "` has no day with a low and a high.";
    return Finding.error("weather-empty", source.span(0, 0), message)
        .withHelp("It needs a line a day: date, low, high.");
  }

  private static Optional<WeatherRecord> readLines(
      WeatherLines lines, Optional<TemperatureUnit> unit, RowFindings findings) {
    Optional<? extends WeatherLayout> layout = layoutOf(lines, unit, findings);
    if (layout.isEmpty()) {
      return Optional.empty();
    }
    DayValues values = new DayValues(findings);
    layout.get().read(lines, values, findings);
    Optional<WeatherRecord> record =
        values.toRecord(lines.source().name(), layout.get().describe());
    record.filter(WeatherReader::isTooCool).ifPresent(r -> findings.add(tooCool(r, lines)));
    return record;
  }

  private static Optional<? extends WeatherLayout> layoutOf(
      WeatherLines lines, Optional<TemperatureUnit> unit, RowFindings findings) {
    String first = lines.line(0);
    if (StationFixedLayout.fits(first)) {
      return Optional.of(new StationFixedLayout());
    }
    if (YearRowsLayout.fits(first)) {
      return Optional.of(new YearRowsLayout());
    }
    return new TableHeader(lines, findings).layout(unit);
  }

  private static boolean isTooCool(WeatherRecord record) {
    return record.days() >= SeasonAxis.SLOTS && record.hottest() < TOO_COOL_FOR_A_GARDEN;
  }

  private static Finding tooCool(WeatherRecord record, WeatherLines lines) {
    return Finding.warning(
            "weather-unit",
            lines.span(0),
            String.format(
                Locale.ROOT,
                "The hottest day of `%s`, read as %s, is %.1f °C.",
                record.name(),
                record.layout(),
                record.hottest()))
        .withHelp("Look at the unit; name it in the first line, such as `low C`, or in the plan.");
  }
}
