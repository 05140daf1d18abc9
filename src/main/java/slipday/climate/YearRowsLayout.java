package slipday.climate;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * The by-year rows of GHCN-Daily cut down to one station: station, date, element, value in tenths
 * of °C, measurement, quality and source flag, time; with or without a line of column names.
 *
 * <p>Source: NOAA National Centers for Environmental Information, GHCN-Daily by-year readme.
 */
final class YearRowsLayout implements WeatherLayout {
  private static final Pattern ROW =
      Pattern.compile("\"?[A-Za-z0-9_-]{11}\"?,\"?\\d{8}\"?,\"?[A-Z][A-Z0-9]{3}\"?,.*");
  private static final int STATION = 0;
  private static final int DATE = 1;
  private static final int ELEMENT = 2;
  private static final int VALUE = 3;
  private static final int QUALITY = 5;

  private final OneStation station = new OneStation();

  static boolean fits(String line) {
    return ROW.matcher(line).matches() || isHeader(line);
  }

  private static boolean isHeader(String line) {
    String names = line.toUpperCase(Locale.ROOT).replace("\"", "");
    return names.startsWith("ID,DATE,ELEMENT,") || names.startsWith("STATION,DATE,ELEMENT,");
  }

  @Override
  public String describe() {
    return "GHCN-Daily rows by year in tenths of a degree Celsius";
  }

  @Override
  public void read(WeatherLines lines, DayValues values, RowFindings findings) {
    CsvRow row = new CsvRow(lines.text(), ',');
    for (int i = isHeader(lines.line(0)) ? 1 : 0; i < lines.count(); i++) {
      row.split(lines.start(i), lines.end(i));
      readRow(lines.text(), row, values, findings);
    }
  }

  private void readRow(String text, CsvRow row, DayValues values, RowFindings findings) {
    String element = row.cell(ELEMENT);
    boolean high = element.equals("TMAX");
    if ((!high && !element.equals("TMIN"))
        || !station.accepts(text, row.start(STATION), row.end(STATION), findings)) {
      return;
    }
    OptionalInt day = WeatherCell.date(row.cell(DATE));
    double tenths = WeatherCell.number(row.cell(VALUE), false);
    if (day.isEmpty()) {
      TableLayout.tellDate(row, DATE, findings);
    } else if (tenths == WeatherCell.NOT_A_NUMBER
        || (!Double.isNaN(tenths) && tenths != Math.rint(tenths))) {
      findings.error(
          "weather-text",
          row.start(VALUE),
          row.end(VALUE),
          RowFindings.quoted(row.cell(VALUE)) + " is not a whole number of tenths of a degree.",
          "GHCN-Daily has 12.8 °C as 128, and -9999 for missing.");
    } else if (Double.isNaN(tenths)) {
      return;
    } else if (row.start(QUALITY) < row.end(QUALITY) && row.size() > QUALITY) {
      values.dropForQuality();
    } else {
      values.add(
          day.getAsInt(),
          high,
          TemperatureUnit.TENTHS_OF_CELSIUS.toCelsius(tenths),
          row.start(VALUE),
          row.end(VALUE));
    }
  }
}
