package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.genetics.SeedLife.Germination;

class SeedLifeTest {
  /** J. F. Harrington 1972 (from memory): twice by a percent of moisture, twice by five degrees. */
  @ParameterizedTest
  @CsvSource({
    "10, 20, 8, 10, 16",
    "10, 20, 9, 20, 2",
    "10, 20, 10, 15, 2",
    "8, 10, 10, 20, 0.0625"
  })
  void harrington(double moisture, double celsius, double drier, double cooler, double times) {
    assertThat(SeedLife.timesLonger(moisture, celsius, drier, cooler).value().orElseThrow())
        .isCloseTo(times, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"4.9, 20, 8, 10", "10, 20, 14.1, 10", "10, -1, 8, 10", "10, 20, 8, 51"})
  void harringtonsRulesEnd(double moisture, double celsius, double drier, double cooler) {
    assertThat(SeedLife.timesLonger(moisture, celsius, drier, cooler).refusal().orElseThrow())
        .startsWith("The rule of thumb")
        .endsWith(".");
  }

  /** 50 °F and 49 % are just under a hundred; 68 °F and 40 % are over. */
  @Test
  void coolAndDry() {
    assertThat(SeedLife.coolAndDry(10, 49)).isTrue();
    assertThat(SeedLife.coolAndDry(10, 50)).isFalse();
    assertThat(SeedLife.coolAndDry(20, 40)).isFalse();
  }

  /**
   * R. H. Ellis and T. D. Hong 2007, Seed Science and Technology 35:432, constants of the abstract
   * (Zea mays, Beta vulgaris, Triticum aestivum); σ at 8 % and 20 °C worked out again.
   */
  @ParameterizedTest
  @CsvSource({"9.993, 5.993, 5690.9", "8.988, 4.969, 4730.9", "8.498, 4.836, 2018.6"})
  void daysPerProbit(double species, double moisture, double days) {
    Viability crop = new Viability(species, moisture);
    assertThat(crop.daysPerProbit(8, 20)).isCloseTo(days, within(0.05));
    // Φ(1) = 0.841345: one probit down is one half.
    assertThat(crop.germination(0.841344746, days, 8, 20)).isCloseTo(0.5, within(1e-4));
  }

  @Test
  void withoutConstantsTheEquationIsRefused() {
    Answer<Viability> none =
        Viability.of("butternut", OptionalDouble.empty(), OptionalDouble.of(5));
    assertThat(none.value()).isEmpty();
    assertThat(none.refusal().orElseThrow()).contains("`butternut`", "storage life");
    assertThat(Viability.of("x", OptionalDouble.of(9), OptionalDouble.of(5)).value())
        .hasValue(new Viability(9, 5));
  }

  /** The stated default itself; common practice gives no source for it. */
  @Test
  void newSeedIsHalfDeadAtItsLife() {
    Germination old = SeedLife.after(SeedLife.untested(), 5, 5);
    assertThat(old.usual()).isCloseTo(0.5, within(1e-12));
    assertThat(old.low()).isLessThan(0.05);
    assertThat(old.high()).isBetween(0.9, 0.95);
    assertThat(SeedLife.yearsUntil(0.5, SeedLife.untested(), 5)).isCloseTo(5, within(1e-12));
    assertThat(SeedLife.yearsUntil(0.99, SeedLife.untested(), 5)).isZero();
  }

  /** Beta(44.5, 6.5): percentiles from a second library. */
  @Test
  void aTestSaysMoreOrLess() {
    Germination fifty = SeedLife.tested(44, 50);
    assertThat(fifty.usual()).isCloseTo(0.8765, within(0.001));
    Germination five = SeedLife.tested(4, 5);
    assertThat(five.high() - five.low()).isGreaterThan(2 * (fifty.high() - fifty.low()));
    assertThat(SeedLife.tested(0, 10).usual()).isPositive();
    assertThat(SeedLife.tested(10, 10).usual()).isLessThan(1);
  }

  @Test
  void whatCannotBe() {
    assertThatThrownBy(() -> SeedLife.tested(11, 10)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SeedLife.after(SeedLife.untested(), -1, 5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SeedLife.after(SeedLife.untested(), 1, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Viability(9, 5).daysPerProbit(0, 20))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property(tries = 300)
  void seedOnlyGetsWorse(
      @ForAll @IntRange(max = 50) int seedlings,
      @ForAll @DoubleRange(max = 40) double years,
      @ForAll @DoubleRange(min = 1, max = 10) double life) {
    Germination start = SeedLife.tested(seedlings, 50);
    Germination now = SeedLife.after(start, years, life);
    Germination later = SeedLife.after(start, years + 1, life);
    assertThat(now.usual()).isLessThanOrEqualTo(start.usual() + 1e-12);
    assertThat(later.low()).isLessThanOrEqualTo(now.low());
    assertThat(later.usual()).isLessThanOrEqualTo(now.usual());
    assertThat(later.high()).isLessThanOrEqualTo(now.high());
  }

  /** Two years and three years are five years. */
  @Property(tries = 200)
  void yearsAddUp(
      @ForAll @DoubleRange(max = 6) double first, @ForAll @DoubleRange(max = 6) double second) {
    Germination start = SeedLife.untested();
    Germination inTwo = SeedLife.after(SeedLife.after(start, first, 5), second, 5);
    assertThat(inTwo.usual())
        .isCloseTo(SeedLife.after(start, first + second, 5).usual(), within(1e-9));
  }
}
