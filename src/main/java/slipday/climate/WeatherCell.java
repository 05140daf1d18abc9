package slipday.climate;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;

/** Numbers and dates as weather files write them. */
final class WeatherCell {
  /** What {@link #number} gives for text that is no number; a missing value is NaN. */
  static final double NOT_A_NUMBER = Double.POSITIVE_INFINITY;

  static final double MISSING = Double.NaN;

  private static final Set<String> MISSING_WORDS =
      Set.of("", "-", "--", "m", "na", "n/a", "nan", "null", "none", "missing", "-9999", "-9999.0");
  private static final int MOST_DIGITS = 12;
  private static final int FIRST_YEAR = 1700;
  private static final int LAST_YEAR = 2199;

  private WeatherCell() {}

  /** A plain decimal number, {@link #MISSING}, or {@link #NOT_A_NUMBER}. No exponent, no unit. */
  static double number(String cell, boolean decimalComma) {
    String text = cell.replace('\u2212', '-');
    if (decimalComma) {
      text = text.replace(',', '.');
    }
    if (text.isEmpty() || !isPlainNumber(text)) {
      return MISSING_WORDS.contains(text.toLowerCase(Locale.ROOT)) ? MISSING : NOT_A_NUMBER;
    }
    double value = Double.parseDouble(text);
    return value == -9999 ? MISSING : value;
  }

  private static boolean isPlainNumber(String text) {
    int digits = 0;
    int points = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        digits++;
      } else if (c == '.') {
        points++;
      } else if (i > 0 || (c != '-' && c != '+')) {
        return false;
      }
    }
    return digits > 0 && digits <= MOST_DIGITS && points <= 1;
  }

  /** The epoch day of {@code 2024-05-14}, {@code 2024/05/14} or {@code 20240514}, if it is one. */
  static OptionalInt date(String cell) {
    String text = cell.length() > 10 && isTimeMark(cell.charAt(10)) ? cell.substring(0, 10) : cell;
    if (text.length() == 8) {
      return date(digits(text, 0, 4), digits(text, 4, 6), digits(text, 6, 8));
    }
    boolean dashed =
        text.length() == 10
            && (text.charAt(4) == '-' || text.charAt(4) == '/')
            && text.charAt(7) == text.charAt(4);
    return dashed
        ? date(digits(text, 0, 4), digits(text, 5, 7), digits(text, 8, 10))
        : OptionalInt.empty();
  }

  private static boolean isTimeMark(char c) {
    return c == 'T' || c == ' ';
  }

  static OptionalInt date(int year, int month, int day) {
    if (year < FIRST_YEAR || year > LAST_YEAR || month < 1 || month > 12 || day < 1 || day > 31) {
      return OptionalInt.empty();
    }
    try {
      return OptionalInt.of((int) LocalDate.of(year, month, day).toEpochDay());
    } catch (DateTimeException thirtiethOfFebruary) {
      return OptionalInt.empty();
    }
  }

  /** The whole number in some characters, or −1 where one is not an ASCII digit. */
  static int digits(String text, int from, int to) {
    int value = 0;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c < '0' || c > '9') {
        return -1;
      }
      value = value * 10 + (c - '0');
    }
    return value;
  }

  static boolean looksLikeDate(String cell) {
    return date(cell).isPresent() || cell.matches("\\d{1,4}[-/.]\\d{1,2}[-/.]\\d{1,4}");
  }
}
