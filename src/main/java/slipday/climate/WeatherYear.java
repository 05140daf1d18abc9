package slipday.climate;

import java.util.Optional;

/**
 * One season of a weather record, day by slot, in °C.
 *
 * <p>Two views: what was measured, for the dates of frost; and, in a usable season, the same with
 * its missing days filled, for walking day by day. The arrays are shared for speed and must not be
 * changed.
 */
public final class WeatherYear {
  private final SeasonAxis axis;
  private final double[] measuredLows;
  private final double[] lows;
  private final double[] highs;
  private final int filledDays;
  private final Optional<String> leftOut;

  WeatherYear(
      SeasonAxis axis,
      double[] measuredLows,
      double[] lows,
      double[] highs,
      int filledDays,
      Optional<String> leftOut) {
    this.axis = axis;
    this.measuredLows = measuredLows;
    this.lows = lows;
    this.highs = highs;
    this.filledDays = filledDays;
    this.leftOut = leftOut;
  }

  public SeasonAxis axis() {
    return axis;
  }

  /** {@code 2014}, or {@code 2014-15} in the south. */
  public String label() {
    return axis.label();
  }

  /** The lows by slot, °C; NaN where missing. */
  double[] measuredLows() {
    return measuredLows;
  }

  /** The lows by slot, °C, filled in a usable season. */
  public double[] lows() {
    return lows;
  }

  /** The highs by slot, °C, filled in a usable season. */
  public double[] highs() {
    return highs;
  }

  /** Days whose low or high was missing and is filled in for the walk. */
  public int filledDays() {
    return filledDays;
  }

  public boolean isUsable() {
    return leftOut.isEmpty();
  }

  /** Why the season is not used: a full sentence. */
  public Optional<String> leftOut() {
    return leftOut;
  }
}
