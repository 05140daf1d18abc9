package slipday.measure;

import java.time.LocalDate;
import java.util.List;

/** The months' names. Java's own table of them takes longer to set up than many a plan to read. */
public final class Months {
  /** In their order, from January on. */
  public static final List<String> NAMES =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");

  private Months() {}

  /** {@code 14 May}. */
  public static String day(LocalDate date) {
    return date.getDayOfMonth() + " " + name(date.getMonthValue());
  }

  /**
   * @param month 1 for January
   */
  public static String name(int month) {
    return NAMES.get(month - 1);
  }
}
