package slipday.climate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slipday.measure.Units;

/** Finds the dates of frost in the seasons of a record. */
public final class FrostDates {
  /** A spread needs three dates. */
  static final int FEWEST_DATES = 3;

  private FrostDates() {}

  /** The last slot before midsummer with a low at or below the threshold. */
  public static OptionalInt lastSpring(WeatherYear year, FrostThreshold threshold) {
    for (int slot = year.axis().midsummer() - 1; slot >= 0; slot--) {
      if (threshold.isReachedBy(year.measuredLows()[slot])) {
        return OptionalInt.of(slot);
      }
    }
    return OptionalInt.empty();
  }

  /** The first slot from midsummer on with a low at or below the threshold. */
  public static OptionalInt firstAutumn(WeatherYear year, FrostThreshold threshold) {
    for (int slot = year.axis().midsummer(); slot < SeasonAxis.SLOTS; slot++) {
      if (threshold.isReachedBy(year.measuredLows()[slot])) {
        return OptionalInt.of(slot);
      }
    }
    return OptionalInt.empty();
  }

  public static OptionalInt of(WeatherYear year, FrostSide side, FrostThreshold threshold) {
    return side == FrostSide.SPRING ? lastSpring(year, threshold) : firstAutumn(year, threshold);
  }

  /**
   * The law of the usable seasons, on the axis of the season planned. Empty where there are too few
   * seasons to count and too few dates, fewer than three, to fit a curve to.
   */
  public static Optional<FrostLaw> law(
      WeatherYears years, SeasonAxis axis, FrostSide side, FrostThreshold threshold, Units units) {
    List<RecordedFrost.Dated> seasons =
        years.usable().stream()
            .map(y -> new RecordedFrost.Dated(y.label(), of(y, side, threshold)))
            .toList();
    int[] dates = seasons.stream().flatMapToInt(s -> s.slot().stream()).sorted().toArray();
    boolean tooFew = seasons.size() < RecordedFrost.ENOUGH_SEASONS && dates.length < FEWEST_DATES;
    return tooFew
        ? Optional.empty()
        : Optional.of(
            new RecordedFrost(side, threshold, axis, years.record().name(), seasons, dates, units));
  }

  /**
   * Hyndman and Fan 1996, definition 7, of at least one value: linear between the order statistics.
   */
  static double quantile(int[] sorted, double p) {
    double at = (sorted.length - 1) * p;
    int below = (int) Math.floor(at);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
  }
}
