package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartingTest {
  /** n = (1.6449·(√(pq) + √(p′q′)) ÷ (p − p′))², worked out by hand. */
  @ParameterizedTest
  @CsvSource({
    "3,1,9,7,67",
    "3,1,13,3,470",
    "1,1,3,1,38",
    "3,1,1,3,9",
    "9,7,13,3,35",
    "15,1,3,1,36"
  })
  void twoClasses(int a, int b, int c, int d, int plants) {
    assertThat(Parting.plants(List.of(a, b), List.of(c, d), 0.05))
        .isEqualTo(OptionalInt.of(plants));
  }

  /** A plant of a class the other does not know proves it: ln 0.05 ÷ ln 0.75 = 10.4. */
  @Test
  void aClassThatOnlyOneKnowsProvesIt() {
    assertThat(Parting.plants(List.of(3, 1), List.of(1, 0), 0.05)).hasValue(11);
    assertThat(Parting.plants(List.of(0, 1, 1), List.of(1, 0, 0), 0.05)).hasValue(1);
  }

  @Test
  void whatIsTheSameIsNeverParted() {
    assertThat(Parting.plants(List.of(3, 1), List.of(6, 2), 0.05)).isEmpty();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> Parting.plants(List.of(1, 1), List.of(1, 2, 1), 0.05))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Parting.plants(List.of(1, 1), List.of(1, 2), 0.5))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Deciding by likelihood, each is taken for the other about as seldom as was asked. */
  @Property(tries = 100)
  void theErrorsAreWhatWasAskedFor(
      @ForAll @IntRange(min = 3, max = 13) int a, @ForAll @IntRange(min = 3, max = 13) int b) {
    double p = Math.max(a, b) / 16.0;
    double q = Math.min(a, b) / 16.0;
    if (p - q < 0.05) {
      return;
    }
    int n = Parting.plants(List.of(a, 16 - a), List.of(b, 16 - b), 0.05).orElseThrow();
    double perPlant = Math.log(p / q);
    double perOther = Math.log((1 - q) / (1 - p));
    int first = (int) Math.ceil(n * perOther / (perPlant + perOther));
    double missed = BinomialDistribution.of(n, p).cumulativeProbability(first - 1);
    double mistaken = BinomialDistribution.of(n, q).survivalProbability(first - 1);
    // Whole plants make the border coarse where n is small; the mean of both errors is near.
    assertThat((missed + mistaken) / 2).isLessThan(0.08);
  }
}
