package slipday.season;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Chooses the day a planting goes out, or is sown in place: the first on which frost, soil and
 * nights are met and from which it still ripens often enough.
 */
final class DateChooser {
  private final Needs needs;
  private final Walk walk;
  private final Conditions conditions;
  private final int first;
  private final int last;

  /**
   * @param first the first slot looked at
   * @param last the last slot looked at
   */
  DateChooser(Needs needs, Walk walk, Conditions conditions, int first, int last) {
    this.needs = needs;
    this.walk = walk;
    this.conditions = conditions;
    this.first = first;
    this.last = last;
  }

  /**
   * @param start the recommended slot
   * @param earliest first slot with the spring conditions met; empty if none
   * @param latest last slot that still ripens often enough; empty if none does
   * @param leastSoil whether the soil is not what is wanted but the least in which seed comes up
   */
  record Choice(
      int start,
      OptionalInt earliest,
      Condition earlyBound,
      OptionalInt latest,
      Condition lateBound,
      boolean possible,
      boolean leastSoil) {
    Choice(
        int start,
        OptionalInt earliest,
        Condition earlyBound,
        OptionalInt latest,
        Condition lateBound,
        boolean possible) {
      this(start, earliest, earlyBound, latest, lateBound, possible, false);
    }

    Choice inLeastSoil() {
      return new Choice(start, earliest, earlyBound, latest, lateBound, possible, true);
    }
  }

  Choice choose() {
    OptionalInt earliest = earliest();
    if (earliest.isEmpty()) {
      int best = bestSpring();
      return new Choice(
          best, earliest, worstSpring(best), OptionalInt.empty(), Condition.CALENDAR, false);
    }
    int from = earliest.getAsInt();
    Optional<Condition> fails = summerFailure(from);
    if (fails.isPresent() && fails.get() == Condition.HEAT) {
      return pastTheHeat(from);
    }
    if (fails.isPresent()) {
      return new Choice(from, earliest, earlyBound(from), OptionalInt.empty(), fails.get(), false);
    }
    return upTo(from, earliest, earlyBound(from));
  }

  private Choice upTo(int start, OptionalInt earliest, Condition earlyBound) {
    int latest = latest(start);
    Condition lateBound =
        latest >= last ? Condition.CALENDAR : summerFailure(latest + 1).orElse(Condition.CALENDAR);
    return new Choice(start, earliest, earlyBound, OptionalInt.of(latest), lateBound, true);
  }

  private OptionalInt earliest() {
    for (int start = first; start <= last; start++) {
      if (conditions.springMet(start)) {
        return OptionalInt.of(start);
      }
    }
    return OptionalInt.empty();
  }

  private List<Condition> springFailures(int start) {
    return failures(conditions.spring(start));
  }

  private List<Condition> failures(Map<Condition, Double> chances) {
    List<Condition> failed = new ArrayList<>();
    chances.forEach(
        (condition, chance) -> {
          if (!conditions.met(condition, chance)) {
            failed.add(condition);
          }
        });
    return failed;
  }

  /** What failed a day before the earliest: the last condition to come true. */
  private Condition earlyBound(int earliest) {
    return earliest == first
        ? Condition.CALENDAR
        : springFailures(earliest - 1).stream().findFirst().orElse(Condition.CALENDAR);
  }

  private Optional<Condition> summerFailure(int start) {
    return failures(conditions.summer(walk.ripening(needs, start))).stream()
        .reduce((a, b) -> a == Condition.HEAT ? b : a);
  }

  /** The last slot from which it still ripens; lateness only makes it less likely. */
  private int latest(int good) {
    int low = good;
    int high = last;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (summerFailure(middle).isEmpty()) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  /** Where the first bloom falls into the hottest weeks, a later day may pass them by. */
  private Choice pastTheHeat(int from) {
    int step = 3;
    for (int start = from + step; start <= last; start += step) {
      Optional<Condition> fails = summerFailure(start);
      if (fails.isEmpty()) {
        return upTo(start, OptionalInt.of(from), Condition.HEAT);
      }
      if (fails.get() != Condition.HEAT) {
        break;
      }
    }
    return new Choice(
        from, OptionalInt.of(from), earlyBound(from), OptionalInt.empty(), Condition.HEAT, false);
  }

  /**
   * The day nearest to meeting the spring conditions, where none does: by the worst of them, and
   * where that is hopeless on many days, by all of them.
   */
  private int bestSpring() {
    int best = first;
    double bestWorst = -1;
    double bestAll = -1;
    for (int start = first; start <= last; start++) {
      double worst = 1;
      double all = 0;
      for (Map.Entry<Condition, Double> e : conditions.spring(start).entrySet()) {
        double met = Math.min(1, e.getValue() / conditions.wanted(e.getKey()));
        worst = Math.min(worst, met);
        all += met;
      }
      boolean level = worst > bestWorst - 1e-9;
      if (worst > bestWorst + 1e-9 || (level && all > bestAll + 1e-9)) {
        best = start;
        bestWorst = worst;
        bestAll = all;
      }
    }
    return best;
  }

  private Condition worstSpring(int start) {
    return springFailures(start).stream().findFirst().orElse(Condition.CALENDAR);
  }

  /** The chance of every condition on a slot. */
  Map<Condition, Double> chances(int start, Traces traces) {
    Map<Condition, Double> chances = new EnumMap<>(Condition.class);
    chances.putAll(conditions.spring(start));
    chances.putAll(conditions.summer(traces));
    return chances;
  }
}
