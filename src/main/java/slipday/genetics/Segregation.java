package slipday.genetics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.apache.commons.numbers.gamma.LogGamma;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Whether counts of a segregation fit a ratio.
 *
 * @param chiSquare Σ (counted − expected)² ÷ expected (Pearson 1900, Philosophical Magazine 50:157,
 *     from memory)
 * @param degreesOfFreedom classes less one
 * @param probability of counts at least as far off, if the ratio holds
 * @param method how the probability was found
 */
public record Segregation(
    double chiSquare, int degreesOfFreedom, double probability, Method method) {

  /** How the probability was found. */
  public enum Method {
    /** From the chi-square distribution: every class is expected to hold five or more. */
    CHI_SQUARE,
    /** The probabilities of all outcomes no likelier than what was counted, added up. */
    EXACT,
    /** From the chi-square distribution though a class is expected to hold fewer than five. */
    CHI_SQUARE_ROUGH
  }

  private static final double ENOUGH_EXPECTED = 5;
  private static final double MOST_OUTCOMES = 2e6;
  private static final double HAIR = 1e-7;

  /**
   * @param counts plants counted in each class, 0 or more, at least one in all
   * @param ratio the shares expected, in any unit: 9, 3, 3, 1; each above 0
   */
  public static Segregation test(List<Integer> counts, List<Double> ratio) {
    int total = counts.stream().mapToInt(Integer::intValue).sum();
    double parts = ratio.stream().mapToDouble(Double::doubleValue).sum();
    boolean sound =
        counts.size() == ratio.size()
            && counts.size() > 1
            && total > 0
            && counts.stream().allMatch(c -> c >= 0)
            && ratio.stream().allMatch(r -> r > 0);
    if (!sound) {
      throw new IllegalArgumentException(counts + " against " + ratio);
    }
    int[] counted = counts.stream().mapToInt(Integer::intValue).toArray();
    double[] shares = ratio.stream().mapToDouble(r -> r / parts).toArray();
    double chiSquare = chiSquare(counted, shares, total);
    int freedom = counted.length - 1;
    if (Arrays.stream(shares).allMatch(s -> s * total >= ENOUGH_EXPECTED)) {
      return new Segregation(chiSquare, freedom, tail(chiSquare, freedom), Method.CHI_SQUARE);
    }
    if (outcomes(total, counted.length) > MOST_OUTCOMES) {
      return new Segregation(chiSquare, freedom, tail(chiSquare, freedom), Method.CHI_SQUARE_ROUGH);
    }
    double exact = new Multinomial(counted, shares, total).noLikelier();
    return new Segregation(chiSquare, freedom, exact, Method.EXACT);
  }

  /**
   * The probability of the worst that so many plants can show: where it is not small, no outcome of
   * so few can contradict the ratio.
   */
  public static double leastProbability(int plants, List<Double> ratio) {
    int rarest = ratio.indexOf(ratio.stream().min(Double::compare).orElseThrow());
    List<Integer> worst = new ArrayList<>(Collections.nCopies(ratio.size(), 0));
    // A multinomial's logarithm is concave over its outcomes, so the least lies in a corner.
    worst.set(rarest, plants);
    return test(worst, ratio).probability();
  }

  private static double chiSquare(int[] counted, double[] shares, int total) {
    double sum = 0;
    for (int i = 0; i < counted.length; i++) {
      double expected = shares[i] * total;
      sum += (counted[i] - expected) * (counted[i] - expected) / expected;
    }
    return sum;
  }

  private static double tail(double chiSquare, int freedom) {
    return ChiSquaredDistribution.of(freedom).survivalProbability(chiSquare);
  }

  /** The ways to share n among k classes: (n + k − 1) over (k − 1). */
  private static double outcomes(int total, int classes) {
    double ways = 1;
    for (int i = 1; i < classes; i++) {
      ways *= (total + i) / (double) i;
    }
    return ways;
  }

  /** Walks through every outcome; each class's part of the logarithm is looked up. */
  private static final class Multinomial {
    private final double[][] part;
    private final double bound;
    private final double logTotal;

    Multinomial(int[] counted, double[] shares, int total) {
      logTotal = LogGamma.value(total + 1.0);
      part = new double[shares.length][total + 1];
      double observed = logTotal;
      for (int i = 0; i < shares.length; i++) {
        for (int n = 0; n <= total; n++) {
          part[i][n] = n * Math.log(shares[i]) - LogGamma.value(n + 1.0);
        }
        observed += part[i][counted[i]];
      }
      bound = observed + HAIR;
    }

    double noLikelier() {
      return Math.min(1, walk(0, part[0].length - 1, logTotal));
    }

    private double walk(int kind, int left, double log) {
      if (kind == part.length - 1) {
        double outcome = log + part[kind][left];
        return outcome <= bound ? Math.exp(outcome) : 0;
      }
      double sum = 0;
      for (int n = 0; n <= left; n++) {
        sum += walk(kind + 1, left - n, log + part[kind][n]);
      }
      return sum;
    }
  }
}
