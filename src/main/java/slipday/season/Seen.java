package slipday.season;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import slipday.climate.SeasonAxis;
import slipday.measure.Reasoned;

/**
 * Recorded days as slots of the season's axis: what every weather year is made to agree with.
 *
 * @param malesBy by when a male flower was open, where the first was not seen
 * @param fruitingBy by when a flower that bears was
 * @param gone the day by which no plant stood any more
 * @param alive the last slot on which plants are known to stand
 */
record Seen(
    OptionalInt up,
    OptionalInt males,
    OptionalInt fruiting,
    OptionalInt malesBy,
    OptionalInt fruitingBy,
    OptionalInt ripe,
    OptionalInt seedRipe,
    OptionalInt gone,
    int alive) {
  private static final OptionalInt NEVER = OptionalInt.empty();
  static final Seen NOTHING = new Seen(NEVER, NEVER, NEVER, NEVER, NEVER, NEVER, NEVER, NEVER);

  Seen(
      OptionalInt up,
      OptionalInt males,
      OptionalInt fruiting,
      OptionalInt malesBy,
      OptionalInt fruitingBy,
      OptionalInt ripe,
      OptionalInt seedRipe,
      OptionalInt gone) {
    this(
        up,
        males,
        fruiting,
        malesBy,
        fruitingBy,
        ripe,
        seedRipe,
        gone,
        last(up, males, fruiting, malesBy, fruitingBy, ripe, seedRipe));
  }

  static Seen of(Observed observed, SeasonAxis axis) {
    return new Seen(
        slot(observed.date(Event.EMERGED), axis),
        slot(observed.date(Event.FIRST_MALE), axis),
        slot(observed.date(Event.FIRST_FRUITING), axis),
        slot(observed.openedBy(Event.FIRST_MALE).map(Reasoned::value), axis),
        slot(observed.openedBy(Event.FIRST_FRUITING).map(Reasoned::value), axis),
        slot(observed.date(Event.RIPE), axis),
        slot(observed.date(Event.SEED_RIPE), axis),
        slot(observed.gone().map(Reasoned::value), axis));
  }

  private static OptionalInt slot(Optional<LocalDate> date, SeasonAxis axis) {
    return date.map(d -> OptionalInt.of(axis.slotOf(d))).orElse(NEVER);
  }

  /** As if a flower of this slot were the first. */
  Seen pollinated(int slot) {
    return new Seen(up, males, OptionalInt.of(slot), malesBy, NEVER, NEVER, NEVER, gone);
  }

  private static int last(OptionalInt... slots) {
    int last = -1;
    for (OptionalInt slot : slots) {
      last = Math.max(last, slot.orElse(-1));
    }
    return last;
  }

  /** The first slot of the frost in a year, or of there being no plant, whichever comes first. */
  int end(int frost) {
    return Math.min(Math.max(frost, alive + 1), gone.orElse(Integer.MAX_VALUE));
  }
}
