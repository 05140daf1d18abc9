package slipday.genetics.mixed;

import java.util.Arrays;
import org.ejml.data.DMatrixSparseCSC;

/** Gathers the upper triangle of a symmetric sparse matrix; what falls on one place is added. */
final class SparseSum {
  private static final int FIRST = 256;

  private final int size;
  private int count;
  private int[] rows = new int[FIRST];
  private int[] columns = new int[FIRST];
  private double[] values = new double[FIRST];

  SparseSum(int size) {
    this.size = size;
  }

  /** Adds to both halves: one of two mirrored places is named. */
  void add(int one, int other, double value) {
    if (count == rows.length) {
      rows = Arrays.copyOf(rows, 2 * count);
      columns = Arrays.copyOf(columns, 2 * count);
      values = Arrays.copyOf(values, 2 * count);
    }
    rows[count] = Math.min(one, other);
    columns[count] = Math.max(one, other);
    values[count] = value;
    count++;
  }

  /** The upper triangle, rows in order within each column. */
  DMatrixSparseCSC upper() {
    int[] byRow = order(rows, new int[0]);
    int[] byColumn = order(columns, byRow);
    DMatrixSparseCSC matrix = new DMatrixSparseCSC(size, size, count);
    int filled = 0;
    int next = 0;
    for (int column = 0; column < size; column++) {
      int start = filled;
      while (next < count && columns[byColumn[next]] == column) {
        int entry = byColumn[next++];
        if (filled > start && matrix.nz_rows[filled - 1] == rows[entry]) {
          matrix.nz_values[filled - 1] += values[entry];
        } else {
          matrix.nz_rows[filled] = rows[entry];
          matrix.nz_values[filled] = values[entry];
          filled++;
        }
      }
      matrix.col_idx[column + 1] = filled;
    }
    matrix.nz_length = filled;
    matrix.indicesSorted = true;
    return matrix;
  }

  /**
   * Entries sorted by a key, by counting; those of one key stay as they were.
   *
   * @param before their order so far, or nothing for that of adding
   */
  private int[] order(int[] keys, int[] before) {
    int[] starts = new int[size + 1];
    for (int i = 0; i < count; i++) {
      starts[keys[i] + 1]++;
    }
    for (int i = 0; i < size; i++) {
      starts[i + 1] += starts[i];
    }
    int[] sorted = new int[count];
    for (int i = 0; i < count; i++) {
      int entry = before.length == 0 ? i : before[i];
      sorted[starts[keys[entry]]++] = entry;
    }
    return sorted;
  }
}
