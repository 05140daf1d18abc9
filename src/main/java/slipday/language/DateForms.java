package slipday.language;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slipday.measure.Months;

/** Dates as they are written elsewhere, in figures alone, and what each may mean. */
final class DateForms {
  static final String GENERAL = "Write the full date as `2026-05-14`, or in a plan `14 May`.";

  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
  private static final Pattern YEAR_LAST =
      Pattern.compile("(\\d{1,2})[-/.](\\d{1,2})[-/.]?(\\d{4}|\\d{2})?");

  /** Leap, so that each day of a calendar is one of it. */
  private static final int ANY_YEAR = 2000;

  private DateForms() {}

  /** How to write it, by each of its readings; in general where it has none. */
  static String help(String text) {
    Set<String> readings = readings(text);
    return readings.isEmpty() ? GENERAL : "Write `" + String.join("` or `", readings) + "`.";
  }

  /**
   * Each reading, day before month first, with its year as {@code 2026-05-14}. Where points are
   * used, the day always comes first.
   */
  static Set<String> readings(String text) {
    Set<String> readings = new LinkedHashSet<>();
    Matcher first = YEAR_FIRST.matcher(text);
    Matcher last = YEAR_LAST.matcher(text);
    if (first.matches()) {
      written(first.group(1), first.group(2), first.group(3)).ifPresent(readings::add);
    } else if (last.matches()) {
      String year = last.group(3) == null ? "" : last.group(3);
      written(year, last.group(2), last.group(1)).ifPresent(readings::add);
      boolean dayFirst = text.contains(".") && !readings.isEmpty();
      if (!dayFirst) {
        written(year, last.group(1), last.group(2)).ifPresent(readings::add);
      }
    }
    return readings;
  }

  /** The readings that have a year, or else those of the day with the year asked for. */
  static Optional<String> full(String text) {
    Set<String> readings = readings(text);
    if (readings.isEmpty()) {
      return Optional.empty();
    }
    String all = "`" + String.join("` or `", readings) + "`";
    return Optional.of(all.contains("-") ? all : "the year first, as `2026-05-14`: this is " + all);
  }

  private static Optional<String> written(String year, String month, String day) {
    try {
      int full =
          year.isEmpty() ? ANY_YEAR : Integer.parseInt(year.length() == 2 ? "20" + year : year);
      LocalDate date = LocalDate.of(full, Integer.parseInt(month), Integer.parseInt(day));
      return Optional.of(year.isEmpty() ? Months.day(date) : date.toString());
    } catch (DateTimeException impossible) {
      return Optional.empty();
    }
  }
}
