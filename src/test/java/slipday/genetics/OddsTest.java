package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class OddsTest {
  /**
   * Plants needed to find r or more of a genotype of frequency q: J. R. Sedcole 1977, Crop Science
   * 17:667 (from memory; the figures were worked out again in exact rational arithmetic).
   */
  @ParameterizedTest
  @CsvFileSource(resources = "/plants-needed.csv", numLinesToSkip = 1)
  void plantsNeededForAGenotype(double sure, String frequency, int wanted, int expected) {
    String[] q = frequency.split("/");
    double share = Double.parseDouble(q[0]) / Double.parseDouble(q[1]);
    assertThat(Odds.plantsNeeded(share, wanted, sure)).hasValue(expected);
  }

  /** K. Mather 1938, The Measurement of Linkage in Heredity: 11 and 17 (from memory). */
  @ParameterizedTest
  @CsvSource({"0.95, 11", "0.99, 17"})
  void oneRecessiveOfFour(double sure, int expected) {
    assertThat(Odds.plantsNeeded(0.25, 1, sure)).hasValue(expected);
  }

  /** The chance is met exactly: 1 − ½ⁿ. */
  @ParameterizedTest
  @CsvSource({"0.5, 1", "0.75, 2", "0.875, 3", "0.9375, 4", "0.96875, 5", "0.9990234375, 10"})
  void aChanceMetExactlyIsMet(double sure, int expected) {
    assertThat(Odds.plantsNeeded(0.5, 1, sure)).hasValue(expected);
  }

  /** Recomputed in exact arithmetic. */
  @ParameterizedTest
  @CsvSource({
    "12, 0.85, 0.95, 17",
    "12, 0.70, 0.95, 22",
    "4, 0.50, 0.95, 13",
    "20, 0.90, 0.99, 27",
    "8, 0.15, 0.95, 85",
    "8, 0.30, 0.95, 41"
  })
  void seedsOrFlowersAtACertainRate(int wanted, double rate, double sure, int expected) {
    assertThat(Odds.seedsToSow(wanted, rate, sure)).hasValue(expected);
  }

  /** Recomputed with a second library's beta-binomial: 192 sure, 56 as likely as not. */
  @ParameterizedTest
  @CsvSource({"0.95, 192", "0.5, 56"})
  void flowersAtAnUncertainTake(double sure, int expected) {
    assertThat(Odds.trialsNeeded(3, 17, 8, sure, 9_999)).hasValue(expected);
  }

  /** 12 plants out of a lot of which 44 of 50 came up; recomputed with a second library. */
  @Test
  void seedsToSowAfterATest() {
    assertThat(Odds.seedsToSow(12, 44, 50, 0.95)).hasValue(17);
    assertThat(Odds.chanceOfPlants(17, 12, 44, 50)).isCloseTo(0.9682324351, within(1e-9));
    assertThat(Odds.chanceOfPlants(16, 12, 44, 50)).isCloseTo(0.9325149357, within(1e-9));
  }

  @Test
  void aSmallTestAsksForMoreSeedThanALargeOne() {
    assertThat(Odds.seedsToSow(12, 4, 5, 0.95).orElseThrow())
        .isGreaterThan(Odds.seedsToSow(12, 80, 100, 0.95).orElseThrow());
  }

  @Test
  void whatNoGardenHoldsIsEmpty() {
    assertThat(Odds.plantsNeeded(0, 1, 0.95)).isEmpty();
    assertThat(Odds.plantsNeeded(1e-9, 1, 0.95)).isEmpty();
    assertThat(Odds.trialsNeeded(3, 17, 8, 0.95, 191)).isEmpty();
    assertThat(Odds.trialsNeeded(3, 17, 8, 0.95, 192)).hasValue(192);
    assertThat(Odds.trialsNeeded(3, 17, 50, 0.95, 49)).isEmpty();
    assertThat(Odds.seedsToSow(10, 0, 5_000, 0.95)).isEmpty();
  }

  @Test
  void nothingWantedNeedsNothing() {
    assertThat(Odds.plantsNeeded(0.2, 0, 0.95)).isEqualTo(OptionalInt.of(0));
    assertThat(Odds.plantsNeeded(0, 0, 0.95)).isEqualTo(OptionalInt.of(0));
    assertThat(Odds.plantsNeeded(1, 7, 0.95)).hasValue(7);
  }

  @Test
  void aChanceIsBetweenNeverAndAlways() {
    assertThatThrownBy(() -> Odds.plantsNeeded(0.5, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Odds.plantsNeeded(0, 1, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Odds.plantsNeeded(1.1, 1, 0.5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Odds.seedsToSow(3, 6, 5, 0.5))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Every seed of a test may have come up, or none. */
  @Test
  void aTestMayBeAllOrNothing() {
    assertThat(Odds.seedsToSow(3, 5, 5, 0.95).orElseThrow()).isBetween(4, 8);
    assertThat(Odds.seedsToSow(1, 0, 5, 0.5).orElseThrow()).isGreaterThan(5);
  }

  /** Of 10 seeds at 80 %, 8 or more come up in 67.8 % of cases: a table of the binomial. */
  @Test
  void theChanceOfPlantsAtACertainGermination() {
    assertThat(Odds.chanceOfPlants(10, 8, 0.8)).isCloseTo(0.6778, within(5e-5));
    assertThat(Odds.chanceOfPlants(10, 1, 0.1)).isCloseTo(1 - Math.pow(0.9, 10), within(1e-12));
    assertThat(Odds.chanceOfPlants(10, 0, 0.8)).isEqualTo(1);
    assertThat(Odds.chanceOfPlants(5, 6, 0.8)).isEqualTo(0);
  }

  /** The closed form for one plant. */
  @Property(tries = 300)
  void onePlantFollowsTheClosedForm(
      @ForAll @DoubleRange(min = 0.01, max = 0.95) double q,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double p) {
    double exact = Math.log1p(-p) / Math.log1p(-q);
    int n = Odds.plantsNeeded(q, 1, p).orElseThrow();
    assertThat((double) n).isBetween(exact - 1e-6, exact + 1 + 1e-6);
  }

  @Property(tries = 300)
  void theNumberIsTheSmallestThatDoes(
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double q,
      @ForAll @IntRange(min = 1, max = 40) int r,
      @ForAll @DoubleRange(min = 0.05, max = 0.99) double p) {
    int n = Odds.plantsNeeded(q, r, p).orElseThrow();
    assertThat(reaches(n, q, r)).isGreaterThanOrEqualTo(p - 1e-9);
    assertThat(n == r ? 0 : reaches(n - 1, q, r)).isLessThan(p + 1e-9);
  }

  private static double reaches(int n, double q, int r) {
    return BinomialDistribution.of(n, q).survivalProbability(r - 1);
  }

  /** The less that is known of the rate, the more trials it takes to be sure. */
  @Property(tries = 200)
  void anUncertainRateNeedsMore(
      @ForAll @DoubleRange(min = 1, max = 20) double a,
      @ForAll @DoubleRange(min = 1, max = 20) double b,
      @ForAll @IntRange(min = 1, max = 10) int wanted) {
    int certain = Odds.plantsNeeded(a / (a + b), wanted, 0.95).orElseThrow();
    OptionalInt uncertain = Odds.trialsNeeded(a, b, wanted, 0.95, Odds.MOST);
    assertThat(uncertain.orElse(Odds.MOST)).isGreaterThanOrEqualTo(certain);
  }
}
