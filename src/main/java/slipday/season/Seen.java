package slipday.season;

import java.util.OptionalInt;
import slipday.climate.SeasonAxis;

/** Recorded days as slots of the season's axis: what every weather year is made to agree with. */
record Seen(OptionalInt up, OptionalInt males, OptionalInt fruiting) {
  static final Seen NOTHING =
      new Seen(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty());

  static Seen of(Observed observed, SeasonAxis axis) {
    return observed.days().isEmpty()
        ? NOTHING
        : new Seen(
            slot(observed, Event.EMERGED, axis),
            slot(observed, Event.FIRST_MALE, axis),
            slot(observed, Event.FIRST_FRUITING, axis));
  }

  private static OptionalInt slot(Observed observed, Event event, SeasonAxis axis) {
    return observed
        .date(event)
        .map(d -> OptionalInt.of(axis.slotOf(d)))
        .orElse(OptionalInt.empty());
  }

  /** The last slot on which plants are known to stand. */
  int alive() {
    return Math.max(up.orElse(-1), Math.max(males.orElse(-1), fruiting.orElse(-1)));
  }
}
