package slipday.climate;

import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * The fixed-width station file of GHCN-Daily: a line an element and month, 31 fields of value (five
 * characters, tenths of °C), measurement, quality and source flag.
 *
 * <p>Source: NOAA National Centers for Environmental Information, GHCN-Daily readme, section III.
 */
final class StationFixedLayout implements WeatherLayout {
  private static final Pattern LINE =
      Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{10}\\d{6}[A-Z][A-Z0-9]{3}[ \\d-]{4}[ \\d].*");
  private static final int STATION_END = 11;
  private static final int ELEMENT = 17;
  private static final int FIRST_VALUE = 21;
  private static final int FIELD = 8;
  private static final int VALUE = 5;
  private static final int QUALITY = 6;

  private final OneStation station = new OneStation();

  static boolean fits(String line) {
    return LINE.matcher(line).matches();
  }

  @Override
  public String describe() {
    return "a GHCN-Daily station file in tenths of a degree Celsius";
  }

  @Override
  public void read(WeatherLines lines, DayValues values, RowFindings findings) {
    for (int i = 0; i < lines.count(); i++) {
      readLine(lines, i, values, findings);
    }
  }

  private void readLine(WeatherLines lines, int index, DayValues values, RowFindings findings) {
    String text = lines.text();
    int start = lines.start(index);
    int end = lines.end(index);
    if (end - start < FIRST_VALUE + 1) {
      findings.error(
          "weather-text",
          start,
          end,
          "The line is too short for a station file's month.",
          "A line begins with station, year, month and element: 21 characters before the values.");
      return;
    }
    boolean low = text.startsWith("TMIN", start + ELEMENT);
    boolean high = text.startsWith("TMAX", start + ELEMENT);
    if ((!low && !high) || !station.accepts(text, start, start + STATION_END, findings)) {
      return;
    }
    int year = WeatherCell.digits(text, start + 11, start + 15);
    int month = WeatherCell.digits(text, start + 15, start + 17);
    if (WeatherCell.date(year, month, 1).isEmpty()) {
      findings.error(
          "weather-date",
          start + 11,
          start + 17,
          RowFindings.quoted(text.substring(start + 11, start + 17)) + " is not a year and month.",
          "A station file has the year in four digits and the month in two.");
      return;
    }
    for (int day = 1; day <= 31; day++) {
      int at = start + FIRST_VALUE + (day - 1) * FIELD;
      if (at >= end) {
        return;
      }
      readField(text, at, end, WeatherCell.date(year, month, day), high, values, findings);
    }
  }

  private static void readField(
      String text,
      int at,
      int lineEnd,
      OptionalInt day,
      boolean high,
      DayValues values,
      RowFindings findings) {
    int end = Math.min(at + VALUE, lineEnd);
    double tenths = WeatherCell.number(text.substring(at, end).strip(), false);
    if (Double.isNaN(tenths)) {
      return;
    }
    if (tenths == WeatherCell.NOT_A_NUMBER || tenths != Math.rint(tenths)) {
      findings.error(
          "weather-text",
          at,
          end,
          RowFindings.quoted(text.substring(at, end).strip()) + " is not a whole number of tenths.",
          "Values stand in five characters, right-aligned; -9999 means missing.");
    } else if (day.isEmpty()) {
      findings.error(
          "weather-date",
          at,
          end,
          "The month has a value on a day that it does not have.",
          "Days past the end of a month are -9999.");
    } else if (at + QUALITY < lineEnd && text.charAt(at + QUALITY) != ' ') {
      values.dropForQuality();
    } else {
      values.add(
          day.getAsInt(), high, TemperatureUnit.TENTHS_OF_CELSIUS.toCelsius(tenths), at, end);
    }
  }
}
