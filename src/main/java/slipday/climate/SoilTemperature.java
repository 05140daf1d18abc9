package slipday.climate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipday.measure.Basis;
import slipday.measure.Reason;
import slipday.measure.Units;

/**
 * Daily mean soil temperature at sowing depth (5 to 10 cm), estimated from the air: a mean of the
 * last eleven days' mean air temperatures with weights 11 for today down to 1. Bare open ground; no
 * snow, no litter, no shade.
 *
 * <p>After Zheng, Hunt and Running 1993, Climate Research 2:183, from memory, whose largest
 * standard error was 2.9 °C. The gardener's own readings win: the estimate is moved by what they
 * differ by.
 */
public final class SoilTemperature {
  /** Give or take, °C: the largest standard error of the method's authors, rounded up. */
  public static final double WIDTH = 3;

  /** Give or take, °C, near the gardener's own readings; by Slipday's judgement. */
  public static final double WIDTH_WITH_READINGS = 2;

  private static final int DAYS = 11;
  private static final int FULL_WITHIN = 10;
  private static final int NONE_BEYOND = 60;

  private final List<SoilReading> readings;
  private final double shift;

  /** Without readings: the estimate as it is. */
  public static SoilTemperature unread() {
    return new SoilTemperature(List.of(), 0);
  }

  /**
   * Moved by the mean of what the readings differ from the estimate of their days.
   *
   * @param lows the season's lows by slot, °C: of the year read if known, else of the mean year
   * @param highs likewise
   */
  public static SoilTemperature read(List<SoilReading> readings, double[] lows, double[] highs) {
    double[] estimate = unread().estimate(lows, highs);
    List<SoilReading> within = new ArrayList<>();
    double sum = 0;
    for (SoilReading reading : readings) {
      boolean known = reading.slot() >= 0 && reading.slot() < estimate.length;
      if (known && !Double.isNaN(estimate[reading.slot()])) {
        within.add(reading);
        sum += reading.celsius() - estimate[reading.slot()];
      }
    }
    within.sort((a, b) -> Integer.compare(a.slot(), b.slot()));
    return within.isEmpty() ? unread() : new SoilTemperature(within, sum / within.size());
  }

  private SoilTemperature(List<SoilReading> readings, double shift) {
    this.readings = List.copyOf(readings);
    this.shift = shift;
  }

  /** By slot, °C. Black plastic and the like add to it; the caller adds what they add. */
  public double[] estimate(double[] lows, double[] highs) {
    double[] soil = new double[lows.length];
    for (int slot = 0; slot < soil.length; slot++) {
      soil[slot] = ofAir(lows, highs, slot) + shiftAt(slot);
    }
    return soil;
  }

  /** By the air alone, °C. */
  static double ofAir(double[] lows, double[] highs, int slot) {
    double sum = 0;
    int weights = 0;
    for (int ago = 0; ago < DAYS && ago <= slot; ago++) {
      int weight = DAYS - ago;
      sum += weight * (lows[slot - ago] + highs[slot - ago]) / 2;
      weights += weight;
    }
    return sum / weights;
  }

  /** What the readings add on a slot: all within ten days of one, nothing sixty days from any. */
  double shiftAt(int slot) {
    if (readings.isEmpty()) {
      return 0;
    }
    int nearest =
        readings.stream().mapToInt(r -> Math.abs(r.slot() - slot)).min().orElse(NONE_BEYOND);
    double share = (double) (NONE_BEYOND - nearest) / (NONE_BEYOND - FULL_WITHIN);
    return shift * Math.min(1, Math.max(0, share));
  }

  /** What the readings differ from the estimate by, °C; 0 without readings. */
  public double shift() {
    return shift;
  }

  /** Give or take, °C. */
  public double width() {
    return readings.isEmpty() ? WIDTH : WIDTH_WITH_READINGS;
  }

  public Reason reason(Units units) {
    String says =
        "Soil temperature is an estimate from the air of the last eleven days, give or take "
            + units.difference(width())
            + ".";
    List<Reason> from = new ArrayList<>();
    from.add(
        Reason.method("After Zheng, Hunt and Running 1993, Climate Research 2:183 (from memory)."));
    if (!readings.isEmpty()) {
      String readingsSay =
          String.format(
              Locale.ROOT,
              "Your own %s moved it by %+.1f %s near %s.",
              readings.size() == 1 ? "reading" : readings.size() + " readings",
              units.inDegrees(shift),
              units.degree(),
              readings.size() == 1 ? "its day" : "their days");
      from.add(new Reason(readingsSay, Basis.RECORD, Optional.empty(), List.of()));
    }
    return Reason.derived(says, from);
  }
}
