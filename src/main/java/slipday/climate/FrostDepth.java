package slipday.climate;

import slipday.measure.Reason;
import slipday.measure.Units;

/**
 * From frosts of 0 °C, which the gardener tells the dates of, to deeper or lighter ones: the nights
 * of spring and autumn change by so much a day, so that a degree is some days.
 *
 * <p>Common practice, no source. In New York's record of 2012 to 2015 a degree is 4 days in spring
 * and 5 in autumn; in Seattle's, by the sea, 14 and 4.
 */
public final class FrostDepth {
  /** Days that one °C is worth. */
  public static final double DAYS_PER_DEGREE = 5;

  /** °C from 0 beyond which nothing is said. */
  private static final double FURTHEST = 8;

  private FrostDepth() {}

  /** Whether dates of 0 °C say anything of a low of so many °C. */
  public static boolean isNear(double celsius) {
    return Math.abs(celsius) <= FURTHEST;
  }

  /** The chance of a low of {@code celsius} or less, in spring, on a day later than a slot. */
  public static double chanceAfter(FrostLaw spring, double slot, double celsius) {
    return spring.chanceAfter(slot - DAYS_PER_DEGREE * celsius);
  }

  /** The slot of autumn's first low of {@code celsius}, in a year that first freezes on a slot. */
  public static double autumnSlot(double slot, double celsius) {
    return slot - DAYS_PER_DEGREE * celsius;
  }

  public static Reason reason(Units units) {
    return Reason.method(
        "A frost "
            + units.difference(1)
            + " deeper than "
            + units.temperature(0)
            + " is taken to end 5 days sooner in spring and to begin 5 days later in autumn (common"
            + " practice, no source); near the sea it is more.");
  }
}
