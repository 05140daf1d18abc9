package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SelfingTest {
  /**
   * ((2ᵐ − 1) ÷ 2ᵐ)ⁿ with m selfings after the F1 and n genes: R. W. Allard 1960, Principles of
   * Plant Breeding (from memory; worked out in whole fractions).
   */
  @ParameterizedTest
  @CsvSource({
    "1, 2, 0.5",
    "5, 2, 0.03125",
    "5, 6, 0.853215188",
    "5, 7, 0.924278556",
    "10, 11, 0.990277179",
    "3, 4, 0.669921875"
  })
  void plantsFixedAtAllGenes(int genes, int generation, double share) {
    assertThat(Selfing.fixedAt(genes, generation)).isCloseTo(share, within(5e-9));
  }

  /**
   * Selfing's inbreeding 0, ½, ¾, ⅞ is the share of genes fixed: D. S. Falconer and T. F. C. Mackay
   * 1996, table 5.1 (from memory).
   */
  @Test
  void heterozygosityIsHalvedEachTime() {
    assertThat(Selfing.heterozygous(1)).isEqualTo(1);
    assertThat(Selfing.heterozygous(2)).isEqualTo(0.5);
    assertThat(Selfing.heterozygous(4)).isEqualTo(0.125);
    assertThat(Selfing.fixedForOne(3)).isEqualTo(0.375);
    assertThat(Selfing.showsDominant(3)).isEqualTo(0.625);
  }

  /** A share met exactly is met: F2 is half fixed. */
  @ParameterizedTest
  @CsvSource({"1, 0.5, 2", "1, 0.75, 3", "1, 0.95, 6", "1, 0.99, 8", "5, 0.9, 7", "20, 0.95, 10"})
  void theFirstGenerationThatIsUniformEnough(int genes, double share, int expected) {
    assertThat(Selfing.firstFixed(genes, share)).isEqualTo(OptionalInt.of(expected));
  }

  @Test
  void whatNoGenerationReachesIsEmpty() {
    assertThat(Selfing.firstFixed(10_000, 1 - 1e-16)).isEmpty();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> Selfing.heterozygous(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Selfing.fixedAt(0, 2)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Selfing.firstFixed(1, 1)).isInstanceOf(IllegalArgumentException.class);
  }

  @Property(tries = 200)
  void theGenerationBeforeIsNotUniformEnough(
      @ForAll @IntRange(min = 1, max = 30) int genes,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    int first = Selfing.firstFixed(genes, share).orElseThrow();
    assertThat(Selfing.fixedAt(genes, first)).isGreaterThanOrEqualTo(share);
    assertThat(first == 1 ? 0 : Selfing.fixedAt(genes, first - 1)).isLessThan(share);
  }

  @Property(tries = 100)
  void everyPlantShowsOneOrTheOther(@ForAll @IntRange(min = 1, max = 20) int generation) {
    assertThat(Selfing.showsDominant(generation) + Selfing.fixedForOne(generation))
        .isCloseTo(1, within(1e-12));
    assertThat(2 * Selfing.fixedForOne(generation) + Selfing.heterozygous(generation))
        .isCloseTo(1, within(1e-12));
  }
}
