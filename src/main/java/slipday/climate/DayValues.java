package slipday.climate;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The values of a file as they are read, each with its place; then one record of days. */
final class DayValues {
  private static final double COLDEST = -90;
  private static final double HOTTEST = 60;
  private static final double SAME = 1e-6;

  private final RowFindings findings;
  private int count;
  private int first = Integer.MAX_VALUE;
  private int last = Integer.MIN_VALUE;
  private int[] days = new int[1024];
  private boolean[] isHigh = new boolean[1024];
  private double[] values = new double[1024];
  private int[] starts = new int[1024];
  private int[] ends = new int[1024];
  private int droppedByQuality;

  DayValues(RowFindings findings) {
    this.findings = findings;
  }

  void dropForQuality() {
    droppedByQuality++;
  }

  /** A value in °C written at a place; one that no place on earth has is told and left out. */
  void add(int epochDay, boolean high, double celsius, int start, int end) {
    if (!(celsius >= COLDEST && celsius <= HOTTEST)) {
      findings.error(
          "weather-impossible",
          start,
          end,
          String.format(
              Locale.ROOT,
              "The %s of %s, %.1f °C, is one that no place on earth has.",
              word(high),
              LocalDate.ofEpochDay(epochDay),
              celsius),
          "The day's value is left out; look at the figure and at the column's unit.");
      return;
    }
    first = Math.min(first, epochDay);
    last = Math.max(last, epochDay);
    if (count == days.length) {
      grow();
    }
    days[count] = epochDay;
    isHigh[count] = high;
    values[count] = celsius;
    starts[count] = start;
    ends[count++] = end;
  }

  private void grow() {
    int size = count * 2;
    days = Arrays.copyOf(days, size);
    isHigh = Arrays.copyOf(isHigh, size);
    values = Arrays.copyOf(values, size);
    starts = Arrays.copyOf(starts, size);
    ends = Arrays.copyOf(ends, size);
  }

  Optional<WeatherRecord> toRecord(String name, String layout) {
    if (count == 0) {
      return Optional.empty();
    }
    int[] lowAt = firstOfEachDay(false);
    int[] highAt = firstOfEachDay(true);
    double[] lows = new double[lowAt.length];
    double[] highs = new double[lowAt.length];
    boolean any = false;
    for (int i = 0; i < lowAt.length; i++) {
      dropIfLowAboveHigh(i, lowAt, highAt);
      lows[i] = lowAt[i] < 0 ? Double.NaN : values[lowAt[i]];
      highs[i] = highAt[i] < 0 ? Double.NaN : values[highAt[i]];
      any |= lowAt[i] >= 0 && highAt[i] >= 0;
    }
    return any
        ? Optional.of(
            new WeatherRecord(
                name, layout, LocalDate.ofEpochDay(first), lows, highs, droppedByQuality))
        : Optional.empty();
  }

  /** For each day the index of its value, −1 where there is none. The first of a repeat stays. */
  private int[] firstOfEachDay(boolean high) {
    int[] at = new int[last - first + 1];
    Arrays.fill(at, -1);
    for (int i = 0; i < count; i++) {
      if (isHigh[i] == high) {
        int slot = days[i] - first;
        if (at[slot] < 0) {
          at[slot] = i;
        } else if (Math.abs(values[at[slot]] - values[i]) > SAME) {
          tellRepeat(at[slot], i);
        }
      }
    }
    return at;
  }

  private void tellRepeat(int kept, int repeat) {
    findings.error(
        "weather-repeated",
        starts[repeat],
        ends[repeat],
        String.format(
            Locale.ROOT,
            "%s has two different %ss, %.1f and %.1f °C.",
            LocalDate.ofEpochDay(days[repeat]),
            word(isHigh[repeat]),
            values[kept],
            values[repeat]),
        f ->
            f.also(findings.span(starts[kept], ends[kept]), "the first, which is kept")
                .withHelp("Keep one line for the day."));
  }

  private void dropIfLowAboveHigh(int day, int[] lowAt, int[] highAt) {
    int low = lowAt[day];
    int high = highAt[day];
    if (low < 0 || high < 0 || values[low] <= values[high] + SAME) {
      return;
    }
    findings.error(
        "weather-low-above-high",
        starts[low],
        ends[low],
        String.format(
            Locale.ROOT,
            "The low of %s, %.1f °C, is above its high, %.1f °C.",
            LocalDate.ofEpochDay(days[low]),
            values[low],
            values[high]),
        f ->
            f.also(findings.span(starts[high], ends[high]), "the high")
                .withHelp("The day is left out; correct it, or empty both cells."));
    lowAt[day] = -1;
    highAt[day] = -1;
  }

  private static String word(boolean high) {
    return high ? "high" : "low";
  }
}
