package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The means by seasons are held to the general form of best linear unbiased prediction, û = σ²u 1′
 * V⁻¹ (y − μ), over the whole covariance matrix of the records (Robinson 1991, from memory).
 */
class ShrunkenTest {
  private static final double KIND = 40;
  private static final double SPREAD = 4;

  /** A line of 16 / 2, of seasons 16 / 4, of fruits 16 / 4: one record counts for one half. */
  @Test
  void oneRecordMeetsTheKindHalfWay() {
    Shrunken own = Shrunken.of(KIND, SPREAD, List.of(List.of(36.0)));
    assertThat(own.mean()).isCloseTo(38, within(1e-9));
    assertThat(own.weight()).isCloseTo(0.5, within(1e-9));
    assertThat(own.doubt()).isCloseTo(2, within(1e-9));
    assertThat(own.spread()).isCloseTo(Math.sqrt(12), within(1e-9));
  }

  @Test
  void withoutRecordsItIsTheKind() {
    Shrunken own = Shrunken.of(KIND, SPREAD, List.of());
    assertThat(own.mean()).isEqualTo(KIND);
    assertThat(own.spread()).isCloseTo(SPREAD, within(1e-9));
    assertThat(own.weight()).isZero();
  }

  @Test
  void theWholeCovarianceGivesTheSame() {
    List<List<Double>> seasons =
        List.of(List.of(35.0, 37.0, 36.0), List.of(41.0), List.of(38.0, 34.0));
    Shrunken own = Shrunken.of(KIND, SPREAD, seasons);
    double line = 8;
    double season = 4;
    // Within seasons: 2 + 0 + 8 with 2 + 0 + 1 degrees of freedom, and 4 beforehand at 4 each.
    double fruit = (4 * 4 + 10) / 7.0;
    List<Integer> of = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (int s = 0; s < seasons.size(); s++) {
      for (double value : seasons.get(s)) {
        of.add(s);
        y.add(value - KIND);
      }
    }
    int n = y.size();
    double[][] v = new double[n][n];
    double[] ones = new double[n];
    for (int i = 0; i < n; i++) {
      ones[i] = 1;
      for (int j = 0; j < n; j++) {
        v[i][j] = line + (of.get(i).equals(of.get(j)) ? season : 0) + (i == j ? fruit : 0);
      }
    }
    double[] weights = solve(v, ones);
    double predicted = 0;
    double explained = 0;
    for (int i = 0; i < n; i++) {
      predicted += line * weights[i] * y.get(i);
      explained += line * weights[i];
    }
    assertThat(own.mean()).isCloseTo(KIND + predicted, within(1e-9));
    assertThat(own.doubt()).isCloseTo(Math.sqrt(line - explained * line), within(1e-9));
    assertThat(own.weight()).isCloseTo(explained, within(1e-9));
  }

  /** Gaussian elimination with the largest pivot. */
  private static double[] solve(double[][] matrix, double[] right) {
    int n = right.length;
    double[][] a = new double[n][n + 1];
    for (int i = 0; i < n; i++) {
      System.arraycopy(matrix[i], 0, a[i], 0, n);
      a[i][n] = right[i];
    }
    for (int c = 0; c < n; c++) {
      int pivot = c;
      for (int r = c + 1; r < n; r++) {
        pivot = Math.abs(a[r][c]) > Math.abs(a[pivot][c]) ? r : pivot;
      }
      double[] swap = a[c];
      a[c] = a[pivot];
      a[pivot] = swap;
      for (int r = 0; r < n; r++) {
        double factor = r == c ? 0 : a[r][c] / a[c][c];
        for (int k = c; k <= n; k++) {
          a[r][k] -= factor * a[c][k];
        }
      }
    }
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = a[i][n] / a[i][i];
    }
    return x;
  }

  /** Ten fruits of one season weigh less than ten of ten. */
  @Test
  void seasonsCountMoreThanFruits() {
    List<Double> ten = java.util.Collections.nCopies(10, 36.0);
    List<List<Double>> each = ten.stream().map(List::of).toList();
    Shrunken one = Shrunken.of(KIND, SPREAD, List.of(ten));
    Shrunken many = Shrunken.of(KIND, SPREAD, each);
    assertThat(one.weight()).isLessThan(many.weight());
    assertThat(many.mean()).isLessThan(one.mean()).isGreaterThan(36);
    assertThat(many.spread()).isLessThan(SPREAD);
  }

  /** A line whose fruits differ widely is told with a wide range. */
  @Test
  void whatDiffersWithinASeasonWidensTheRange() {
    Shrunken even = Shrunken.of(KIND, SPREAD, List.of(List.of(36.0, 36.0, 36.0, 36.0)));
    Shrunken wide = Shrunken.of(KIND, SPREAD, List.of(List.of(26.0, 46.0, 30.0, 42.0)));
    assertThat(wide.spread()).isGreaterThan(even.spread() + 2);
    assertThat(wide.weight()).isLessThan(even.weight());
  }

  @Test
  void noSpreadIsRefused() {
    assertThatThrownBy(() -> Shrunken.of(KIND, 0, List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
