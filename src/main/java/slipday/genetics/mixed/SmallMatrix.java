package slipday.genetics.mixed;

import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.chol.CholeskyDecompositionInner_DDRM;

/** Symmetric positive definite matrices of a few rows. */
final class SmallMatrix {
  private static final double SINGULAR = 1e-12;

  private SmallMatrix() {}

  /** The inverse over the rows that are in; other rows are 0. */
  static double[][] inverse(double[][] matrix, boolean[] in) {
    int size = matrix.length;
    double[][] work = new double[size][size];
    double[] scale = new double[size];
    for (int i = 0; i < size; i++) {
      scale[i] = in[i] && matrix[i][i] > 0 ? Math.sqrt(matrix[i][i]) : 0;
      for (int j = 0; j <= i; j++) {
        boolean there = scale[i] > 0 && scale[j] > 0;
        work[i][j] = there ? matrix[i][j] / scale[i] / scale[j] : 0;
        work[j][i] = work[i][j];
      }
    }
    for (int k = 0; k < size; k++) {
      eliminate(work, k);
    }
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        boolean there = scale[i] > 0 && scale[j] > 0;
        work[i][j] = there ? work[i][j] / scale[i] / scale[j] : 0;
      }
    }
    return work;
  }

  static double[] solve(double[][] matrix, double[] right, boolean[] in) {
    double[][] inverse = inverse(matrix, in);
    double[] x = new double[right.length];
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < x.length; j++) {
        x[i] += inverse[i][j] * right[j];
      }
    }
    return x;
  }

  /** The lower triangle L of L·L′; empty where the matrix isn't positive definite. */
  static Optional<double[][]> cholesky(double[][] matrix) {
    int size = matrix.length;
    if (size == 0) {
      return Optional.of(matrix);
    }
    DMatrixRMaj lower = new DMatrixRMaj(matrix);
    if (!new CholeskyDecompositionInner_DDRM(true).decompose(lower)) {
      return Optional.empty();
    }
    double[][] made = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j <= i; j++) {
        made[i][j] = lower.get(i, j);
      }
      if (!(made[i][i] * made[i][i] > SINGULAR * matrix[i][i])) {
        return Optional.empty();
      }
    }
    return Optional.of(made);
  }

  /** One step of Gauss and Jordan in place; a row that depends on those before comes out as 0. */
  private static void eliminate(double[][] work, int k) {
    int size = work.length;
    double pivot = work[k][k];
    if (pivot < SINGULAR) {
      for (int i = 0; i < size; i++) {
        work[i][k] = 0;
        work[k][i] = 0;
      }
      return;
    }
    for (int i = 0; i < size; i++) {
      double factor = i == k ? 0 : work[i][k] / pivot;
      for (int j = 0; j < size && i != k; j++) {
        work[i][j] -= j == k ? 0 : factor * work[k][j];
      }
      work[i][k] = i == k ? work[k][k] : -factor;
    }
    for (int j = 0; j < size; j++) {
      work[k][j] = j == k ? 1 / pivot : work[k][j] / pivot;
    }
  }
}
