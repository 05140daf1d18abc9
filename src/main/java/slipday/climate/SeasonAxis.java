package slipday.climate;

import java.time.LocalDate;
import java.time.Year;
import java.util.Locale;
import slipday.measure.Months;

/**
 * The days of one season as 365 slots: 1 January to 31 December in the north, 1 July to 30 June in
 * the south. 29 February shares the slot of 28 February, so that a slot is the same day in every
 * year. Slots below 0 and above 364 are the days before and after.
 *
 * @param year the calendar year the season begins in
 */
public record SeasonAxis(Hemisphere hemisphere, int year) {
  /** Days in every season. */
  public static final int SLOTS = 365;

  private static final int FIRST_OF_JULY = 181;
  private static final int LEAP_DAY_OF_YEAR = 60;

  public static SeasonAxis northern(int year) {
    return new SeasonAxis(Hemisphere.NORTH, year);
  }

  /** The season from 1 July of a year to 30 June of the next. */
  public static SeasonAxis southern(int year) {
    return new SeasonAxis(Hemisphere.SOUTH, year);
  }

  /** The season a date falls in. */
  public static SeasonAxis holding(Hemisphere hemisphere, LocalDate date) {
    boolean before = hemisphere == Hemisphere.SOUTH && date.getMonthValue() < 7;
    return new SeasonAxis(hemisphere, date.getYear() - (before ? 1 : 0));
  }

  /** The date of a slot; never 29 February. */
  public LocalDate dateOf(int slot) {
    int days = slot + firstDay();
    int inYear = Math.floorMod(days, SLOTS);
    int calendarYear = year + Math.floorDiv(days, SLOTS);
    boolean pastLeapDay = Year.isLeap(calendarYear) && inYear + 1 >= LEAP_DAY_OF_YEAR;
    return LocalDate.ofYearDay(calendarYear, inYear + (pastLeapDay ? 2 : 1));
  }

  public int slotOf(LocalDate date) {
    int dayOfYear = date.getDayOfYear();
    boolean pastLeapDay = date.isLeapYear() && dayOfYear >= LEAP_DAY_OF_YEAR;
    int inYear = dayOfYear - (pastLeapDay ? 2 : 1);
    return (date.getYear() - year) * SLOTS + inYear - firstDay();
  }

  /** The first slot of autumn's half: 1 August in the north, 1 February in the south. */
  public int midsummer() {
    return hemisphere == Hemisphere.NORTH ? slotOf(8, 1) : slotOf(2, 1);
  }

  /** First slot in which missing days hide a spring frost: 1 March, 1 September in the south. */
  int springWatchFrom() {
    return hemisphere == Hemisphere.NORTH ? slotOf(3, 1) : slotOf(9, 1);
  }

  /** Last slot in which missing days hide an autumn frost: 30 November, 31 May in the south. */
  int autumnWatchTo() {
    return hemisphere == Hemisphere.NORTH ? slotOf(11, 30) : slotOf(5, 31);
  }

  /** {@code 2014}, or {@code 2014-15} for a season that crosses the new year. */
  public String label() {
    return hemisphere == Hemisphere.NORTH
        ? String.valueOf(year)
        : String.format(Locale.ROOT, "%d-%02d", year, Math.floorMod(year + 1, 100));
  }

  /** {@code 14 May}: a slot as a gardener says it. */
  public String dayText(double slot) {
    return Months.day(dateOf((int) Math.round(slot)));
  }

  int slotOf(int month, int day) {
    LocalDate inFirstYear = LocalDate.of(year, month, day);
    int slot = slotOf(inFirstYear);
    return slot < 0 ? slot + SLOTS : slot;
  }

  private int firstDay() {
    return hemisphere == Hemisphere.NORTH ? 0 : FIRST_OF_JULY;
  }
}
