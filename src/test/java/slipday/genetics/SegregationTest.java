package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SegregationTest {
  /** G. Mendel 1866, round and wrinkled peas (counts from memory). */
  @Test
  void roundAndWrinkled() {
    Segregation fit = Segregation.test(List.of(5474, 1850), List.of(3.0, 1.0));
    assertThat(fit.chiSquare()).isCloseTo(0.2629, within(5e-5));
    assertThat(fit.degreesOfFreedom()).isEqualTo(1);
    assertThat(fit.probability()).isCloseTo(0.60813, within(5e-5));
    assertThat(fit.method()).isEqualTo(Segregation.Method.CHI_SQUARE);
  }

  /** G. Mendel 1866, the two pairs of traits together (counts from memory). */
  @Test
  void twoPairsOfTraits() {
    Segregation fit = Segregation.test(List.of(315, 101, 108, 32), List.of(9.0, 3.0, 3.0, 1.0));
    assertThat(fit.chiSquare()).isCloseTo(0.4700, within(5e-5));
    assertThat(fit.degreesOfFreedom()).isEqualTo(3);
    assertThat(fit.probability()).isCloseTo(0.9254, within(5e-4));
  }

  /** Worked out in exact rational arithmetic. */
  @Test
  void smallCountsAreAddedUpExactly() {
    Segregation two = Segregation.test(List.of(7, 5), List.of(3.0, 1.0));
    assertThat(two.method()).isEqualTo(Segregation.Method.EXACT);
    assertThat(two.probability()).isCloseTo(0.18932002782821655, within(1e-10));
    Segregation four = Segregation.test(List.of(12, 1, 3, 0), List.of(9.0, 3.0, 3.0, 1.0));
    assertThat(four.method()).isEqualTo(Segregation.Method.EXACT);
    assertThat(four.probability()).isCloseTo(0.4738776261153903, within(1e-10));
  }

  @Test
  void tooManyOutcomesToAddUpAreToldAsRough() {
    Segregation fit =
        Segregation.test(List.of(995, 2, 1, 1, 1), List.of(996.0, 1.0, 1.0, 1.0, 1.0));
    assertThat(fit.method()).isEqualTo(Segregation.Method.CHI_SQUARE_ROUGH);
  }

  @Test
  void countsMustFitTheRatio() {
    assertThatThrownBy(() -> Segregation.test(List.of(1, 2), List.of(1.0)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Segregation.test(List.of(0, 0), List.of(1.0, 1.0)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Segregation.test(List.of(3, 4), List.of(1.0, 0.0)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** The likeliest outcome is as far off as all others together. */
  @Property(tries = 60)
  void aPerfectFitIsCertain(@ForAll @IntRange(min = 1, max = 200) int times) {
    Segregation fit = Segregation.test(List.of(3 * times, times), List.of(3.0, 1.0));
    assertThat(fit.chiSquare()).isZero();
    assertThat(fit.probability()).isCloseTo(1, within(1e-9));
  }

  @Property(tries = 100)
  void theOrderOfClassesDoesNotMatter(
      @ForAll @IntRange(min = 0, max = 12) int a,
      @ForAll @IntRange(min = 1, max = 12) int b,
      @ForAll @IntRange(min = 0, max = 12) int c) {
    Segregation one = Segregation.test(List.of(a, b, c), List.of(1.0, 2.0, 1.0));
    Segregation other = Segregation.test(List.of(c, b, a), List.of(1.0, 2.0, 1.0));
    assertThat(one.probability()).isCloseTo(other.probability(), within(1e-9));
    assertThat(one.probability()).isBetween(0.0, 1.0);
  }
}
