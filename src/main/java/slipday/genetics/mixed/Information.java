package slipday.genetics.mixed;

/** First derivatives of the restricted likelihood, and the average information, at a solution. */
final class Information {
  private final Solution solution;
  private final MixedModel model;
  private final boolean[] out;
  private final int count;
  private final double[] gradient;
  private final double[] expected;
  private final double[][] matrix;

  /**
   * @param out variances left out
   */
  Information(Solution solution, boolean[] out) {
    this.solution = solution;
    this.model = solution.model;
    this.out = out;
    this.count = solution.variances.length;
    gradient = new double[count];
    expected = new double[count];
    matrix = new double[count][count];
    derive();
    average();
  }

  double[] gradient() {
    return gradient;
  }

  /** The variances of the next step of expectation and maximisation. */
  double[] expected() {
    return expected;
  }

  double[][] matrix() {
    return matrix;
  }

  private void derive() {
    double residual = solution.residual();
    double rest = model.size() - model.rank();
    for (int k = 0; k < count - 1; k++) {
      if (out[k]) {
        continue;
      }
      double variance = solution.variances[k];
      Covariance covariance = model.random.get(k).covariance();
      int levels = covariance.size();
      double square = covariance.inverseSquare(solution.levels(k));
      double trace = residual * trace(k, covariance);
      gradient[k] = -(levels - trace / variance - square / variance) / variance / 2;
      expected[k] = (square + trace) / levels;
      rest -= levels - trace / variance;
    }
    double[] remainders = solution.remainders();
    double square = 0;
    double product = 0;
    for (int i = 0; i < remainders.length; i++) {
      square += model.weights[i] * remainders[i] * remainders[i];
      product += model.weights[i] * remainders[i] * model.records[i];
    }
    gradient[count - 1] = -(rest - square / residual) / residual / 2;
    expected[count - 1] = product / (model.size() - model.rank());
  }

  /** Of K⁻¹·C, C the part of the equations' inverse. */
  private double trace(int effect, Covariance covariance) {
    double sum = 0;
    for (int e = 0; e < covariance.entries(); e++) {
      int row = covariance.row(e);
      int column = covariance.column(e);
      double term =
          covariance.value(e)
              * solution
                  .inverse()
                  .at(solution.layout.place(effect, row), solution.layout.place(effect, column));
      sum += row == column ? term : 2 * term;
    }
    return sum;
  }

  private void average() {
    double[][] working = new double[count][];
    double[][] projected = new double[count][];
    for (int k = 0; k < count; k++) {
      working[k] = working(k);
      projected[k] = projected(working[k]);
    }
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < count; j++) {
        double sum = 0;
        for (int row = 0; row < model.size(); row++) {
          sum += working[i][row] * projected[j][row];
        }
        matrix[i][j] = sum / 2;
      }
    }
  }

  /** Vₖ·P·y, a working record for each variance. */
  private double[] working(int k) {
    double[] made = new double[model.size()];
    if (k == count - 1) {
      double[] remainders = solution.remainders();
      for (int row = 0; row < made.length; row++) {
        made[row] = remainders[row] / solution.residual();
      }
    } else if (!out[k]) {
      double[] levels = solution.levels(k);
      for (int row = 0; row < made.length; row++) {
        made[row] = model.random.get(k).design().times(row, levels) / solution.variances[k];
      }
    }
    return made;
  }

  /** P·q. */
  private double[] projected(double[] q) {
    double[] effects = solution.factor.solve(solution.layout.right(q));
    double[] left = solution.layout.remainder(q, effects);
    for (int row = 0; row < left.length; row++) {
      left[row] *= model.weights[row] / solution.residual();
    }
    return left;
  }
}
