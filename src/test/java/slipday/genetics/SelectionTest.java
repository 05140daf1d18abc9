package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SelectionTest {
  /** Falconer and Mackay 1996, appendix table A (from memory; worked out again to six places). */
  @ParameterizedTest
  @CsvSource({
    "0.01, 2.665214",
    "0.05, 2.062713",
    "0.10, 1.754983",
    "0.20, 1.399810",
    "0.50, 0.797885"
  })
  void intensityInAnEndlessPopulation(double share, double expected) {
    assertThat(Selection.intensity(share)).isCloseTo(expected, within(5e-7));
  }

  /**
   * Falconer and Mackay 1996, appendix table B (from memory; worked out again by quadrature with
   * thirty digits). The mean of the larger of two is 1 ÷ √π, of the largest of three 3 ÷ (2·√π).
   */
  @ParameterizedTest
  @CsvSource({
    "1, 5, 1.1630",
    "1, 10, 1.5388",
    "2, 10, 1.2701",
    "3, 20, 1.4687",
    "5, 50, 1.7055",
    "1, 2, 0.5642",
    "1, 3, 0.8463",
    "2, 3, 0.4231",
    "1, 1, 0"
  })
  void intensityInASmallPopulation(int chosen, int of, double expected) {
    assertThat(Selection.intensity(chosen, of)).isCloseTo(expected, within(6e-5));
  }

  /** Closed forms: H. A. David and H. N. Nagaraja 2003, Order Statistics (from memory). */
  @Test
  void closedForms() {
    double root = Math.sqrt(Math.PI);
    assertThat(Selection.intensity(1, 2)).isCloseTo(1 / root, within(1e-12));
    assertThat(Selection.intensity(1, 3)).isCloseTo(3 / (2 * root), within(1e-12));
    assertThat(Selection.intensity(1, 4))
        .isCloseTo(6 / (Math.PI * root) * Math.atan(Math.sqrt(2)), within(1e-12));
  }

  /** The best tenth of both parents, and of the seed parents only; recomputed. */
  @Test
  void response() {
    assertThat(Selection.response(.43, Selection.intensity(0.1), 80))
        .isCloseTo(60.3714, within(5e-5));
    assertThat(Selection.response(.43, Selection.intensity(0.1) / 2, 80))
        .isCloseTo(30.1857, within(5e-5));
  }

  /** Falconer and Mackay 1996, chapter 15 (from memory). */
  @ParameterizedTest
  @CsvSource({"0, 1, 0.5", "0.5, 1.5, 0.25", "0.75, 1.75, 0.125", "1, 2, 0"})
  void varianceUnderSelfing(double inbreeding, double among, double within) {
    assertThat(Selection.varianceAmongLines(inbreeding)).isEqualTo(among);
    assertThat(Selection.varianceWithinFamily(inbreeding)).isEqualTo(within);
  }

  /** What is among the families of a generation and within them is all among the next one's. */
  @Property(tries = 50)
  void selfingSharesOutTheVariance(@ForAll @IntRange(min = 0, max = 20) int selfings) {
    double f = 1 - Math.pow(0.5, selfings);
    double next = 1 - Math.pow(0.5, selfings + 1);
    assertThat(Selection.varianceAmongLines(f) + Selection.varianceWithinFamily(f))
        .isCloseTo(Selection.varianceAmongLines(next), within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"1, 0.25", "2, 0.37037", "5, 0.52083"})
  void weightOnAMean(int records, double weight) {
    assertThat(Selection.weightOnMean(records, .25, .35)).isCloseTo(weight, within(5e-6));
  }

  @Test
  void whatCannotBe() {
    assertThatThrownBy(() -> Selection.intensity(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Selection.intensity(1.1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Selection.intensity(3, 2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Selection.weightOnMean(2, .5, .4))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Selection.response(2, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** The few best and the rest lie about the mean: k·i(k) = (n − k)·i(n − k). */
  @Property(tries = 200)
  void theBestAndTheRestBalance(
      @ForAll @IntRange(min = 2, max = 2000) int of, @ForAll @DoubleRange(max = 0.99) double at) {
    int chosen = 1 + (int) (at * (of - 1));
    double best = Selection.intensity(chosen, of);
    double rest = chosen == of ? 0 : Selection.intensity(of - chosen, of);
    assertThat(chosen * best).isCloseTo((of - chosen) * rest, within(1e-8 * of));
  }

  @Property(tries = 200)
  void aSmallPopulationGivesLessThanAnEndlessOne(
      @ForAll @IntRange(min = 2, max = 100_000) int of, @ForAll @DoubleRange(max = 0.9) double at) {
    int chosen = 1 + (int) (at * (of - 1));
    double endless = Selection.intensity((double) chosen / of);
    double small = Selection.intensity(chosen, of);
    assertThat(small).isLessThan(endless + 1e-9);
    assertThat(small).isCloseTo(endless, within(1.0 / chosen + 1e-9));
  }
}
