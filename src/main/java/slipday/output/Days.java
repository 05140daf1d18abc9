package slipday.output;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Dates as a gardener writes them: {@code 14 May}, with the year only where it is not the season's.
 *
 * @param first the season's first day
 * @param last its last
 */
public record Days(LocalDate first, LocalDate last) {
  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  public static String month(int month) {
    return MONTHS.get(month - 1);
  }

  public String day(LocalDate date) {
    String day = date.getDayOfMonth() + " " + month(date.getMonthValue());
    boolean inSeason = !date.isBefore(first) && !date.isAfter(last);
    return inSeason ? day : day + " " + date.getYear();
  }

  /** A dash where there is no such day. */
  public String day(Optional<LocalDate> date) {
    return date.map(this::day).orElse("-");
  }
}
