package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class JointValueTest {
  private static JointValue of(double[] differences, double[] accuracies, double correlation) {
    return JointValue.of(
            differences,
            accuracies,
            new double[] {2, 3},
            new double[][] {{1, correlation}, {correlation, 1}})
        .value()
        .orElseThrow();
  }

  @Test
  void whatDoesNotGoTogetherSaysNothing() {
    JointValue own = of(new double[] {1.2, -3}, new double[] {0.6, 0.9}, 0);
    assertThat(own.difference()).isCloseTo(1.2, within(1e-12));
    assertThat(own.accuracy()).isCloseTo(0.6, within(1e-12));
  }

  /**
   * Two values of one and the same thing are two records of it: reliability 2r² ÷ (1 + r²) (C.
   * Spearman 1910 and W. Brown 1910, British Journal of Psychology 3, from memory).
   */
  @Test
  void theSameTwiceIsAsTwoRecords() {
    JointValue both = of(new double[] {1, 1.5}, new double[] {0.5, 0.5}, 1);
    assertThat(both.accuracy() * both.accuracy()).isCloseTo(0.5 / 1.25, within(1e-9));
    assertThat(both.difference()).isCloseTo(2 / 1.25, within(1e-9));
  }

  @Test
  void correlationsThatCannotBeAreRefused() {
    double[][] impossible = {{1, 0.9, 0.9}, {0.9, 1, -0.9}, {0.9, -0.9, 1}};
    double[] ones = {1, 1, 1};
    assertThat(JointValue.of(ones, ones, ones, impossible).refusal()).isPresent();
  }

  /**
   * One record of each trait on one plant: as the normal law has it, with u and u + e, worked out
   * from their covariances.
   */
  @Property(tries = 200)
  void asTheNormalLawHasIt(
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double one,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double other,
      @ForAll @DoubleRange(min = -0.95, max = 0.95) double correlation,
      @ForAll @DoubleRange(min = -4, max = 4) double y,
      @ForAll @DoubleRange(min = -4, max = 4) double z) {
    double covariance = correlation * 2 * 3;
    double vy = 4 / one;
    double vz = 9 / other;
    double determinant = vy * vz - covariance * covariance;
    double by = (4 * vz - covariance * covariance) / determinant;
    double bz = (vy * covariance - 4 * covariance) / determinant;
    JointValue joint =
        of(
            new double[] {one * y, other * z},
            new double[] {Math.sqrt(one), Math.sqrt(other)},
            correlation);
    assertThat(joint.difference()).isCloseTo(by * y + bz * z, within(1e-9));
    double reliability = (by * 4 + bz * covariance) / 4;
    assertThat(joint.accuracy() * joint.accuracy()).isCloseTo(reliability, within(1e-9));
    assertThat(joint.accuracy()).isGreaterThanOrEqualTo(Math.sqrt(one) - 1e-9);
  }
}
