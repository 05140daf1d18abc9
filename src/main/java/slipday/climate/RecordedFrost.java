package slipday.climate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import org.apache.commons.statistics.distribution.NormalDistribution;
import slipday.measure.Reason;
import slipday.measure.Units;

/**
 * Frost as a weather record has it, a date a season or none. From fifteen seasons on the chances
 * are counted; with fewer, a 1-in-10 date can't be read off, and they come from a fitted normal.
 */
public final class RecordedFrost implements FrostLaw {
  /** Seasons it takes to read off a 1-in-10 date. */
  public static final int ENOUGH_SEASONS = 15;

  /** Dates are known to the day: the spread of rounding, 1/√12 days. */
  private static final double LEAST_SPREAD = 0.2887;

  /** One season's date; empty where it had no such frost. */
  public record Dated(String season, OptionalInt slot) {}

  private final FrostSide side;
  private final FrostThreshold threshold;
  private final SeasonAxis axis;
  private final String recordName;
  private final List<Dated> seasons;
  private final int[] dates;
  private final Optional<NormalDistribution> normal;
  private final Units units;

  /**
   * @param dates the slots of the seasons that had one, sorted; at least three, unless there are
   *     seasons enough to count
   */
  RecordedFrost(
      FrostSide side,
      FrostThreshold threshold,
      SeasonAxis axis,
      String recordName,
      List<Dated> seasons,
      int[] dates,
      Units units) {
    this.side = side;
    this.threshold = threshold;
    this.axis = axis;
    this.recordName = recordName;
    this.seasons = List.copyOf(seasons);
    this.dates = dates.clone();
    this.normal = fitted(dates);
    this.units = units;
  }

  private static Optional<NormalDistribution> fitted(int[] dates) {
    if (dates.length < FrostDates.FEWEST_DATES) {
      return Optional.empty();
    }
    double mean = 0;
    for (int date : dates) {
      mean += (double) date / dates.length;
    }
    double squares = 0;
    for (int date : dates) {
      squares += (date - mean) * (date - mean);
    }
    double spread = Math.sqrt(squares / (dates.length - 1));
    return Optional.of(NormalDistribution.of(mean, Math.max(spread, LEAST_SPREAD)));
  }

  @Override
  public FrostSide side() {
    return side;
  }

  @Override
  public FrostThreshold threshold() {
    return threshold;
  }

  @Override
  public SeasonAxis axis() {
    return axis;
  }

  /** Every season used, in order. */
  public List<Dated> seasons() {
    return seasons;
  }

  /** Whether there are seasons enough to count the chances instead of fitting a curve. */
  public boolean isCounted() {
    return seasons.size() >= ENOUGH_SEASONS;
  }

  /** The normal with the mean and standard deviation of the dates; empty below three dates. */
  public Optional<NormalDistribution> normal() {
    return normal;
  }

  @Override
  public double chanceAfter(double slot) {
    return isCounted()
        ? share(d -> d > slot)
        : normal.orElseThrow().survivalProbability(slot) * (1 - chanceNone());
  }

  @Override
  public double chanceBefore(double slot) {
    return isCounted()
        ? share(d -> d < slot)
        : normal.orElseThrow().cumulativeProbability(slot) * (1 - chanceNone());
  }

  private double share(IntPredicate which) {
    int found = 0;
    for (int date : dates) {
      if (which.test(date)) {
        found++;
      }
    }
    return (double) found / seasons.size();
  }

  @Override
  public double chanceNone() {
    return 1 - (double) dates.length / seasons.size();
  }

  /** The sample quantile where the chances are counted, else the normal's. */
  @Override
  public double quantile(double p) {
    return isCounted() ? sampleQuantile(p) : normalQuantile(p);
  }

  /** Hyndman and Fan 1996, definition 7 (R's default). */
  public double sampleQuantile(double p) {
    return FrostDates.quantile(dates, p);
  }

  /** The quantile of the normal with the dates' mean and standard deviation. */
  public double normalQuantile(double p) {
    return normal.orElseThrow().inverseCumulativeProbability(p);
  }

  @Override
  public String describe() {
    if (dates.length == 0) {
      return "None of "
          + seasons.size()
          + " seasons of `"
          + recordName
          + "` had a "
          + side.words()
          + " "
          + threshold.words(units)
          + ".";
    }
    return "The "
        + side.words()
        + " "
        + threshold.words(units)
        + " is about "
        + axis.dayText(median())
        + ", "
        + oneInTenText()
        + ", from "
        + seasons.size()
        + (seasons.size() == 1 ? " season" : " seasons")
        + " of `"
        + recordName
        + "`.";
  }

  @Override
  public Reason reason() {
    String years =
        "Seasons of `"
            + recordName
            + "` used: "
            + seasons.get(0).season()
            + " to "
            + seasons.get(seasons.size() - 1).season()
            + ", "
            + seasons.size()
            + "; without such a frost: "
            + (seasons.size() - dates.length)
            + ".";
    String method =
        isCounted()
            ? "The chances are counted over the seasons; quantiles after Hyndman and Fan 1996, type 7."
            : "Fewer than 15 seasons: no 1-in-10 date can be read off, so a normal curve is fitted"
                + " to the few there are.";
    return Reason.derived(describe(), Reason.weather(years), Reason.method(method));
  }
}
