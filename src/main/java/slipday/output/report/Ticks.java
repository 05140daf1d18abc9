package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import slipday.measure.Quantity;

/**
 * Round figures along an axis, and the axis widened to reach from one of them to another.
 *
 * <p>Steps are 1, 2 or 5 times a power of ten: "loose labels" of P. S. Heckbert, Nice Numbers for
 * Graph Labels, in A. S. Glassner (ed.), Graphics Gems, 1990, pp. 61–63 (from memory).
 *
 * @param low the first tick
 * @param high the last
 * @param step from one to the next
 */
record Ticks(double low, double high, double step) {
  private static final double HAIR = 1e-9;

  /** How far to either side an axis reaches that has a single figure to show, as a share of it. */
  private static final double ALONE = 0.1;

  /**
   * @param about how many ticks are wanted; there may be some more or fewer
   */
  static Ticks over(double from, double to, int about) {
    if (!(to - from > HAIR * Math.max(Math.abs(from), Math.abs(to)))) {
      double room = from == 0 ? 1 : Math.abs(from) * ALONE;
      return over(from - room, to + room, about);
    }
    double range = roundedUp(to - from);
    double step = rounded(range / (about - 1));
    return new Ticks(
        Math.floor(from / step + HAIR) * step, Math.ceil(to / step - HAIR) * step, step);
  }

  private static double roundedUp(double figure) {
    double power = power(figure);
    double lead = figure / power - HAIR;
    return (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10) * power;
  }

  private static double rounded(double figure) {
    double power = power(figure);
    double lead = figure / power;
    return (lead < 1.5 ? 1 : lead < 3 ? 2 : lead < 7 ? 5 : 10) * power;
  }

  private static double power(double figure) {
    return Math.pow(10, Math.floor(Math.log10(figure) + HAIR));
  }

  List<Double> values() {
    List<Double> values = new ArrayList<>();
    long last = Math.round(high / step);
    for (long k = Math.round(low / step); k <= last; k++) {
      values.add(k * step);
    }
    return values;
  }

  /** A tick's figure, with as many decimals as the step has. */
  String label(double value) {
    int places = (int) Math.max(0, -Math.floor(Math.log10(step) + HAIR));
    double shown = Math.abs(value) < step / 2 ? 0 : value;
    return Quantity.fixed(shown, places);
  }
}
