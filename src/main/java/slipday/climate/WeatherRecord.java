package slipday.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Daily lows and highs of one place in °C, every day from the first to the last known one; a value
 * that is not known is NaN. Immutable.
 */
public final class WeatherRecord {
  /** Days in a row on which the low, the high or both are missing. */
  public record Gap(LocalDate first, LocalDate last) {
    public int days() {
      return (int) (last.toEpochDay() - first.toEpochDay()) + 1;
    }
  }

  private final String name;
  private final String layout;
  private final long firstDay;
  private final double[] lows;
  private final double[] highs;
  private final List<Gap> gaps;
  private final int droppedByQuality;

  /**
   * @param layout what the file was read as, in words
   * @param lows °C, one a day from {@code first}; NaN where missing
   * @param droppedByQuality values left out because the station's own checks flagged them
   */
  WeatherRecord(
      String name,
      String layout,
      LocalDate first,
      double[] lows,
      double[] highs,
      int droppedByQuality) {
    this(name, layout, first.toEpochDay(), lows.clone(), highs.clone(), droppedByQuality, null);
  }

  private WeatherRecord(
      String name,
      String layout,
      long firstDay,
      double[] lows,
      double[] highs,
      int droppedByQuality,
      @Nullable List<Gap> gaps) {
    if (lows.length != highs.length || lows.length == 0) {
      throw new IllegalArgumentException(lows.length + " lows and " + highs.length + " highs");
    }
    this.name = name;
    this.layout = layout;
    this.firstDay = firstDay;
    this.lows = lows;
    this.highs = highs;
    this.gaps = gaps == null ? gaps(firstDay, lows, highs) : gaps;
    this.droppedByQuality = droppedByQuality;
  }

  /** A record of one's own making, such as a test's; NaN where missing. */
  public static WeatherRecord of(String name, LocalDate first, double[] lows, double[] highs) {
    return new WeatherRecord(name, "days in memory", first, lows, highs, 0);
  }

  public String name() {
    return name;
  }

  public String layout() {
    return layout;
  }

  public LocalDate first() {
    return LocalDate.ofEpochDay(firstDay);
  }

  public LocalDate last() {
    return LocalDate.ofEpochDay(firstDay + lows.length - 1);
  }

  /** Days from the first to the last, known or not. */
  public int days() {
    return lows.length;
  }

  /** The low of a day in °C; NaN where it is missing or outside the record. */
  public double low(LocalDate date) {
    return low(date.toEpochDay());
  }

  /** The high of a day in °C; NaN where it is missing or outside the record. */
  public double high(LocalDate date) {
    return high(date.toEpochDay());
  }

  double low(long epochDay) {
    return at(lows, epochDay);
  }

  double high(long epochDay) {
    return at(highs, epochDay);
  }

  private double at(double[] values, long epochDay) {
    long index = epochDay - firstDay;
    return index < 0 || index >= values.length ? Double.NaN : values[(int) index];
  }

  /** The highest high in °C; −∞ where no high is known. */
  double hottest() {
    double hottest = Double.NEGATIVE_INFINITY;
    for (double high : highs) {
      if (high > hottest) { // never of a missing one
        hottest = high;
      }
    }
    return hottest;
  }

  public int droppedByQuality() {
    return droppedByQuality;
  }

  /** Every run of days without a low or without a high, in order. */
  public List<Gap> gaps() {
    return gaps;
  }

  private static List<Gap> gaps(long firstDay, double[] lows, double[] highs) {
    List<Gap> gaps = new ArrayList<>();
    int start = -1;
    for (int i = 0; i <= lows.length; i++) {
      boolean missing = i < lows.length && (Double.isNaN(lows[i]) || Double.isNaN(highs[i]));
      if (missing && start < 0) {
        start = i;
      } else if (!missing && start >= 0) {
        gaps.add(
            new Gap(
                LocalDate.ofEpochDay(firstDay + start), LocalDate.ofEpochDay(firstDay + i - 1)));
        start = -1;
      }
    }
    return List.copyOf(gaps);
  }

  /** Days without a low or without a high. */
  public int missingDays() {
    int days = 0;
    for (Gap gap : gaps) {
      days += gap.days();
    }
    return days;
  }

  /** The record of a place that is warmer by so many °C, day and night; negative for colder. */
  public WeatherRecord shifted(double celsius) {
    return shifted(celsius, celsius);
  }

  /**
   * The record of a place whose nights and days differ from the station's by these °C. A frost
   * pocket has colder nights only. A low never rises above its high: it stops there.
   */
  public WeatherRecord shifted(double nights, double days) {
    double[] low = new double[lows.length];
    double[] high = new double[lows.length];
    for (int i = 0; i < low.length; i++) {
      double shifted = lows[i] + nights;
      high[i] = highs[i] + days;
      low[i] = shifted > high[i] ? high[i] : shifted;
    }
    return new WeatherRecord(name, layout, firstDay, low, high, droppedByQuality, gaps);
  }
}
