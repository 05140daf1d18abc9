package slipday.genetics;

import org.apache.commons.numbers.gamma.LogBeta;

/**
 * How many of some trials succeed when the rate of success itself is known only as Beta(a, b): the
 * trials share the one unknown rate, so they are not independent (Skellam 1948, Journal of the
 * Royal Statistical Society B 10:257, from memory).
 *
 * @param trials n, 0 or more
 * @param a weight of success, above 0
 * @param b weight of failure, above 0
 */
public record BetaBinomial(int trials, double a, double b) {
  public BetaBinomial {
    if (trials < 0 || !(a > 0) || !(b > 0) || Double.isInfinite(a) || Double.isInfinite(b)) {
      throw new IllegalArgumentException("BetaBinomial(" + trials + ", " + a + ", " + b + ")");
    }
  }

  /** The chance of exactly k successes. */
  public double probability(int k) {
    if (k < 0 || k > trials) {
      return 0;
    }
    double logChoose = -Math.log1p(trials) - LogBeta.value(k + 1.0, trials - k + 1.0);
    return Math.exp(logChoose + LogBeta.value(k + a, trials - k + b) - LogBeta.value(a, b));
  }

  /** The chance of k successes or more. */
  public double atLeast(int k) {
    if (k <= 0) {
      return 1;
    }
    if (k > trials) {
      return 0;
    }
    // The shorter tail is summed.
    return k <= trials - k ? Math.max(0, 1 - fewerThan(k)) : sum(k, trials + 1);
  }

  /** The chance of fewer than k successes. */
  public double fewerThan(int k) {
    return k > trials ? 1 : sum(0, k);
  }

  /**
   * The chance of a count from {@code from} to before {@code to}: each term from the one before.
   */
  private double sum(int from, int to) {
    if (from >= to) {
      return 0;
    }
    double log = Math.log(probability(from));
    if (Double.isInfinite(log)) {
      return sumOneByOne(from, to);
    }
    double sum = 0;
    for (int k = from; k < to; k++) {
      sum += Math.exp(log);
      log += Math.log((trials - k) * (k + a)) - Math.log((k + 1.0) * (trials - k - 1 + b));
    }
    return Math.min(1, sum);
  }

  /** Where the first term is too small for a double, the later ones may not be. */
  private double sumOneByOne(int from, int to) {
    double sum = 0;
    for (int k = from; k < to; k++) {
      sum += probability(k);
    }
    return Math.min(1, sum);
  }
}
