package slipday.output;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * The days that bars of signs run over.
 *
 * @param daysASign whole days that each sign stands for
 */
record DayScale(LocalDate first, int daysASign, int signs) {
  private static final int LABEL = 4;

  /**
   * @param widest the most signs that there is room for
   */
  static DayScale over(LocalDate first, LocalDate last, int widest) {
    int days = (int) ChronoUnit.DAYS.between(first, last) + 1;
    int each = Math.max(1, (days + widest - 1) / widest);
    return new DayScale(first, each, (days + each - 1) / each);
  }

  LocalDate day(int sign) {
    return first.plusDays((long) sign * daysASign);
  }

  boolean covers(int sign, Optional<LocalDate> date) {
    return date.filter(d -> !d.isBefore(day(sign)) && d.isBefore(day(sign + 1))).isPresent();
  }

  /** The name of each month over the sign of its first day; none for a rest too short for it. */
  String months() {
    StringBuilder line = new StringBuilder();
    for (int sign = 0; sign < signs; sign++) {
      boolean named = begins(sign) || (sign == 0 && !beginsWithin(LABEL));
      if (named && line.length() <= sign) {
        line.append(" ".repeat(sign - line.length()));
        line.append(Days.month(last(sign).getMonthValue())).append(' ');
      }
    }
    return line.toString().stripTrailing();
  }

  private LocalDate last(int sign) {
    return day(sign + 1).minusDays(1);
  }

  private boolean begins(int sign) {
    return day(sign).getDayOfMonth() == 1 || last(sign).getMonth() != day(sign).getMonth();
  }

  private boolean beginsWithin(int label) {
    for (int sign = 1; sign < Math.min(label, signs); sign++) {
      if (begins(sign)) {
        return true;
      }
    }
    return false;
  }

  /** How long a sign is, in words. */
  String each() {
    return daysASign == 1 ? "a day" : daysASign + " days";
  }
}
