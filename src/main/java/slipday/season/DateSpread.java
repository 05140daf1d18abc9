package slipday.season;

import java.time.LocalDate;
import java.util.Optional;

/**
 * When an event happens over the years: early, usual and late are the 10, 50 and 90 % points; each
 * is empty where the event has not happened by then in that share of years (no fruit ripe before
 * frost).
 *
 * @param never the share of years in which it does not happen at all
 * @param decided whether it is a day to choose rather than to forecast; then all three are equal
 */
public record DateSpread(
    Optional<LocalDate> early,
    Optional<LocalDate> usual,
    Optional<LocalDate> late,
    double never,
    boolean decided) {

  public static DateSpread decided(LocalDate date) {
    Optional<LocalDate> day = Optional.of(date);
    return new DateSpread(day, day, day, 0, true);
  }
}
