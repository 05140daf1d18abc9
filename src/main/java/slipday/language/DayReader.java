package slipday.language;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import slipday.finding.Nearest;
import slipday.measure.Months;
import slipday.syntax.WordKind;

/** Reads {@code 2026-05-14}, {@code 14 May} and {@code 14 May 2026}. */
final class DayReader {
  private static final List<String> MONTHS = Months.NAMES;
  private static final int SHORTEST_MONTH = 3;

  private final String name;
  private final Shape.Attempt attempt;

  DayReader(String name, Shape.Attempt attempt) {
    this.name = name;
    this.attempt = attempt;
  }

  int day(int at) {
    if (attempt.is(at, WordKind.DATE)) {
      return fullDate(at, attempt.text(at));
    }
    boolean dayNumber = attempt.is(at, WordKind.NUMBER) && isDayNumber(attempt.text(at));
    return dayNumber ? monthDay(at) : notADay(at);
  }

  private static boolean isDayNumber(String text) {
    return text.length() <= 2 && isFigures(text);
  }

  private static boolean isYear(String text) {
    return text.length() == 4
        && isFigures(text)
        && (text.charAt(0) == '1' || text.charAt(0) == '2');
  }

  private static boolean isFigures(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return !text.isEmpty();
  }

  private int notADay(int at) {
    String text = attempt.text(at);
    if (month(text) != null || text.matches("\\d{1,2}(\\.|st|nd|rd|th|/\\d{1,2})")) {
      String next = attempt.text(at + 1);
      boolean goesOn = month(next) != null || isDayNumber(next);
      return mistaken(at, Mistakes.dateForm(goesOn ? text + " " + next : text));
    }
    Optional<Shape.Mistake> known =
        attempt.is(at, WordKind.MIXED)
            ? Mistakes.numberLike(attempt.words.get(at))
            : Optional.empty();
    return known.isPresent() ? mistaken(at, known.get()) : attempt.expect(at, Kind.DAY.expected());
  }

  private int mistaken(int at, Shape.Mistake mistake) {
    return attempt.mistaken(at, () -> mistake, Kind.DAY.expected());
  }

  private int fullDate(int at, String text) {
    try {
      LocalDate date = LocalDate.parse(text);
      return keep(at, at + 1, MonthDay.from(date), Optional.of(date));
    } catch (DateTimeException e) {
      int month = Integer.parseInt(text.substring(5, 7));
      Month known = month >= 1 && month <= 12 ? Month.of(month) : null;
      return mistaken(at, impossible(text, known));
    }
  }

  private int monthDay(int at) {
    Month month = month(attempt.text(at + 1));
    if (month == null) {
      return attempt.mistaken(at + 1, () -> noMonth(at), "a month");
    }
    int day = Integer.parseInt(attempt.text(at));
    if (day < 1 || day > month.maxLength()) {
      return mistaken(at, impossible(attempt.span(at, at + 2).text(), month));
    }
    MonthDay monthDay = MonthDay.of(month, day);
    if (!attempt.is(at + 2, WordKind.NUMBER)) {
      return keep(at, at + 2, monthDay, Optional.empty());
    }
    String year = attempt.text(at + 2);
    if (!isYear(year)) {
      return attempt.mistaken(at + 2, () -> shortYear(year), "a year");
    }
    if (!monthDay.isValidYear(Integer.parseInt(year))) {
      return mistaken(at, impossible(attempt.span(at, at + 3).text(), month));
    }
    LocalDate date = monthDay.atYear(Integer.parseInt(year));
    return keep(at, at + 3, monthDay, Optional.of(date));
  }

  private Shape.Mistake noMonth(int at) {
    String word = attempt.text(at + 1);
    return attempt.is(at + 1, WordKind.WORD)
        ? new Shape.Mistake(
                "date-form",
                "`" + word + "` is not a month.",
                Nearest.help(word, MONTHS, () -> "Write the day as `14 May` or `2026-05-14`."))
            .instead(Nearest.to(word, MONTHS).stream().toList())
        : new Shape.Mistake(
            "date-form",
            "`" + attempt.text(at) + "` is without its month.",
            "Write the day as `14 May` or `2026-05-14`.");
  }

  private static Shape.Mistake shortYear(String year) {
    return new Shape.Mistake(
        "date-form",
        "`" + year + "` is not read as a year.",
        "Write the year with four digits, or leave it off.");
  }

  /** A month by its name, or by no less than the first three letters of it. */
  private static @Nullable Month month(String text) {
    if (text.length() < SHORTEST_MONTH) {
      return null;
    }
    for (int i = 0; i < MONTHS.size(); i++) {
      if (MONTHS.get(i).regionMatches(true, 0, text, 0, text.length())) {
        return Month.of(i + 1);
      }
    }
    return null;
  }

  private int keep(int from, int to, MonthDay day, Optional<LocalDate> date) {
    attempt.bound.add(name, new Value.Day(day, date, attempt.span(from, to)));
    return to;
  }

  private static Shape.Mistake impossible(String text, @Nullable Month month) {
    return new Shape.Mistake(
        "impossible-date", "There is no `" + text.replaceAll("\\s+", " ") + "`.", length(month));
  }

  private static String length(@Nullable Month month) {
    if (month == null) {
      return "A year has 12 months.";
    }
    String leap = month == Month.FEBRUARY ? ", and 29 in a leap year" : "";
    return MONTHS.get(month.getValue() - 1) + " has " + month.minLength() + " days" + leap + ".";
  }
}
