package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SelectionIndexTest {
  private static final double[][] P = {{6400, -57.6}, {-57.6, 51.84}};
  private static final double[][] G = {{2752, 62.064}, {62.064, 15.552}};

  private static SelectionIndex given(Answer<SelectionIndex> answer) {
    return answer.value().orElseThrow();
  }

  /**
   * R. A. Mrode 2014, Linear Models for the Prediction of Animal Breeding Values, 3rd edition,
   * example 1.7: b = .674, 2.695; accuracy and gains worked out again, with i = 1.755.
   */
  @Test
  void twoTraitsWithWeights() {
    SelectionIndex index = given(SelectionIndex.smithHazel(P, G, new double[] {1.5, 0.5}));
    assertThat(index.weights().get(0)).isCloseTo(0.674102, within(5e-7));
    assertThat(index.weights().get(1)).isCloseTo(2.694836, within(5e-7));
    assertThat(index.accuracy()).isCloseTo(0.699300, within(5e-7));
    double i = 1.755;
    assertThat(i * index.gains().get(0)).isCloseTo(64.0009, within(5e-4));
    assertThat(i * index.gains().get(1)).isCloseTo(2.6503, within(5e-4));
  }

  /**
   * With one trait the index is h² times the figure and R = h²·i·σ: h² .43, σ 80, best tenth →
   * 60.37 (D. S. Falconer and T. F. C. Mackay 1996, chapter 11, from memory; worked out again).
   */
  @Test
  void oneTraitIsTheBreedersEquation() {
    SelectionIndex index =
        given(
            SelectionIndex.smithHazel(
                new double[][] {{6400}}, new double[][] {{2752}}, new double[] {1}));
    assertThat(index.weights().get(0)).isCloseTo(0.43, within(1e-12));
    assertThat(index.accuracy()).isCloseTo(Math.sqrt(0.43), within(1e-12));
    assertThat(Selection.intensity(0.1) * index.gains().get(0)).isCloseTo(60.3714, within(5e-4));
    assertThat(index.of(new double[] {10})).isCloseTo(4.3, within(1e-12));
  }

  /** J. Pesek and R. J. Baker 1969: the gains come out in the proportion that was asked for. */
  @Test
  void desiredGainsComeInProportion() {
    SelectionIndex index = given(SelectionIndex.desiredGains(P, G, new double[] {40, 1}));
    assertThat(index.gains().get(0) / index.gains().get(1)).isCloseTo(40, within(1e-9));
    assertThat(index.gains().get(0)).isPositive();
  }

  @Test
  void weightsPerDeviationAreDividedByIt() {
    assertThat(SelectionIndex.perUnit(new double[] {5, 3}, new double[] {80, 7.2}))
        .containsExactly(0.0625, 3 / 7.2);
    assertThatThrownBy(() -> SelectionIndex.perUnit(new double[] {1}, new double[] {0}))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void whatHasNoAnswerIsRefused() {
    double[][] same = {{4, 4}, {4, 4}};
    assertThat(SelectionIndex.smithHazel(same, same, new double[] {1, 1}).refusal())
        .hasValueSatisfying(why -> assertThat(why).contains("say the same"));
    double[][] nothing = {{0, 0}, {0, 0}};
    assertThat(SelectionIndex.smithHazel(P, nothing, new double[] {1, 1}).refusal()).isPresent();
    assertThat(SelectionIndex.smithHazel(P, G, new double[] {0, 0}).refusal()).isPresent();
    assertThat(SelectionIndex.desiredGains(P, G, new double[] {0, 0}).refusal()).isPresent();
    assertThat(SelectionIndex.desiredGains(P, same, new double[] {1, 0}).refusal()).isPresent();
    assertThatThrownBy(() -> SelectionIndex.smithHazel(P, G, new double[] {1}))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** No other weights go as well with the worth of the breeding values. */
  @Property(tries = 200)
  void nothingBeatsIt(
      @ForAll @DoubleRange(min = -3, max = 3) double one,
      @ForAll @DoubleRange(min = -3, max = 3) double other) {
    double[] worth = {1.5, 0.5};
    SelectionIndex index = given(SelectionIndex.smithHazel(P, G, worth));
    double[] b = {one, other};
    double variance = 0;
    double covariance = 0;
    double goal = 0;
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        variance += b[i] * P[i][j] * b[j];
        covariance += b[i] * G[i][j] * worth[j];
        goal += worth[i] * G[i][j] * worth[j];
      }
    }
    double accuracy = variance > 0 ? covariance / Math.sqrt(variance * goal) : 0;
    assertThat(accuracy).isLessThanOrEqualTo(index.accuracy() + 1e-9);
  }
}
