package slipday.output.data;

import java.time.LocalDate;
import java.util.Optional;
import slipday.garden.Planting;
import slipday.season.DateSpread;
import slipday.season.Event;

/**
 * When something happens to a planting: on or before {@code early}, {@code usual} and {@code late}
 * in one, five and nine years of ten.
 *
 * @param words the event as people read it
 * @param never the share of years in which it does not happen, 0 to 1
 * @param decided whether it is a day to choose, then all three are the same
 */
public record EventData(
    String event,
    String words,
    Optional<LocalDate> early,
    Optional<LocalDate> usual,
    Optional<LocalDate> late,
    double never,
    boolean decided) {
  static EventData of(Planting planting, Event event, DateSpread spread) {
    return new EventData(
        event.id(),
        words(planting, event),
        spread.early(),
        spread.usual(),
        spread.late(),
        spread.never(),
        spread.decided());
  }

  /** The event as the trade says it of this planting. */
  public static String words(Planting planting, Event event) {
    return switch (event) {
      case FIRST_MALE -> "first " + planting.maleFlowers();
      case FIRST_FRUITING -> "first " + planting.fruitingFlowers();
      default -> event.words();
    };
  }
}
