package slipday.climate;

import java.util.OptionalInt;

/** A table with a row a day: a gardener's own, or GHCN-Daily's by station with its attributes. */
final class TableLayout implements WeatherLayout {
  private static final int NONE = -1;

  /**
   * Where a value stands.
   *
   * @param attributes the column of GHCN-Daily's flags for it, or −1
   */
  record Column(int index, TemperatureUnit unit, int attributes) {}

  private final char separator;
  private final int date;
  private final Column low;
  private final Column high;
  private final int stationColumn;
  private final OneStation station = new OneStation();

  /**
   * @param stationColumn the column that names the station, or −1
   */
  TableLayout(char separator, int date, Column low, Column high, int stationColumn) {
    this.separator = separator;
    this.date = date;
    this.low = low;
    this.high = high;
    this.stationColumn = stationColumn;
  }

  @Override
  public String describe() {
    String unit =
        switch (low.unit) {
          case CELSIUS -> "degrees Celsius";
          case FAHRENHEIT -> "degrees Fahrenheit";
          case TENTHS_OF_CELSIUS -> "tenths of a degree Celsius";
        };
    String kind = low.attributes == NONE ? "a table of days" : "a GHCN-Daily table of days";
    return kind + " in " + unit;
  }

  @Override
  public void read(WeatherLines lines, DayValues values, RowFindings findings) {
    CsvRow row = new CsvRow(lines.text(), separator);
    for (int i = 1; i < lines.count(); i++) {
      row.split(lines.start(i), lines.end(i));
      readRow(lines.text(), row, values, findings);
    }
  }

  private void readRow(String text, CsvRow row, DayValues values, RowFindings findings) {
    if (stationColumn != NONE
        && !station.accepts(text, row.start(stationColumn), row.end(stationColumn), findings)) {
      return;
    }
    OptionalInt day = WeatherCell.date(text, row.start(date), row.end(date));
    if (day.isEmpty()) {
      tellDate(row, date, findings);
      return;
    }
    readValue(text, row, low, false, day.getAsInt(), values, findings);
    readValue(text, row, high, true, day.getAsInt(), values, findings);
  }

  static void tellDate(CsvRow row, int column, RowFindings findings) {
    findings.error(
        "weather-date",
        row.start(column),
        row.end(column),
        RowFindings.quoted(row.cell(column)) + " is not a date.",
        "Write a day that exists as year, month, day: `2023-05-14`.");
  }

  private void readValue(
      String text,
      CsvRow row,
      Column column,
      boolean isHigh,
      int day,
      DayValues values,
      RowFindings findings) {
    int start = row.start(column.index);
    int end = row.end(column.index);
    double value = WeatherCell.number(text, start, end, separator != ',');
    if (Double.isNaN(value)) {
      return;
    }
    if (value == WeatherCell.NOT_A_NUMBER) {
      findings.error(
          "weather-text",
          start,
          end,
          RowFindings.quoted(row.cell(column.index))
              + " in the "
              + (isHigh ? "high" : "low")
              + " column is no number.",
          "Write a plain number such as `-2.5`; leave the cell empty where nothing was measured.");
    } else if (column.unit == TemperatureUnit.TENTHS_OF_CELSIUS && value != Math.rint(value)) {
      findings.error(
          "weather-unit",
          start,
          end,
          RowFindings.quoted(row.cell(column.index)) + " has a fraction, so it is not in tenths.",
          "Name the unit in the first line, such as `low C`, or in the plan.");
    } else if (isFlagged(row, column.attributes)) {
      values.dropForQuality();
    } else {
      values.add(day, isHigh, column.unit.toCelsius(value), start, end);
    }
  }

  /** Attributes are {@code measurement,quality,source}: a value with a quality flag failed. */
  private static boolean isFlagged(CsvRow row, int attributes) {
    if (attributes == NONE || attributes >= row.size()) {
      return false;
    }
    String[] flags = row.cell(attributes).split(",", -1);
    return flags.length > 1 && !flags[1].isBlank();
  }
}
