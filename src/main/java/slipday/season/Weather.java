package slipday.season;

import java.util.ArrayList;
import java.util.List;
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
  private final List<HeatSums> heat = new ArrayList<>();
  private final List<EmergenceSums> emergence = new ArrayList<>();

  /** Asked for in the innermost loops: a look through a short list is quicker than a map. */
  @SuppressWarnings("ArrayRecordComponent") // Kept and read here alone, never compared.
  private record HeatSums(double base, double limit, double warmer, double[][] sums) {
    boolean isOf(double otherBase, double otherLimit, double otherWarmer) {
      return base == otherBase && limit == otherLimit && warmer == otherWarmer;
    }
  }

  @SuppressWarnings("ArrayRecordComponent") // As above.
  private record EmergenceSums(EmergenceTable table, double warmer, double[][] sums) {}

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
    for (int i = 0; i < heat.size(); i++) {
      if (heat.get(i).isOf(base, limit, warmer)) {
        return heat.get(i).sums[year];
      }
    }
    double[][] sums = heatSums(base, limit, warmer);
    heat.add(new HeatSums(base, limit, warmer, sums));
    return sums[year];
  }

  private double[][] heatSums(double base, double limit, double warmer) {
    double[][] sums = new double[years()][];
    for (int y = 0; y < years(); y++) {
      double[] sum = new double[slots() + 1];
      for (int s = 0; s < slots(); s++) {
        double low = lows[y][s] + warmer;
        double high = highs[y][s] + warmer;
        sum[s + 1] = sum[s] + DegreeDays.ofDay(METHOD, low, high, base, limit);
      }
      sums[y] = sum;
    }
    return sums;
  }

  /** Progress of emergence up to each slot; a seed is up one whole after its sowing. */
  double[] emergence(int year, EmergenceTable table, double warmer) {
    for (int i = 0; i < emergence.size(); i++) {
      EmergenceSums each = emergence.get(i);
      if (each.warmer == warmer && each.table.equals(table)) {
        return each.sums[year];
      }
    }
    double[][] sums = emergenceSums(table, warmer);
    emergence.add(new EmergenceSums(table, warmer, sums));
    return sums[year];
  }

  private double[][] emergenceSums(EmergenceTable table, double warmer) {
    double[][] sums = new double[years()][];
    for (int y = 0; y < years(); y++) {
      double[] sum = new double[slots() + 1];
      for (int s = 0; s < slots(); s++) {
        sum[s + 1] = sum[s] + table.rate(soil[y][s] + warmer);
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
