package slipday.genetics;

import java.util.List;
import java.util.OptionalInt;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How many plants it takes to tell one ratio from another.
 *
 * <p>Whichever ratio makes the counts likelier is taken for the true one. The logarithm of the
 * likelihood ratio is near normal, with means the two divergences of S. Kullback and R. A. Leibler
 * 1951, Annals of Mathematical Statistics 22:79 (from memory); for two classes this is the usual
 * formula n = (z·(√(p·q) + √(p′·q′)) ÷ (p − p′))².
 */
public final class Parting {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final double SAME = 1e-12;

  private Parting() {}

  /**
   * The least number of plants with which either is taken for the other with no more than this
   * chance.
   *
   * @param one shares of the classes, in any unit, each 0 or more
   * @param other shares of the same classes
   * @param wrong the chance of error, between 0 and ½
   * @return empty where the two are the same, or it takes more than {@link Odds#MOST}
   */
  public static OptionalInt plants(List<Integer> one, List<Integer> other, double wrong) {
    double[] p = shares(one);
    double[] q = shares(other);
    if (p.length != q.length || !(wrong > 0 && wrong < 0.5)) {
      throw new IllegalArgumentException(one + " from " + other + " with " + wrong);
    }
    double proof = Math.max(missing(p, q), missing(q, p));
    double n = proof > 0 ? Math.log(wrong) / Math.log1p(-proof) : normal(p, q, wrong);
    return n <= Odds.MOST ? OptionalInt.of((int) Math.ceil(n - SAME)) : OptionalInt.empty();
  }

  private static double normal(double[] p, double[] q, double wrong) {
    double z = NORMAL.inverseSurvivalProbability(wrong);
    double apart = mean(p, q) + mean(q, p);
    if (apart < SAME) {
      return Double.POSITIVE_INFINITY;
    }
    double n = z * (deviation(p, q) + deviation(q, p)) / apart;
    return n * n;
  }

  /** The share of plants in classes that the other ratio does not know: one of them proves it. */
  private static double missing(double[] p, double[] q) {
    double sum = 0;
    for (int i = 0; i < p.length; i++) {
      sum += q[i] == 0 ? p[i] : 0;
    }
    return Math.min(1 - SAME, sum);
  }

  private static double mean(double[] p, double[] q) {
    double sum = 0;
    for (int i = 0; i < p.length; i++) {
      sum += p[i] == 0 ? 0 : p[i] * Math.log(p[i] / q[i]);
    }
    return sum;
  }

  private static double deviation(double[] p, double[] q) {
    double squares = 0;
    for (int i = 0; i < p.length; i++) {
      double log = p[i] == 0 ? 0 : Math.log(p[i] / q[i]);
      squares += p[i] * log * log;
    }
    double mean = mean(p, q);
    return Math.sqrt(Math.max(0, squares - mean * mean));
  }

  private static double[] shares(List<Integer> parts) {
    double all = parts.stream().mapToInt(Integer::intValue).sum();
    return parts.stream().mapToDouble(part -> part / all).toArray();
  }
}
