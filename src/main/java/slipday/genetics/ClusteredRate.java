package slipday.genetics;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * A rate of success learned from trials in clusters, such as flowers on vines: trials of one
 * cluster are more alike than those of two, so ten on one vine teach less than one on each of ten.
 *
 * <p>Each cluster's own rate is Beta with mean π and intraclass correlation ρ, so its successes are
 * beta-binomial (Skellam 1948, Journal of the Royal Statistical Society B 10:257; Williams 1975,
 * Biometrics 31:949, for litters; both from memory). π is Beta(a, b) beforehand; ρ is one of {@link
 * #CORRELATIONS}, each as likely. Both are summed over on a grid, and the posterior of π is told as
 * the beta distribution of the same mean and variance. Where every cluster has one trial this is
 * the beta prior with the counts added, exactly.
 *
 * @param a weight of success, above 0
 * @param b weight of failure, above 0
 */
public record ClusteredRate(double a, double b) {
  /** How alike trials of one cluster may be; from independent to far more alike than not. */
  static final double[] CORRELATIONS = {0, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5};

  private static final int HALF_STEPS = 400;

  /** Where the weight of a beta density, on the scale of log odds, is far below a double's. */
  private static final double FAR = 40;

  public ClusteredRate {
    if (!(a > 0) || !(b > 0) || Double.isInfinite(a) || Double.isInfinite(b)) {
      throw new IllegalArgumentException("Beta(" + a + ", " + b + ")");
    }
  }

  /** So many successes out of so many trials of one cluster. */
  public record Cluster(int successes, int trials) {
    public Cluster {
      if (successes < 0 || successes > trials) {
        throw new IllegalArgumentException(successes + " of " + trials);
      }
    }
  }

  public double mean() {
    return a / (a + b);
  }

  /** The rate below which it lies with a probability. */
  public double quantile(double probability) {
    return BetaDistribution.of(a, b).inverseCumulativeProbability(probability);
  }

  /** What is known after more trials. */
  public ClusteredRate after(List<Cluster> clusters) {
    if (clusters.stream().allMatch(c -> c.trials() <= 1)) {
      int successes = clusters.stream().mapToInt(Cluster::successes).sum();
      int trials = clusters.stream().mapToInt(Cluster::trials).sum();
      return new ClusteredRate(a + successes, b + trials - successes);
    }
    return summedOver(clusters);
  }

  /** By the trapezoid rule over the log odds of π, where the integrand is smooth and dies off. */
  private ClusteredRate summedOver(List<Cluster> clusters) {
    double reach = FAR / Math.min(a, b) + FAR / 4;
    double[] rates = new double[2 * HALF_STEPS + 1];
    double[] logs = new double[rates.length * CORRELATIONS.length];
    for (int i = 0; i < rates.length; i++) {
      double odds = reach * (i - HALF_STEPS) / HALF_STEPS;
      rates[i] = 1 / (1 + Math.exp(-odds));
      double prior = -a * Math.log1p(Math.exp(-odds)) - b * Math.log1p(Math.exp(odds));
      for (int c = 0; c < CORRELATIONS.length; c++) {
        logs[i * CORRELATIONS.length + c] =
            prior + logLikelihood(clusters, rates[i], 1 / (1 + Math.exp(odds)), CORRELATIONS[c]);
      }
    }
    return moments(rates, logs);
  }

  private static ClusteredRate moments(double[] rates, double[] logs) {
    double most = Arrays.stream(logs).max().orElse(0);
    double weight = 0;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < logs.length; i++) {
      double rate = rates[i / CORRELATIONS.length];
      double w = Math.exp(logs[i] - most);
      weight += w;
      sum += w * rate;
      squares += w * rate * rate;
    }
    double mean = sum / weight;
    double variance = squares / weight - mean * mean;
    double worth = mean * (1 - mean) / variance - 1;
    return new ClusteredRate(mean * worth, (1 - mean) * worth);
  }

  /** Rising factorials of the beta-binomial, both sides times ρ, so that ρ = 0 is the binomial. */
  private static double logLikelihood(
      List<Cluster> clusters, double rate, double miss, double correlation) {
    double independent = 1 - correlation;
    double log = 0;
    for (Cluster c : clusters) {
      double product = 1;
      for (int j = 0; j < c.trials(); j++) {
        boolean success = j < c.successes();
        int before = success ? j : j - c.successes();
        double own = (success ? rate : miss) * independent + before * correlation;
        product *= own / (independent + j * correlation);
      }
      log += Math.log(Math.max(product, Double.MIN_NORMAL));
    }
    return log;
  }
}
