package slipday.language;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipday.finding.Nearest;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Reads {@code 2027-05-14}, {@code 14 May} and {@code 14 May 2027}. */
final class DayReader {
  private static final List<String> MONTHS =
      Arrays.stream(Month.values())
          .map(m -> m.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
          .toList();

  private final String name;
  private final Shape.Attempt attempt;

  DayReader(String name, Shape.Attempt attempt) {
    this.name = name;
    this.attempt = attempt;
  }

  int day(int at) {
    Optional<Word> first = attempt.word(at);
    if (first.filter(w -> w.is(WordKind.DATE)).isPresent()) {
      return fullDate(at, first.orElseThrow().text());
    }
    boolean dayNumber =
        first.filter(w -> w.is(WordKind.NUMBER) && w.text().matches("\\d{1,2}")).isPresent();
    if (!dayNumber) {
      return Mistakes.numberLike(first)
          .map(m -> attempt.mistaken(at, m, Kind.DAY.expected()))
          .orElseGet(() -> attempt.expect(at, Kind.DAY.expected()));
    }
    return monthDay(at);
  }

  private int fullDate(int at, String text) {
    try {
      LocalDate date = LocalDate.parse(text);
      return keep(at, at + 1, MonthDay.from(date), Optional.of(date));
    } catch (DateTimeException e) {
      return attempt.mistaken(at, impossible(text), Kind.DAY.expected());
    }
  }

  private int monthDay(int at) {
    Optional<Word> word = attempt.word(at + 1).filter(w -> w.is(WordKind.WORD));
    Optional<Month> month = word.flatMap(w -> month(w.text()));
    if (month.isEmpty()) {
      String help =
          word.map(w -> Nearest.help(w.text(), MONTHS, "month")).orElse("Write it as `14 May`.");
      String message =
          word.map(w -> "`" + w.text() + "` is not a month.").orElse("The month is missing.");
      return attempt.mistaken(at + 1, new Shape.Mistake("date-form", message, help), "a month");
    }
    int day = Integer.parseInt(attempt.words.get(at).text());
    Optional<String> year =
        attempt
            .word(at + 2)
            .filter(w -> w.is(WordKind.NUMBER) && w.text().matches("[12]\\d{3}"))
            .map(Word::text);
    try {
      MonthDay monthDay = MonthDay.of(month.get(), day);
      Optional<LocalDate> date = year.map(y -> strict(monthDay, Integer.parseInt(y)));
      return keep(at, year.isPresent() ? at + 3 : at + 2, monthDay, date);
    } catch (DateTimeException e) {
      String text = day + " " + word.orElseThrow().text() + year.map(y -> " " + y).orElse("");
      return attempt.mistaken(at, impossible(text), Kind.DAY.expected());
    }
  }

  private static LocalDate strict(MonthDay day, int year) {
    return LocalDate.of(year, day.getMonth(), day.getDayOfMonth());
  }

  private static Optional<Month> month(String text) {
    for (int i = 0; i < MONTHS.size(); i++) {
      String full = MONTHS.get(i);
      boolean fits = full.equalsIgnoreCase(text) || full.substring(0, 3).equalsIgnoreCase(text);
      if (fits) {
        return Optional.of(Month.of(i + 1));
      }
    }
    return Optional.empty();
  }

  private int keep(int from, int to, MonthDay day, Optional<LocalDate> date) {
    var span = attempt.words.get(from).span().to(attempt.words.get(to - 1).span());
    attempt.bound.add(name, new Value.Day(day, date, span));
    return to;
  }

  private static Shape.Mistake impossible(String text) {
    return new Shape.Mistake(
        "impossible-date",
        "There is no " + text + ".",
        "Look at the calendar for the day that was meant.");
  }
}
