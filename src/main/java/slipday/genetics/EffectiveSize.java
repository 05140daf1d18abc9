package slipday.genetics;

import java.util.List;

/**
 * The effective size of a population: the number of parents used alike and mated at random that
 * would lose as much diversity (S. Wright 1931, Genetics 16:97, from memory).
 */
public final class EffectiveSize {
  private EffectiveSize() {}

  /**
   * 4·Nm·Nf ÷ (Nm + Nf): for plants that are either male or female, or used as one only.
   *
   * @param males pollen parents, 1 or more
   * @param females seed parents, 1 or more
   */
  public static double separateSexes(int males, int females) {
    if (males < 1 || females < 1) {
      throw new IllegalArgumentException(males + " males, " + females + " females");
    }
    return 4.0 * males * females / ((double) males + females);
  }

  /**
   * 1 ÷ (2·ΔF).
   *
   * @param rate ΔF, the share of the remaining heterozygosity lost in a generation, above 0 to 1
   */
  public static double fromInbreedingRate(double rate) {
    if (!(rate > 0 && rate <= 1)) {
      throw new IllegalArgumentException("a rate of " + rate);
    }
    return 1 / (2 * rate);
  }

  /** ΔF = 1 ÷ (2·Ne). */
  public static double inbreedingRate(double effectiveSize) {
    if (!(effectiveSize >= 0.5)) {
      throw new IllegalArgumentException("an effective size of " + effectiveSize);
    }
    return 1 / (2 * effectiveSize);
  }

  /** Inbreeding that a population of this size has gathered: 1 − (1 − ΔF)^t. */
  public static double inbreedingAfter(int generations, double effectiveSize) {
    if (generations < 0) {
      throw new IllegalArgumentException(generations + " generations");
    }
    return 1 - Math.pow(1 - inbreedingRate(effectiveSize), generations);
  }

  /**
   * The least effective size that keeps so much heterozygosity over so many generations: 1 ÷ (2·(1
   * − kept^(1 ÷ t))).
   *
   * @param kept the share to be left, above 0 and below 1
   * @param generations t, 1 or more
   */
  public static double toKeep(double kept, int generations) {
    if (!(kept > 0 && kept < 1) || generations < 1) {
      throw new IllegalArgumentException(kept + " over " + generations + " generations");
    }
    return 1 / (2 * -Math.expm1(Math.log(kept) / generations));
  }

  /**
   * 1 ÷ Σc²: how many parents used alike would count as much as these.
   *
   * @param shares what each parent gives to the next generation, in any unit (seeds, fruits), each
   *     0 or more, not all 0
   */
  public static double fromShares(List<Double> shares) {
    double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
    if (!(sum > 0) || Double.isInfinite(sum) || shares.stream().anyMatch(share -> share < 0)) {
      throw new IllegalArgumentException("shares of " + shares);
    }
    return 1 / shares.stream().mapToDouble(share -> share / sum * (share / sum)).sum();
  }
}
