package slipday.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * When young plants are hardened off.
 *
 * @param up the day they are up, before which nothing is hardened off
 */
record Hardening(LocalDate up) {
  /**
   * The first day of it; none where they go out no later than they are up.
   *
   * @param usual how many days it takes
   */
  Optional<Reasoned<LocalDate>> before(LocalDate out, Reasoned<Range> usual, Reason outReason) {
    LocalDate asked = out.minusDays(Math.round(usual.value().middle()));
    LocalDate day = asked.isBefore(up) ? up : asked;
    long days = ChronoUnit.DAYS.between(day, out);
    String says = days + (days == 1 ? " day" : " days") + " before planting out";
    return days < 1
        ? Optional.empty()
        : Optional.of(new Reasoned<>(day, Reason.derived(says, usual.reason(), outReason)));
  }
}
