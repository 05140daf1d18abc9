package slipday.climate;

import java.util.OptionalDouble;
import slipday.measure.Reason;

/**
 * When the last spring frost or the first autumn frost comes, as a chance. Slots are those of the
 * season's axis.
 *
 * <p>The chances are those of the NOAA freeze tables: in spring that a freeze comes later than a
 * day, in autumn that one comes earlier. A year without a freeze counts in neither.
 */
public sealed interface FrostLaw permits RecordedFrost, StatedFrost {
  FrostSide side();

  FrostThreshold threshold();

  SeasonAxis axis();

  /** The chance of a year whose date of frost is later than a slot. */
  double chanceAfter(double slot);

  /** The chance of a year whose date of frost is earlier than a slot. */
  double chanceBefore(double slot);

  /** The chance of a year without such a frost on this side of midsummer. */
  double chanceNone();

  /**
   * The slot of a quantile among the years that have a frost; p from 0 to 1.
   *
   * @throws RuntimeException where no year has one: ask {@link #chanceNone} first
   */
  double quantile(double p);

  /** One sentence for people: the middle date, the 1-in-10 date and what they are from. */
  String describe();

  Reason reason();

  default double median() {
    return quantile(0.5);
  }

  /**
   * The chance of frost to one who plants out (in spring) or still stands (in autumn) on a slot.
   */
  default double risk(double slot) {
    return side() == FrostSide.SPRING ? chanceAfter(slot) : chanceBefore(slot);
  }

  /**
   * The slot at which the risk is p: in spring the chance of a frost later than it, in autumn of
   * one earlier. Empty where even the whole side has less risk than p.
   */
  default OptionalDouble slotAtRisk(double p) {
    double withFrost = 1 - chanceNone();
    if (!(p > 0 && p < 1)) {
      throw new IllegalArgumentException("a risk of " + p + " is not between 0 and 1");
    }
    if (withFrost <= 0 || p >= withFrost) {
      return OptionalDouble.empty();
    }
    double among = p / withFrost;
    return OptionalDouble.of(quantile(side() == FrostSide.SPRING ? 1 - among : among));
  }

  /** {@code 1 in 10 after 28 May}, or that the risk is never that high. */
  default String oneInTenText() {
    OptionalDouble slot = slotAtRisk(0.1);
    String word = side() == FrostSide.SPRING ? "after " : "before ";
    return slot.isPresent()
        ? "1 in 10 " + word + axis().dayText(slot.getAsDouble())
        : "in fewer than 1 year in 10";
  }
}
