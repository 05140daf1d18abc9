package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import slipday.genetics.ClusteredRate.Cluster;

/** Held to closed forms worked out by hand, and to simulation by another road. */
class ClusteredRateTest {
  private static final ClusteredRate USUAL = new ClusteredRate(3, 17);

  /** E[πᵏ] under Beta(a, b): the product of (a + j) / (a + b + j). */
  private static double moment(double a, double b, int k) {
    double product = 1;
    for (int j = 0; j < k; j++) {
      product *= (a + j) / (a + b + j);
    }
    return product;
  }

  /** The beta prior with the counts added; Gelman and others, section 2.4, from memory. */
  @Test
  void oneTrialInEachClusterAddsUp() {
    List<Cluster> clusters = new ArrayList<>(Collections.nCopies(4, new Cluster(1, 1)));
    clusters.addAll(Collections.nCopies(8, new Cluster(0, 1)));
    assertThat(USUAL.after(clusters)).isEqualTo(new ClusteredRate(7, 25));
    assertThat(USUAL.after(List.of())).isEqualTo(USUAL);
  }

  /**
   * Two of two on one cluster have the likelihood (1 − ρ) π² + ρ π, so the posterior's moments are
   * means over ρ of those of the prior.
   */
  @Test
  void twoOfTwoOnOneClusterByHand() {
    double mean = DoubleStream.of(ClusteredRate.CORRELATIONS).average().orElseThrow();
    double weight = (1 - mean) * moment(3, 17, 2) + mean * moment(3, 17, 1);
    double first = ((1 - mean) * moment(3, 17, 3) + mean * moment(3, 17, 2)) / weight;
    double second = ((1 - mean) * moment(3, 17, 4) + mean * moment(3, 17, 3)) / weight;
    ClusteredRate after = USUAL.after(List.of(new Cluster(2, 2)));
    assertThat(after.mean()).isCloseTo(first, within(1e-9));
    double variance = after.mean() * (1 - after.mean()) / (after.a() + after.b() + 1);
    assertThat(variance).isCloseTo(second - first * first, within(1e-9));
  }

  /** One of two has the likelihood 2 (1 − ρ) π (1 − π): π learns what two clusters would teach. */
  @Test
  void oneOfTwoTeachesAsTwoClusters() {
    ClusteredRate after = USUAL.after(List.of(new Cluster(1, 2)));
    assertThat(after.a()).isCloseTo(4, within(1e-6));
    assertThat(after.b()).isCloseTo(18, within(1e-6));
  }

  @Test
  void manyOnOneVineTeachLessThanOneOnEach() {
    double together = USUAL.after(List.of(new Cluster(8, 8))).mean();
    double apart = USUAL.after(Collections.nCopies(8, new Cluster(1, 1))).mean();
    double one = USUAL.after(List.of(new Cluster(1, 1))).mean();
    assertThat(together).isBetween(one, apart).isLessThan(apart - 0.05);
  }

  /**
   * By rejection: rates, correlations and clusters are drawn, and those draws kept that give the
   * counts at hand. 2,000 kept draws tell the mean to about 0.002.
   */
  @Test
  void simulationAgrees() {
    List<Cluster> seen = List.of(new Cluster(2, 3), new Cluster(0, 3), new Cluster(1, 1));
    Random random = new Random(20270715);
    ClusteredRate prior = new ClusteredRate(4, 6);
    double sum = 0;
    double squares = 0;
    int kept = 0;
    while (kept < 20_000) {
      double rate = beta(random, 4, 6);
      double rho = ClusteredRate.CORRELATIONS[random.nextInt(ClusteredRate.CORRELATIONS.length)];
      if (gives(seen, rate, rho, random)) {
        kept++;
        sum += rate;
        squares += rate * rate;
      }
    }
    double mean = sum / kept;
    ClusteredRate after = prior.after(seen);
    assertThat(after.mean()).isCloseTo(mean, within(0.004));
    double variance = after.mean() * (1 - after.mean()) / (after.a() + after.b() + 1);
    assertThat(Math.sqrt(variance))
        .isCloseTo(Math.sqrt(squares / kept - mean * mean), within(0.003));
  }

  private static boolean gives(List<Cluster> seen, double rate, double rho, Random random) {
    for (Cluster cluster : seen) {
      double scale = (1 - rho) / Math.max(rho, 1e-12);
      double own =
          rho == 0 ? rate : beta(random, Math.max(1e-9, rate * scale), (1 - rate) * scale + 1e-9);
      int successes = 0;
      for (int i = 0; i < cluster.trials(); i++) {
        successes += random.nextDouble() < own ? 1 : 0;
      }
      if (successes != cluster.successes()) {
        return false;
      }
    }
    return true;
  }

  private static double beta(Random random, double a, double b) {
    double x = gamma(random, a);
    return x / (x + gamma(random, b));
  }

  /** Marsaglia and Tsang 2000, ACM Transactions on Mathematical Software 26:363, from memory. */
  private static double gamma(Random random, double shape) {
    if (shape < 1) {
      return gamma(random, shape + 1) * Math.pow(random.nextDouble(), 1 / shape);
    }
    double d = shape - 1.0 / 3;
    double c = 1 / Math.sqrt(9 * d);
    while (true) {
      double x = random.nextGaussian();
      double v = Math.pow(1 + c * x, 3);
      if (v > 0 && Math.log(random.nextDouble()) < x * x / 2 + d - d * v + d * Math.log(v)) {
        return d * v;
      }
    }
  }

  @Test
  void aPriorNearNoneIsStillSummed() {
    ClusteredRate after = new ClusteredRate(0.05, 9.95).after(List.of(new Cluster(3, 4)));
    assertThat(after.mean()).isBetween(0.1, 0.23);
    assertThat(after.quantile(0.1)).isLessThan(after.mean()).isPositive();
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> new Cluster(3, 2)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new ClusteredRate(0, 1)).isInstanceOf(IllegalArgumentException.class);
  }
}
