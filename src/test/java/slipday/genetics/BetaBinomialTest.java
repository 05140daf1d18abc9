package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class BetaBinomialTest {
  /** With Beta(1, 1) every count is as likely as any other. */
  @Test
  void aRateThatNobodyKnowsMakesEveryCountAlike() {
    BetaBinomial uniform = new BetaBinomial(9, 1, 1);
    for (int k = 0; k <= 9; k++) {
      assertThat(uniform.probability(k)).isCloseTo(0.1, within(1e-14));
      assertThat(uniform.atLeast(k)).isCloseTo(1 - k / 10.0, within(1e-13));
    }
  }

  /** Recomputed with a second library. */
  @Test
  void eightFruitsOfManyFlowers() {
    assertThat(new BetaBinomial(191, 3, 17).atLeast(8)).isCloseTo(0.9496560730692437, within(1e-9));
    assertThat(new BetaBinomial(192, 3, 17).atLeast(8)).isCloseTo(0.9502694592661729, within(1e-9));
  }

  /** Where the rate is all but certain it is the binomial: 5 of 10 at ½ is 252 ÷ 1024. */
  @Test
  void aRateThatIsAllButCertainIsTheBinomial() {
    assertThat(new BetaBinomial(10, 1e9, 1e9).probability(5)).isCloseTo(252 / 1024.0, within(1e-6));
  }

  @Test
  void outsideTheTrialsThereIsNothing() {
    BetaBinomial three = new BetaBinomial(3, 2, 2);
    assertThat(three.probability(-1)).isZero();
    assertThat(three.probability(4)).isZero();
    assertThat(three.atLeast(0)).isEqualTo(1);
    assertThat(three.atLeast(4)).isZero();
    assertThat(three.fewerThan(4)).isEqualTo(1);
    assertThat(new BetaBinomial(0, 2, 2).atLeast(1)).isZero();
    assertThatThrownBy(() -> new BetaBinomial(3, 0, 2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new BetaBinomial(-1, 1, 2))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** The first term of the sum is less than the smallest double. */
  @Test
  void aTinyFirstTermIsNotTakenForNothing() {
    BetaBinomial many = new BetaBinomial(5_000, 2_000, 2_000);
    assertThat(many.probability(0)).isZero();
    assertThat(many.fewerThan(2_500)).isCloseTo(0.5, within(0.01));
  }

  @Property(tries = 300)
  void probabilitiesSumToOne(
      @ForAll @IntRange(min = 0, max = 300) int n,
      @ForAll @DoubleRange(min = 0.05, max = 60) double a,
      @ForAll @DoubleRange(min = 0.05, max = 60) double b) {
    BetaBinomial law = new BetaBinomial(n, a, b);
    assertThat(IntStream.rangeClosed(0, n).mapToDouble(law::probability).sum())
        .isCloseTo(1, within(1e-9));
    double mean = IntStream.rangeClosed(0, n).mapToDouble(k -> k * law.probability(k)).sum();
    assertThat(mean).isCloseTo(n * a / (a + b), within(1e-7));
  }

  @Property(tries = 300)
  void theTailsAreOneAndFallAsMoreIsAsked(
      @ForAll @IntRange(min = 1, max = 300) int n,
      @ForAll @DoubleRange(min = 0.05, max = 60) double a,
      @ForAll @DoubleRange(min = 0.05, max = 60) double b,
      @ForAll @IntRange(min = 0, max = 300) int k) {
    BetaBinomial law = new BetaBinomial(n, a, b);
    assertThat(law.atLeast(k) + law.fewerThan(k)).isCloseTo(1, within(1e-9));
    assertThat(law.atLeast(k + 1)).isLessThanOrEqualTo(law.atLeast(k) + 1e-9);
    assertThat(new BetaBinomial(n + 1, a, b).atLeast(k))
        .isGreaterThanOrEqualTo(law.atLeast(k) - 1e-9);
  }
}
