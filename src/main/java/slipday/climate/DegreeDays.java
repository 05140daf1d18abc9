package slipday.climate;

/**
 * Growing degree-days of a day or of a run of days. Temperatures, base and limit share one scale,
 * °C throughout Slipday; without a limit it is +∞.
 */
public final class DegreeDays {
  /** For methods and crops without an upper limit. */
  public static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private DegreeDays() {}

  public static double ofDay(
      DegreeDayMethod method, double low, double high, double base, double limit) {
    return switch (method) {
      case AVERAGE -> Math.max(0, Math.min((low + high) / 2, limit) - base);
      case AVERAGE_BOTH_LIMITS -> averageBothLimits(low, high, base, limit);
      case SINGLE_SINE -> sineAbove(low, high, base) - sineAbove(low, high, limit);
    };
  }

  private static double averageBothLimits(double low, double high, double base, double limit) {
    double cappedLow = Math.min(Math.max(low, base), limit);
    double cappedHigh = Math.min(Math.max(high, base), limit);
    return (cappedLow + cappedHigh) / 2 - base;
  }

  /** The day's mean of what a sine from low to high has above a line, in degrees. */
  private static double sineAbove(double low, double high, double line) {
    double mean = (low + high) / 2;
    if (line <= low) {
      return mean - line;
    }
    if (line >= high) {
      return 0;
    }
    double amplitude = (high - low) / 2;
    double angle = Math.asin((line - mean) / amplitude);
    return ((mean - line) * (Math.PI / 2 - angle) + amplitude * Math.cos(angle)) / Math.PI;
  }

  /** The sum over slots {@code from} up to but not including {@code to}. */
  public static double sum(
      DegreeDayMethod method,
      double[] lows,
      double[] highs,
      int from,
      int to,
      double base,
      double limit) {
    double sum = 0;
    for (int slot = from; slot < to; slot++) {
      sum += ofDay(method, lows[slot], highs[slot], base, limit);
    }
    return sum;
  }

  /**
   * The running sum from a slot on: element i is the sum over {@code from} to {@code from + i},
   * both included. Its length is what is left of the season.
   */
  public static double[] accumulate(
      DegreeDayMethod method, double[] lows, double[] highs, int from, double base, double limit) {
    double[] sums = new double[Math.max(0, lows.length - from)];
    double sum = 0;
    for (int i = 0; i < sums.length; i++) {
      sum += ofDay(method, lows[from + i], highs[from + i], base, limit);
      sums[i] = sum;
    }
    return sums;
  }

  /** The first slot at whose end the sum from {@code from} on has reached a need; −1 if never. */
  public static int slotReaching(
      double need,
      DegreeDayMethod method,
      double[] lows,
      double[] highs,
      int from,
      double base,
      double limit) {
    double sum = 0;
    for (int slot = from; slot < lows.length; slot++) {
      sum += ofDay(method, lows[slot], highs[slot], base, limit);
      if (sum >= need) {
        return slot;
      }
    }
    return -1;
  }
}
