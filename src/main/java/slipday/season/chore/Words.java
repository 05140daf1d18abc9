package slipday.season.chore;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import slipday.measure.Counted;
import slipday.measure.Months;
import slipday.measure.Range;

/** Numbers and days as a gardener says them. */
final class Words {
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private Words() {}

  static String day(LocalDate date) {
    return Months.day(date);
  }

  static String hour(LocalTime time) {
    return HOUR.format(time);
  }

  static String when(ChoreTime time) {
    if (time instanceof ChoreTime.Hours hours) {
      return day(hours.from().toLocalDate()) + ", " + hours(time);
    }
    LocalDate first = time.start().toLocalDate();
    return first.equals(time.lastDay()) ? day(first) : day(first) + " to " + day(time.lastDay());
  }

  /** The hours alone; the day where it is whole days. */
  static String hours(ChoreTime time) {
    return time instanceof ChoreTime.Hours hours
        ? hour(hours.from().toLocalTime()) + " to " + hour(hours.to().toLocalTime())
        : when(time);
  }

  static String count(int number, String one) {
    return Counted.of(number, one);
  }

  /** A range of whole things or days, its ends rounded. */
  static String whole(Range range) {
    long low = Math.round(range.low());
    long high = Math.round(range.high());
    return low == high ? Long.toString(low) : low + " to " + high;
  }

  static String days(Range days) {
    return whole(days) + (Math.round(days.high()) == 1 ? " day" : " days");
  }

  static String list(List<String> things) {
    return String.join("; ", things);
  }

  static String sentence(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.codePointAt(0);
    String start = Character.toString(Character.toUpperCase(first));
    String whole = start + text.substring(Character.charCount(first));
    return whole.endsWith(".") ? whole : whole + ".";
  }
}
