package slipday.climate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The seasons of a weather record. A season with more than ten missing days before or after
 * midsummer, from March to November (September to May in the south), is left out (the rule of the
 * Utah Climate Center for frost dates).
 */
public final class WeatherYears {
  /** More missing days than this on one side of midsummer make a season unusable. */
  public static final int MOST_MISSING = 10;

  private final WeatherRecord record;
  private final List<WeatherYear> all;
  private final List<WeatherYear> usable;
  private final double[] meanLows;
  private final double[] meanHighs;

  private WeatherYears(
      WeatherRecord record, List<WeatherYear> all, double[] meanLows, double[] meanHighs) {
    this.record = record;
    this.all = List.copyOf(all);
    this.usable = all.stream().filter(WeatherYear::isUsable).toList();
    this.meanLows = meanLows;
    this.meanHighs = meanHighs;
  }

  public static WeatherYears of(WeatherRecord record, Hemisphere hemisphere) {
    int first = SeasonAxis.holding(hemisphere, record.first()).year();
    int last = SeasonAxis.holding(hemisphere, record.last()).year();
    List<Measured> measured = new ArrayList<>();
    for (int year = first; year <= last; year++) {
      measured.add(new Measured(record, new SeasonAxis(hemisphere, year)));
    }
    double[] lows = mean(measured.stream().map(m -> m.lows).toList());
    double[] highs = mean(measured.stream().map(m -> m.highs).toList());
    List<WeatherYear> all = measured.stream().map(m -> year(m, lows, highs)).toList();
    return new WeatherYears(record, all, lows, highs);
  }

  private static final class Measured {
    private final SeasonAxis axis;
    private final double[] lows = new double[SeasonAxis.SLOTS];
    private final double[] highs = new double[SeasonAxis.SLOTS];

    Measured(WeatherRecord record, SeasonAxis axis) {
      this.axis = axis;
      long day = axis.dateOf(0).toEpochDay();
      int beforeLeapDay = axis.slotOf(2, 28);
      boolean leap = axis.dateOf(beforeLeapDay).isLeapYear();
      for (int slot = 0; slot < SeasonAxis.SLOTS; slot++) {
        lows[slot] = record.low(day);
        highs[slot] = record.high(day);
        day++;
        if (leap && slot == beforeLeapDay) {
          lows[slot] = lower(lows[slot], record.low(day));
          highs[slot] = known(highs[slot], record.high(day));
          day++;
        }
      }
    }

    private static double lower(double a, double b) {
      return Double.isNaN(a) || b < a ? b : a;
    }

    private static double known(double a, double b) {
      return Double.isNaN(a) ? b : a;
    }

    int missing(int from, int to) {
      int missing = 0;
      for (int slot = from; slot <= to; slot++) {
        if (Double.isNaN(lows[slot]) || Double.isNaN(highs[slot])) {
          missing++;
        }
      }
      return missing;
    }
  }

  private static WeatherYear year(Measured m, double[] meanLows, double[] meanHighs) {
    Optional<String> leftOut = leftOut(m);
    if (leftOut.isPresent()) {
      return new WeatherYear(m.axis, m.lows, m.lows, m.highs, 0, leftOut);
    }
    double[] lows = MissingDays.filled(m.lows, meanLows);
    double[] highs = MissingDays.filled(m.highs, meanHighs);
    for (int slot = 0; slot < lows.length; slot++) {
      // A measured low beside a filled high: the day has at least its own low.
      highs[slot] = Math.max(lows[slot], highs[slot]);
    }
    int filled = m.missing(0, SeasonAxis.SLOTS - 1);
    return new WeatherYear(m.axis, m.lows, lows, highs, filled, Optional.empty());
  }

  private static Optional<String> leftOut(Measured m) {
    SeasonAxis axis = m.axis;
    return leftOut(m, axis.springWatchFrom(), axis.midsummer() - 1)
        .or(() -> leftOut(m, axis.midsummer(), axis.autumnWatchTo()));
  }

  private static Optional<String> leftOut(Measured m, int from, int to) {
    int missing = m.missing(from, to);
    return missing <= MOST_MISSING
        ? Optional.empty()
        : Optional.of(
            m.axis.label()
                + " is left out: "
                + missing
                + " days are missing from "
                + m.axis.dayText(from)
                + " to "
                + m.axis.dayText(to)
                + ".");
  }

  /** The mean of each slot over the seasons that know it; NaN where none does. */
  private static double[] mean(List<double[]> seasons) {
    double[] sum = new double[SeasonAxis.SLOTS];
    int[] known = new int[SeasonAxis.SLOTS];
    for (double[] season : seasons) {
      for (int slot = 0; slot < season.length; slot++) {
        if (!Double.isNaN(season[slot])) {
          sum[slot] += season[slot];
          known[slot]++;
        }
      }
    }
    for (int slot = 0; slot < sum.length; slot++) {
      sum[slot] = known[slot] == 0 ? Double.NaN : sum[slot] / known[slot];
    }
    return sum;
  }

  public WeatherRecord record() {
    return record;
  }

  /** Every season the record touches, in order. */
  public List<WeatherYear> all() {
    return all;
  }

  /** The seasons a planting is walked through. */
  public List<WeatherYear> usable() {
    return usable;
  }

  public List<WeatherYear> leftOut() {
    return all.stream().filter(y -> !y.isUsable()).toList();
  }

  /** Missing days filled in over all usable seasons. */
  public int filledDays() {
    return usable.stream().mapToInt(WeatherYear::filledDays).sum();
  }

  /** Mean low of each slot over all days measured, °C; NaN where no season knows it. */
  public double[] meanLows() {
    return meanLows.clone();
  }

  /** Mean high of each slot over all days measured, °C; NaN where no season knows it. */
  public double[] meanHighs() {
    return meanHighs.clone();
  }

  /** {@code 1996 to 2024}, or the one season there is. */
  public static String span(List<WeatherYear> years) {
    if (years.isEmpty()) {
      return "no season";
    }
    String first = years.get(0).label();
    String last = years.get(years.size() - 1).label();
    return first.equals(last) ? first : first + " to " + last;
  }

  @Override
  public String toString() {
    return record.name() + Arrays.toString(usable.stream().map(WeatherYear::label).toArray());
  }
}
