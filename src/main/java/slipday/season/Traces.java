package slipday.season;

import java.util.Arrays;
import slipday.climate.SeasonAxis;

/**
 * The days of a planting's events in every sample: each weather year at three paces of the crop
 * (quick, usual, slow), year by year. A day is a slot of the season's axis, {@link #NEVER} where
 * the event does not come.
 *
 * <p>The three paces stand for the 10, 50 and 90 % points of the crop's own range and weigh 0.3,
 * 0.4 and 0.3 (Swanson's rule; Keefer and Bodily 1983, Management Science 29:595, from memory).
 */
@SuppressWarnings("EnumOrdinal") // the index of an array of its own, never kept or shown
public final class Traces {
  public static final int NEVER = Integer.MAX_VALUE;
  public static final int PACES = 3;
  private static final double[] PACE_WEIGHTS = {0.3, 0.4, 0.3};

  private final int years;
  private final int[][] slots;

  Traces(int years) {
    this.years = years;
    this.slots = new int[Event.values().length][years * PACES];
    for (int[] event : slots) {
      Arrays.fill(event, NEVER);
    }
  }

  public int years() {
    return years;
  }

  public int samples() {
    return years * PACES;
  }

  static double paceWeight(int pace) {
    return PACE_WEIGHTS[pace];
  }

  /** The weight of one sample; all weights sum to 1. */
  public double weight(int sample) {
    return PACE_WEIGHTS[sample % PACES] / years;
  }

  public int slot(Event event, int sample) {
    return slots[event.ordinal()][sample];
  }

  void set(Event event, int year, int pace, int slot) {
    slots[event.ordinal()][year * PACES + pace] = slot;
  }

  /** The first slot an event comes in any sample; {@link #NEVER} if in none. */
  public int first(Event event) {
    return Arrays.stream(slots[event.ordinal()]).min().orElse(NEVER);
  }

  /** The last slot an event comes in any sample that has it; −1 if in none. */
  public int last(Event event) {
    return Arrays.stream(slots[event.ordinal()]).filter(s -> s != NEVER).max().orElse(-1);
  }

  /** The share of samples, by weight, in which the event comes. */
  public double chance(Event event) {
    double chance = 0;
    int[] of = slots[event.ordinal()];
    for (int s = 0; s < of.length; s++) {
      chance += of[s] == NEVER ? 0 : weight(s);
    }
    return chance;
  }

  /** The smallest slot by which the event has come in at least a share of samples. */
  private int quantile(int[] slots, int[] order, double share) {
    double sum = 0;
    for (int sample : order) {
      sum += weight(sample);
      if (sum >= share - 1e-9) {
        return slots[sample];
      }
    }
    return NEVER;
  }

  DateSpread spread(Event event, SeasonAxis axis) {
    int[] of = slots[event.ordinal()];
    int[] order = Ascending.order(of);
    return new DateSpread(
        day(quantile(of, order, 0.1), axis),
        day(quantile(of, order, 0.5), axis),
        day(quantile(of, order, 0.9), axis),
        Math.max(0, 1 - chance(event)),
        false);
  }

  private static java.util.Optional<java.time.LocalDate> day(int slot, SeasonAxis axis) {
    return slot == NEVER ? java.util.Optional.empty() : java.util.Optional.of(axis.dateOf(slot));
  }
}
