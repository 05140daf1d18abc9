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

  private final List<Frosts> frosts = new ArrayList<>();

  /** Asked for in the innermost loops: a look through a short list is quicker than a map. */
  @SuppressWarnings("ArrayRecordComponent") // Kept and read here alone, never compared.
  private record HeatSums(double base, double limit, double warmer, double[][] sums) {
    boolean isOf(double otherBase, double otherLimit, double otherWarmer) {
      return base == otherBase && limit == otherLimit && warmer == otherWarmer;
    }
  }

  @SuppressWarnings("ArrayRecordComponent") // Read by year, never compared.
  private record EmergenceSums(EmergenceTable table, double warmer, double[][] sums) {}

  /**
   * Frosts that kill a plant, by year.
   *
   * @param colder °C that its bed is colder than the garden
   * @param killedAt °C
   * @param midsummer the slot between spring and autumn
   * @param lastOfSpring slot of the last one before; −1 where none comes
   * @param firstOfAutumn slot of the first one from it on; the number of slots where none comes
   */
  @SuppressWarnings("ArrayRecordComponent") // Read by year, never compared.
  record Frosts(
      double colder, double killedAt, int midsummer, int[] lastOfSpring, int[] firstOfAutumn) {
    private boolean isOf(double otherColder, double otherKilledAt, int otherMidsummer) {
      return colder == otherColder && killedAt == otherKilledAt && midsummer == otherMidsummer;
    }
  }

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

  /** The frosts that kill plants of one hardiness in one sort of bed. */
  Frosts frosts(double colder, double killedAt, int midsummer) {
    for (Frosts each : frosts) {
      if (each.isOf(colder, killedAt, midsummer)) {
        return each;
      }
    }
    int[] lastOfSpring = new int[years()];
    int[] firstOfAutumn = new int[years()];
    for (int year = 0; year < years(); year++) {
      double[] low = lows[year];
      int last = midsummer - 1;
      while (last >= 0 && !kills(low[last], colder, killedAt)) {
        last--;
      }
      int first = midsummer;
      while (first < low.length && !kills(low[first], colder, killedAt)) {
        first++;
      }
      lastOfSpring[year] = last;
      firstOfAutumn[year] = first;
    }
    Frosts made = new Frosts(colder, killedAt, midsummer, lastOfSpring, firstOfAutumn);
    frosts.add(made);
    return made;
  }

  /** Whether a frost comes from a slot up to (not including) another. */
  boolean freezes(int year, int from, int to, double colder, double killedAt) {
    for (int s = from; s < to; s++) {
      if (kills(lows[year][s], colder, killedAt)) {
        return true;
      }
    }
    return false;
  }

  private static boolean kills(double low, double colder, double killedAt) {
    return low - colder <= killedAt;
  }

  /** Heat by year, up to (not including) each slot, °C-days: element 0 is 0. */
  double[][] heat(double base, double limit, double warmer) {
    for (int i = 0; i < heat.size(); i++) {
      if (heat.get(i).isOf(base, limit, warmer)) {
        return heat.get(i).sums;
      }
    }
    double[][] sums = heatSums(base, limit, warmer);
    heat.add(new HeatSums(base, limit, warmer, sums));
    return sums;
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
