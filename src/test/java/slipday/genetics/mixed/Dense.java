package slipday.genetics.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** V, and what follows from it, with nothing left out. */
final class Dense {
  private final TwoTraits garden;
  private final List<int[]> rows = new ArrayList<>();
  private final double[] left;
  private final double[][] projection;

  Dense(TwoTraits garden) {
    this.garden = garden;
    for (int t = 0; t < 2; t++) {
      for (int i = 0; i < garden.parts.get(t).units().size(); i++) {
        rows.add(new int[] {t, i});
      }
    }
    int n = rows.size();
    double[][] v = new double[n][n];
    double[][] x = new double[n][];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      Measurement one = measurement(i);
      y[i] = one.value();
      x[i] = new double[4];
      x[i][2 * rows.get(i)[0] + ("s1".equals(one.factors().get("season")) ? 1 : 0)] = 1;
      for (int j = 0; j < n; j++) {
        v[i][j] = covariance(i, j);
      }
    }
    double[][] vi = inverse(v);
    double[][] vix = times(vi, x);
    double[][] square = inverse(times(turned(x), vix));
    double[][] taken = times(times(vix, square), turned(vix));
    projection = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        projection[i][j] = vi[i][j] - taken[i][j];
      }
    }
    left = times(y);
  }

  private double[] times(double[] y) {
    return Arrays.stream(projection).mapToDouble(row -> dot(row, y)).toArray();
  }

  private Measurement measurement(int row) {
    return garden.parts.get(rows.get(row)[0]).model().measurements().get(rows.get(row)[1]);
  }

  private double covariance(int i, int j) {
    int t = rows.get(i)[0];
    int s = rows.get(j)[0];
    Measurement one = measurement(i);
    Measurement other = measurement(j);
    Components a = garden.parts.get(t).components();
    Components b = garden.parts.get(s).components();
    double sum = genetic(t, one.plant(), s, other.plant());
    double environmental = garden.correlations.environmental[t][s];
    if (one.plant() == other.plant()) {
      sum += environmental * Math.sqrt(a.permanent() * b.permanent());
    }
    Object unit = garden.parts.get(t).units().get(rows.get(i)[1]);
    if (unit.equals(garden.parts.get(s).units().get(rows.get(j)[1]))) {
      sum +=
          environmental
              * Math.sqrt(a.residual() * b.residual())
              / Math.max(one.weight(), other.weight());
    }
    return sum;
  }

  private double genetic(int t, int one, int s, int other) {
    Components a = garden.parts.get(t).components();
    Components b = garden.parts.get(s).components();
    return garden.correlations.genetic[t][s]
        * Math.sqrt(a.additive() * b.additive())
        * 2
        * garden.pedigree.coancestry(one, other);
  }

  private double[] beside(int t, int plant) {
    double[] made = new double[rows.size()];
    Arrays.setAll(made, i -> genetic(t, plant, rows.get(i)[0], measurement(i).plant()));
    return made;
  }

  double value(int t, int plant) {
    return dot(beside(t, plant), left);
  }

  double errorVariance(int t, int plant) {
    double[] beside = beside(t, plant);
    return genetic(t, plant, t, plant) - dot(beside, times(beside));
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  private static double[][] inverse(double[][] matrix) {
    boolean[] in = new boolean[matrix.length];
    Arrays.fill(in, true);
    return SmallMatrix.inverse(matrix, in);
  }

  private static double[][] turned(double[][] matrix) {
    double[][] made = new double[matrix[0].length][matrix.length];
    for (int i = 0; i < matrix.length; i++) {
      for (int j = 0; j < matrix[0].length; j++) {
        made[j][i] = matrix[i][j];
      }
    }
    return made;
  }

  private static double[][] times(double[][] one, double[][] other) {
    double[][] columns = turned(other);
    double[][] made = new double[one.length][columns.length];
    for (int i = 0; i < one.length; i++) {
      for (int j = 0; j < columns.length; j++) {
        made[i][j] = dot(one[i], columns[j]);
      }
    }
    return made;
  }
}
