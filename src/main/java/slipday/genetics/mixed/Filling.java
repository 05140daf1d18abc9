package slipday.genetics.mixed;

import java.util.Optional;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.IGrowArray;
import org.ejml.sparse.csc.misc.ColumnCounts_DSCC;
import org.ejml.sparse.csc.misc.TriangularSolver_DSCC;

/**
 * How full the Cholesky factor of a sparse matrix will be, told from its places alone and before
 * any number of it is worked out.
 *
 * @param numbers places of the factor that hold one
 * @param products to be worked out: the sum of the squares of the columns' lengths
 */
record Filling(long numbers, double products) {
  /** 12 bytes each, and 8 for the inverse: with the equations themselves, in a heap of 1 GiB. */
  private static final long MOST_NUMBERS = 20_000_000;

  /** About a minute for one solution on a machine of 2026 with two cores. */
  private static final double MOST_PRODUCTS = 3e10;

  static Filling of(DMatrixSparseCSC upper) {
    int size = upper.numCols;
    int[] parents = new int[size];
    int[] order = new int[size];
    int[] counts = new int[size];
    IGrowArray work = new IGrowArray();
    TriangularSolver_DSCC.eliminationTree(upper, false, parents, work);
    TriangularSolver_DSCC.postorder(parents, size, order, work);
    new ColumnCounts_DSCC(false).process(upper, parents, order, counts);
    long numbers = 0;
    double products = 0;
    for (int count : counts) {
      numbers += count;
      products += (double) count * count;
    }
    return new Filling(numbers, products);
  }

  /** Why it is more than can be worked out; empty where it is not. */
  Optional<String> tooMuch() {
    return numbers > MOST_NUMBERS || products > MOST_PRODUCTS
        ? Optional.of(
            "So many plants were crossed with so many others that their breeding values would take "
                + numbers / 1_000_000
                + " million numbers, which is more than can be worked out here; include fewer"
                + " seasons of records.")
        : Optional.empty();
  }
}
