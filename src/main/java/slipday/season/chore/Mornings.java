package slipday.season.chore;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slipday.season.PollinationPlan;

/** On which mornings of the window to pollinate. */
final class Mornings {
  private static final int WEEK = 7;

  private Mornings() {}

  /**
   * As many mornings as it takes to be sure, from the first on, spread evenly over each week where
   * nobody is there every morning. The first flowers set best, so nothing is saved for later.
   */
  static List<LocalDate> of(PollinationPlan plan, Optional<Integer> mornings) {
    if (plan.from().isEmpty() || plan.until().isEmpty() || plan.aMorning() < 1) {
      return List.of();
    }
    LocalDate from = plan.from().get();
    LocalDate until = plan.until().get();
    int aWeek = Math.max(1, Math.min(WEEK, mornings.orElse(WEEK)));
    return IntStream.range(0, needed(plan))
        .mapToObj(i -> from.plusDays((long) i * WEEK / aWeek))
        .takeWhile(day -> !day.isAfter(until))
        .toList();
  }

  private static int needed(PollinationPlan plan) {
    int toBeSure =
        plan.flowersSure()
            .map(sure -> (sure + plan.aMorning() - 1) / plan.aMorning())
            .orElse(plan.mornings());
    return Math.max(1, Math.min(toBeSure, plan.mornings()));
  }
}
