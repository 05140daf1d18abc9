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
  private static final double[] POWERS_OF_TEN = powersOfTen();
  private static final int FIRST_YEAR = 1700;
  private static final int LAST_YEAR = 2199;

  private WeatherCell() {}

  private static double[] powersOfTen() {
    double[] powers = new double[MOST_DIGITS + 1];
    powers[0] = 1;
    for (int i = 1; i < powers.length; i++) {
      powers[i] = powers[i - 1] * 10;
    }
    return powers;
  }

  /** A plain decimal number, {@link #MISSING}, or {@link #NOT_A_NUMBER}. No exponent, no unit. */
  static double number(String cell, boolean decimalComma) {
    return number(cell, 0, cell.length(), decimalComma);
  }

  /** The same of a cell within a text: tens of thousands are read, and none is cut out. */
  static double number(String text, int start, int end, boolean decimalComma) {
    long whole = 0;
    int digits = 0;
    int point = -1;
    int from = start < end && isSign(text.charAt(start)) ? start + 1 : start;
    for (int i = from; i < end; i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9' && digits < MOST_DIGITS) {
        whole = whole * 10 + (c - '0');
        digits++;
      } else if (point < 0 && (c == '.' || (c == ',' && decimalComma))) {
        point = digits;
      } else {
        return word(text.substring(start, end));
      }
    }
    if (digits == 0) {
      return word(text.substring(start, end));
    }
    // Both are whole and exact, so that their quotient is the double nearest to the decimal.
    double size = point < 0 ? whole : whole / POWERS_OF_TEN[digits - point];
    double value = from > start && text.charAt(start) != '+' ? -size : size;
    return value == -9999 ? MISSING : value;
  }

  private static boolean isSign(char c) {
    return c == '-' || c == '+' || c == '\u2212';
  }

  private static double word(String cell) {
    String plain = cell.replace('\u2212', '-').toLowerCase(Locale.ROOT);
    return MISSING_WORDS.contains(plain) ? MISSING : NOT_A_NUMBER;
  }

  /** The epoch day of {@code 2023-05-14}, {@code 2023/05/14} or {@code 20230514}, if it is one. */
  static OptionalInt date(String cell) {
    return date(cell, 0, cell.length());
  }

  /** The same of a cell within a text. */
  static OptionalInt date(String text, int start, int end) {
    int length = end - start > 10 && isTimeMark(text.charAt(start + 10)) ? 10 : end - start;
    if (length == 8) {
      return date(
          digits(text, start, start + 4),
          digits(text, start + 4, start + 6),
          digits(text, start + 6, start + 8));
    }
    boolean dashed =
        length == 10
            && (text.charAt(start + 4) == '-' || text.charAt(start + 4) == '/')
            && text.charAt(start + 7) == text.charAt(start + 4);
    return dashed
        ? date(
            digits(text, start, start + 4),
            digits(text, start + 5, start + 7),
            digits(text, start + 8, start + 10))
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
