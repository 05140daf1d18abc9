package slipday.season;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slipday.climate.DegreeDayMethod;
import slipday.climate.DegreeDays;

/**
 * The weather years as the walk needs them: lows, highs and soil by year and slot, °C, already
 * those of the garden; and running sums, made once for each base, limit and warmth that is asked
 * for.
 */
final class Weather {
  /** How the walk counts heat; said wherever a heat sum is shown. */
  static final DegreeDayMethod METHOD = DegreeDayMethod.SINGLE_SINE;

  private final List<String> labels;
  private final double[][] lows;
  private final double[][] highs;
  private final double[][] soil;
  private final Map<HeatKey, double[][]> heat = new HashMap<>();
  private final Map<EmergenceKey, double[][]> emergence = new HashMap<>();

  private record HeatKey(double base, double limit, double warmer) {}

  private record EmergenceKey(EmergenceTable table, double warmer) {}

  Weather(List<String> labels, double[][] lows, double[][] highs, double[][] soil) {
    this.labels = labels;
    this.lows = lows;
    this.highs = highs;
    this.soil = soil;
  }

  int years() {
    return lows.length;
  }

  String label(int year) {
    return labels.get(year);
  }

  List<String> labels() {
    return labels;
  }

  double[] lows(int year) {
    return lows[year];
  }

  double[] highs(int year) {
    return highs[year];
  }

  double[] soil(int year) {
    return soil[year];
  }

  int slots() {
    return lows.length == 0 ? 0 : lows[0].length;
  }

  /** Heat up to (not including) each slot, °C-days: element 0 is 0. */
  double[] heat(int year, double base, double limit, double warmer) {
    return heat.computeIfAbsent(new HeatKey(base, limit, warmer), this::heatSums)[year];
  }

  private double[][] heatSums(HeatKey key) {
    double[][] sums = new double[years()][];
    for (int y = 0; y < years(); y++) {
      double[] sum = new double[slots() + 1];
      for (int s = 0; s < slots(); s++) {
        double low = lows[y][s] + key.warmer;
        double high = highs[y][s] + key.warmer;
        sum[s + 1] = sum[s] + DegreeDays.ofDay(METHOD, low, high, key.base, key.limit);
      }
      sums[y] = sum;
    }
    return sums;
  }

  /** Progress of emergence up to each slot; a seed is up one whole after its sowing. */
  double[] emergence(int year, EmergenceTable table, double warmer) {
    return emergence.computeIfAbsent(new EmergenceKey(table, warmer), this::emergenceSums)[year];
  }

  private double[][] emergenceSums(EmergenceKey key) {
    double[][] sums = new double[years()][];
    for (int y = 0; y < years(); y++) {
      double[] sum = new double[slots() + 1];
      for (int s = 0; s < slots(); s++) {
        sum[s + 1] = sum[s] + key.table.rate(soil[y][s] + key.warmer);
      }
      sums[y] = sum;
    }
    return sums;
  }

  /** The mean over {@code days} slots from one on, shorter at the season's end. */
  static double mean(double[] values, int from, int days) {
    int to = Math.min(values.length, from + days);
    double sum = 0;
    for (int s = from; s < to; s++) {
      sum += values[s];
    }
    return sum / Math.max(1, to - from);
  }
}
