package slipday.genetics;

import org.apache.commons.numbers.gamma.LogBeta;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How hard a choice is and what it can bring.
 *
 * <p>D. S. Falconer and T. F. C. Mackay 1996, Introduction to Quantitative Genetics, 4th edition,
 * chapters 8, 11 and 15 (from memory).
 */
public final class Selection {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** What lies beyond these tails of the bound weighs nothing in a double. */
  private static final double TAIL = 1e-17;

  private static final int STEPS = 1_000;

  private Selection() {}

  /**
   * Intensity of selection, φ(x) ÷ α: how many standard deviations the best α of an endless normal
   * population lie above its mean.
   *
   * @param share α, above 0 to 1
   */
  public static double intensity(double share) {
    mustBeShare(share, "share chosen");
    if (share == 0) {
      throw new IllegalArgumentException("nothing chosen");
    }
    return NORMAL.density(NORMAL.inverseSurvivalProbability(share)) / share;
  }

  /**
   * Intensity of the best k of n: the mean of the k largest of n normal order statistics.
   *
   * <p>One of the n is among the best k if fewer than k of the others surpass it; integrated by
   * parts that is (n ÷ k)·E φ(Φ⁻¹(U)) with U from Beta(n − k, k).
   *
   * @param chosen k, from 1 to n
   * @param of n
   */
  public static double intensity(int chosen, int of) {
    if (chosen < 1 || chosen > of) {
      throw new IllegalArgumentException("the best " + chosen + " of " + of);
    }
    if (chosen == of) {
      return 0;
    }
    int others = of - chosen;
    double low =
        NORMAL.inverseCumulativeProbability(
            BetaDistribution.of(others, chosen).inverseCumulativeProbability(TAIL));
    double high =
        NORMAL.inverseSurvivalProbability(
            BetaDistribution.of(chosen, others).inverseCumulativeProbability(TAIL));
    double logBeta = LogBeta.value(others, chosen);
    double step = (high - low) / STEPS;
    double sum = 0;
    // The trapezoid rule is all but exact for a smooth bell that is nothing at both ends.
    for (int i = 0; i <= STEPS; i++) {
      double x = low + i * step;
      double logBound =
          (others - 1) * Math.log(NORMAL.cumulativeProbability(x))
              + (chosen - 1) * Math.log(NORMAL.survivalProbability(x))
              - logBeta;
      double density = NORMAL.density(x);
      sum += density * density * Math.exp(logBound);
    }
    return sum * step * of / chosen;
  }

  /**
   * Response R = h²·i·σ in the unit of σ, for one generation.
   *
   * @param heritability h², 0 to 1, of what was chosen by (a fruit, a plant's mean)
   * @param intensity i; the mean of both parents' where they differ, 0 for pollen not chosen
   * @param deviation σ, the standard deviation of what was chosen by, 0 or more
   */
  public static double response(double heritability, double intensity, double deviation) {
    mustBeShare(heritability, "heritability");
    if (!(deviation >= 0)) {
      throw new IllegalArgumentException("a standard deviation of " + deviation);
    }
    return heritability * intensity * deviation;
  }

  /**
   * Additive variance among lines of inbreeding F out of one F2, over the additive variance of the
   * F2: 1 + F.
   */
  public static double varianceAmongLines(double inbreeding) {
    mustBeShare(inbreeding, "inbreeding");
    return 1 + inbreeding;
  }

  /**
   * Additive variance that selfing a plant of inbreeding F sets free within its family, over the
   * additive variance of the F2: (1 − F) ÷ 2.
   */
  public static double varianceWithinFamily(double parentInbreeding) {
    mustBeShare(parentInbreeding, "inbreeding");
    return (1 - parentInbreeding) / 2;
  }

  /**
   * What a difference in a mean of n records says of the breeding value, per unit: n·h² ÷ (1 + (n −
   * 1)·r).
   *
   * @param records n, 1 or more
   * @param heritability h² of one record
   * @param repeatability r, the correlation of two records of one plant, no less than h²
   */
  public static double weightOnMean(int records, double heritability, double repeatability) {
    mustBeShare(heritability, "heritability");
    mustBeShare(repeatability, "repeatability");
    if (records < 1 || repeatability < heritability) {
      throw new IllegalArgumentException(
          records + " records, h2 " + heritability + ", repeatability " + repeatability);
    }
    return records * heritability / (1 + (records - 1) * repeatability);
  }

  private static void mustBeShare(double share, String what) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a " + what + " of " + share);
    }
  }
}
