package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** D. S. Falconer and T. F. C. Mackay 1996, Introduction to Quantitative Genetics (from memory). */
class EffectiveSizeTest {
  @ParameterizedTest
  @CsvSource({
    "1, 10, 3.64",
    "10, 100, 36.36",
    "50, 100, 133.33",
    "50, 250, 166.67",
    "1, 1, 2",
    "3, 3, 6"
  })
  void malesAndFemales(int males, int females, double size) {
    assertThat(EffectiveSize.separateSexes(males, females)).isCloseTo(size, within(0.005));
  }

  /** 1 ÷ (.16 + .09 + .04 + .01). */
  @Test
  void parentsUsedUnequally() {
    assertThat(EffectiveSize.fromShares(List.of(.4, .3, .2, .1))).isCloseTo(3.3333, within(5e-5));
    assertThat(EffectiveSize.fromShares(List.of(40.0, 30.0, 20.0, 10.0)))
        .isCloseTo(3.3333, within(5e-5));
  }

  @Test
  void lossInAGeneration() {
    assertThat(EffectiveSize.inbreedingRate(50)).isEqualTo(0.01);
    assertThat(EffectiveSize.fromInbreedingRate(0.01)).isEqualTo(50);
    assertThat(EffectiveSize.inbreedingAfter(2, 50)).isCloseTo(1 - .99 * .99, within(1e-15));
    assertThat(EffectiveSize.inbreedingAfter(0, 50)).isZero();
  }

  @Test
  void whatCannotBe() {
    assertThatThrownBy(() -> EffectiveSize.separateSexes(0, 5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> EffectiveSize.fromShares(List.of(0.0)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> EffectiveSize.fromInbreedingRate(0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> EffectiveSize.inbreedingRate(0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Worked out again by hand: 1 ÷ (2·(1 − 0.9^0.1)). */
  @Test
  void whatKeepsNineTenthsOverTenGenerations() {
    assertThat(EffectiveSize.toKeep(0.9, 10)).isCloseTo(47.7065469, within(1e-6));
    assertThat(EffectiveSize.toKeep(0.5, 1)).isCloseTo(1, within(1e-12));
    assertThatThrownBy(() -> EffectiveSize.toKeep(1, 10))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> EffectiveSize.toKeep(0.9, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property(tries = 100)
  void theSizeThatKeepsLosesNoMore(
      @ForAll @DoubleRange(min = 0.5, max = 0.99) double kept,
      @ForAll @IntRange(min = 1, max = 50) int generations) {
    double size = EffectiveSize.toKeep(kept, generations);
    assertThat(EffectiveSize.inbreedingAfter(generations, size)).isCloseTo(1 - kept, within(1e-9));
  }

  @Property(tries = 200)
  void neverMoreThanTheParentsThereAre(
      @ForAll @Size(min = 1, max = 20) List<@DoubleRange(min = 0.01, max = 9) Double> shares) {
    assertThat(EffectiveSize.fromShares(shares)).isBetween(1 - 1e-9, shares.size() + 1e-9);
    assertThat(EffectiveSize.fromShares(Collections.nCopies(shares.size(), shares.get(0))))
        .isCloseTo(shares.size(), within(1e-9));
  }

  @Property(tries = 200)
  void theRarerSexCounts(
      @ForAll @IntRange(min = 1, max = 500) int males,
      @ForAll @IntRange(min = 1, max = 500) int females) {
    double size = EffectiveSize.separateSexes(males, females);
    assertThat(size).isLessThan(4.0 * Math.min(males, females));
    assertThat(size).isLessThanOrEqualTo((double) males + females);
  }
}
