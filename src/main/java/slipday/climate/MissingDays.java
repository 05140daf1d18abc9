package slipday.climate;

/** Fills the missing days of one season, so that a planting can be walked through it. */
final class MissingDays {
  private MissingDays() {}

  /**
   * Runs of up to ten days by a straight line between their neighbours; longer ones, which a usable
   * season has in its dead months only, by the mean of the day over the years. A run at an end of
   * the season, or with no mean, takes its neighbour's value.
   */
  static double[] filled(double[] measured, double[] means) {
    double[] filled = measured.clone();
    int slot = 0;
    while (slot < filled.length) {
      if (!Double.isNaN(filled[slot])) {
        slot++;
        continue;
      }
      int end = slot;
      while (end < filled.length && Double.isNaN(filled[end])) {
        end++;
      }
      fill(filled, slot, end, means);
      slot = end;
    }
    return filled;
  }

  private static void fill(double[] values, int from, int to, double[] means) {
    boolean isLong = to - from > WeatherYears.MOST_MISSING;
    double before = from > 0 ? values[from - 1] : to < values.length ? values[to] : 0;
    double after = to < values.length ? values[to] : before;
    for (int slot = from; slot < to; slot++) {
      double share = (slot - from + 1.0) / (to - from + 1.0);
      values[slot] =
          isLong && !Double.isNaN(means[slot]) ? means[slot] : before + (after - before) * share;
    }
  }
}
