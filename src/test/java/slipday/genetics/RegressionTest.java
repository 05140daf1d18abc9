package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RegressionTest {
  private static final double[] CHILDREN = {
    61.7, 62.2, 63.2, 64.2, 65.2, 66.2, 67.2, 68.2, 69.2, 70.2, 71.2, 72.2, 73.2, 73.7
  };
  private static final double[] MID_PARENTS = {
    73.0, 72.5, 71.5, 70.5, 69.5, 68.5, 67.5, 66.5, 65.5, 64.5, 64.0
  };
  private static final int[][] FAMILIES = {
    {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 3, 0},
    {0, 0, 0, 0, 0, 0, 0, 1, 2, 1, 2, 7, 2, 4},
    {0, 0, 0, 0, 1, 3, 4, 3, 5, 10, 4, 9, 2, 2},
    {1, 0, 1, 0, 1, 1, 3, 12, 18, 14, 7, 4, 3, 3},
    {0, 0, 1, 16, 4, 17, 27, 20, 33, 25, 20, 11, 4, 5},
    {1, 0, 7, 11, 16, 25, 31, 34, 48, 21, 18, 4, 3, 0},
    {0, 3, 5, 14, 15, 36, 38, 28, 38, 19, 11, 4, 0, 0},
    {0, 3, 3, 5, 2, 17, 17, 14, 13, 4, 0, 0, 0, 0},
    {1, 0, 9, 5, 7, 11, 11, 7, 7, 5, 2, 1, 0, 0},
    {1, 1, 4, 4, 1, 5, 5, 0, 2, 0, 0, 0, 0, 0},
    {1, 0, 2, 4, 1, 2, 2, 1, 1, 0, 0, 0, 0, 0},
  };

  /**
   * Heights in inches of 928 grown children and of their mid-parents (F. Galton 1886, Journal of
   * the Anthropological Institute 15:246, table 1; counts from memory). Slope and error worked out
   * again from the open data set.
   */
  @Test
  void galtonsFamilies() {
    double[] x = new double[928];
    double[] y = new double[928];
    int pairs = 0;
    for (int row = 0; row < FAMILIES.length; row++) {
      for (int column = 0; column < CHILDREN.length; column++) {
        for (int i = 0; i < FAMILIES[row][column]; i++) {
          x[pairs] = MID_PARENTS[row];
          y[pairs++] = CHILDREN[column];
        }
      }
    }
    Regression found = Regression.of(x, y).value().orElseThrow();
    assertThat(found.points()).isEqualTo(928);
    assertThat(found.slope()).isCloseTo(.64629, within(5e-6));
    assertThat(found.error()).isCloseTo(.04114, within(5e-6));
  }

  @Test
  void tooFewPairsAndParentsAllAlikeAreRefused() {
    assertThat(Regression.of(new double[] {1, 2}, new double[] {1, 2}).refusal()).isPresent();
    assertThat(Regression.of(new double[] {2, 2, 2}, new double[] {1, 2, 3}).refusal())
        .contains("All parents are alike.");
  }
}
