package slipday.climate;

import org.apache.commons.statistics.distribution.NormalDistribution;
import slipday.measure.Reason;

/** Frost as the gardener states it, a middle date and a 1-in-10 date: the normal that fits both. */
public final class StatedFrost implements FrostLaw {
  /** The standard normal's 90 % point. */
  private static final double ONE_IN_TEN = 1.2815515655;

  private final FrostSide side;
  private final SeasonAxis axis;
  private final NormalDistribution law;
  private final Reason reason;

  private StatedFrost(FrostSide side, SeasonAxis axis, NormalDistribution law, Reason reason) {
    this.side = side;
    this.axis = axis;
    this.law = law;
    this.reason = reason;
  }

  /** Whether the 1-in-10 slot is on the proper side of the middle one. */
  public static boolean fits(FrostSide side, int median, int oneInTen) {
    return side == FrostSide.SPRING ? oneInTen > median : oneInTen < median;
  }

  /**
   * @param oneInTen the slot after which (in spring) or before which (in autumn) one year in ten
   *     has a frost
   * @param reason the gardener's line
   * @throws IllegalArgumentException unless {@link #fits}
   */
  public static StatedFrost of(
      FrostSide side, SeasonAxis axis, int median, int oneInTen, Reason reason) {
    if (!fits(side, median, oneInTen)) {
      throw new IllegalArgumentException(side + " " + median + " and " + oneInTen);
    }
    double spread = Math.abs(oneInTen - median) / ONE_IN_TEN;
    return new StatedFrost(side, axis, NormalDistribution.of(median, spread), reason);
  }

  @Override
  public FrostSide side() {
    return side;
  }

  /** A gardener's frost is the one that takes tender leaves. */
  @Override
  public FrostThreshold threshold() {
    return FrostThreshold.TENDER;
  }

  @Override
  public SeasonAxis axis() {
    return axis;
  }

  @Override
  public double chanceAfter(double slot) {
    return law.survivalProbability(slot);
  }

  @Override
  public double chanceBefore(double slot) {
    return law.cumulativeProbability(slot);
  }

  @Override
  public double chanceNone() {
    return 0;
  }

  @Override
  public double quantile(double p) {
    return law.inverseCumulativeProbability(p);
  }

  /** Standard deviation of the dates, days. */
  public double spread() {
    return law.getStandardDeviation();
  }

  @Override
  public String describe() {
    return "The "
        + side.words()
        + " frost is about "
        + axis.dayText(median())
        + ", "
        + oneInTenText()
        + ", as the plan states.";
  }

  @Override
  public Reason reason() {
    return Reason.derived(
        describe(),
        reason,
        Reason.method("The chance between is the normal curve through the two dates stated."));
  }
}
