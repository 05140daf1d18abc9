package slipday.garden;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Locale;
import slipday.source.Span;

/** The season a plan is for: a calendar year, or July to June in the south. */
public record SeasonYear(int year, boolean acrossNewYear, Span span) {
  public LocalDate first() {
    return acrossNewYear ? LocalDate.of(year, 7, 1) : LocalDate.of(year, 1, 1);
  }

  public LocalDate last() {
    return first().plusYears(1).minusDays(1);
  }

  /** A day of this season; 29 February falls on the 28th in a common year. */
  public LocalDate on(MonthDay day) {
    LocalDate date = day.atYear(first().getYear());
    return date.isBefore(first()) ? day.atYear(first().getYear() + 1) : date;
  }

  public boolean contains(LocalDate date) {
    return !date.isBefore(first()) && !date.isAfter(last());
  }

  public String label() {
    return label(year);
  }

  /**
   * What another season is called, as this one is.
   *
   * @param year it begins in
   */
  public String label(int year) {
    return acrossNewYear
        ? year + "-" + String.format(Locale.ROOT, "%02d", (year + 1) % 100)
        : Integer.toString(year);
  }
}
