package slipday.genetics.mixed;

import java.util.Arrays;
import java.util.Optional;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;
import org.ejml.sparse.csc.misc.TriangularSolver_DSCC;

/**
 * The Cholesky factor of a symmetric sparse matrix, L·L′.
 *
 * <p>Nothing is reordered: who writes the matrix down puts the rows that touch few others first.
 */
final class Factor {
  private final DMatrixSparseCSC lower;

  private Factor(DMatrixSparseCSC lower) {
    this.lower = lower;
  }

  /** Empty where the matrix isn't positive definite. */
  static Optional<Factor> of(DMatrixSparseCSC upper) {
    CholeskyUpLooking_DSCC cholesky = new CholeskyUpLooking_DSCC();
    return cholesky.decompose(upper) ? Optional.of(new Factor(cholesky.getL())) : Optional.empty();
  }

  int size() {
    return lower.numCols;
  }

  /** How many places of the factor hold a number. */
  int filled() {
    return lower.nz_length;
  }

  double[] solve(double[] right) {
    double[] x = right.clone();
    TriangularSolver_DSCC.solveL(lower, x);
    TriangularSolver_DSCC.solveTranL(lower, x);
    return x;
  }

  /** c′·A⁻¹·c. */
  double inverseSquare(double[] c) {
    double[] x = c.clone();
    TriangularSolver_DSCC.solveL(lower, x);
    double sum = 0;
    for (double each : x) {
      sum += each * each;
    }
    return sum;
  }

  double logDeterminant() {
    double sum = 0;
    for (int j = 0; j < size(); j++) {
      sum += Math.log(lower.nz_values[lower.col_idx[j]]);
    }
    return 2 * sum;
  }

  Inverse inverse() {
    return new Inverse(lower);
  }

  /**
   * Those numbers of the inverse that stand where the factor has some, worked out from the last
   * column back, without the rest of the inverse (K. Takahashi, J. Fagan and M.-S. Chin 1973,
   * Proceedings of the 8th PICA Conference 63; I. Misztal and M. Perez-Enciso 1993, Journal of
   * Dairy Science 76:1479; both from memory).
   */
  static final class Inverse {
    private final int[] starts;
    private final int[] rows;
    private final double[] values;

    /** Of each row, where among the column at hand it stands, plus one; 0 for one not in it. */
    private final int[] places;

    private double[] sums = new double[0];

    private Inverse(DMatrixSparseCSC lower) {
      starts = lower.col_idx;
      rows = lower.nz_rows;
      values = new double[lower.nz_length];
      places = new int[lower.numCols];
      for (int j = lower.numCols - 1; j >= 0; j--) {
        column(j, lower.nz_values);
      }
    }

    /** Each column below the diagonal, walked through once, gives to two halves of a product. */
    private void column(int j, double[] factor) {
      int first = starts[j];
      int end = starts[j + 1];
      if (sums.length < end - first) {
        sums = new double[2 * (end - first)];
      }
      for (int p = first + 1; p < end; p++) {
        places[rows[p]] = p - first;
        sums[p - first] = 0;
      }
      for (int p = first + 1; p < end; p++) {
        addProducts(rows[p], p - first, first, factor);
      }
      double pivot = factor[first];
      double own = 1 / (pivot * pivot);
      for (int p = first + 1; p < end; p++) {
        values[p] = -sums[p - first] / pivot;
        own -= factor[p] * values[p] / pivot;
        places[rows[p]] = 0;
      }
      values[first] = own;
    }

    private void addProducts(int column, int place, int first, double[] factor) {
      double own = factor[first + place];
      double sum = own * values[starts[column]];
      for (int k = starts[column] + 1; k < starts[column + 1]; k++) {
        int other = places[rows[k]];
        if (other > 0) {
          sum += factor[first + other] * values[k];
          sums[other] += own * values[k];
        }
      }
      sums[place] += sum;
    }

    /**
     * @throws IllegalArgumentException where the factor holds nothing
     */
    double at(int one, int other) {
      int column = Math.min(one, other);
      int row = Math.max(one, other);
      int place = Arrays.binarySearch(rows, starts[column], starts[column + 1], row);
      if (place < 0) {
        throw new IllegalArgumentException("nothing at " + row + ", " + column);
      }
      return values[place];
    }
  }
}
