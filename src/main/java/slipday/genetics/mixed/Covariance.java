package slipday.genetics.mixed;

import java.util.Arrays;
import slipday.genetics.RelationshipInverse;

/**
 * How the levels of a random effect hang together, as the inverse of their covariances over the
 * effect's variance.
 */
public final class Covariance {
  private final int size;
  private final int[] rows;
  private final int[] columns;
  private final double[] inverse;
  private final double logDeterminant;

  private Covariance(int size, int[] rows, int[] columns, double[] inverse, double logDeterminant) {
    this.size = size;
    this.rows = rows;
    this.columns = columns;
    this.inverse = inverse;
    this.logDeterminant = logDeterminant;
  }

  /** Levels that have nothing to do with each other. */
  public static Covariance independent(int levels) {
    int[] diagonal = new int[levels];
    Arrays.setAll(diagonal, i -> i);
    double[] ones = new double[levels];
    Arrays.fill(ones, 1);
    return new Covariance(levels, diagonal, diagonal, ones, 0);
  }

  /** Relationships; the levels are the free plants of the inverse. */
  public static Covariance related(RelationshipInverse relationships) {
    int size = relationships.free().size();
    SparseSum sum = new SparseSum(size);
    for (RelationshipInverse.Entry entry : relationships.entries()) {
      if (entry.row() <= entry.column()) {
        sum.add(entry.row(), entry.column(), entry.value());
      }
    }
    var upper = sum.upper();
    int[] columns = new int[upper.nz_length];
    for (int j = 0; j < size; j++) {
      Arrays.fill(columns, upper.col_idx[j], upper.col_idx[j + 1], j);
    }
    return new Covariance(
        size,
        Arrays.copyOf(upper.nz_rows, upper.nz_length),
        columns,
        Arrays.copyOf(upper.nz_values, upper.nz_length),
        relationships.logDeterminant());
  }

  /**
   * Each level once for each of several traits, trait by trait within a level: the product of what
   * the traits have in common and what the levels have.
   *
   * @param inverse of the traits' covariances
   * @param logDeterminant of their covariances
   */
  Covariance ofTraits(double[][] inverse, double logDeterminant) {
    int traits = inverse.length;
    int most = entries() * traits * traits;
    int[] toRows = new int[most];
    int[] toColumns = new int[most];
    double[] values = new double[most];
    int count = 0;
    for (int e = 0; e < entries(); e++) {
      for (int i = 0; i < traits; i++) {
        for (int j = rows[e] == columns[e] ? i : 0; j < traits; j++) {
          if (inverse[i][j] != 0) {
            toRows[count] = rows[e] * traits + i;
            toColumns[count] = columns[e] * traits + j;
            values[count++] = this.inverse[e] * inverse[i][j];
          }
        }
      }
    }
    return new Covariance(
        size * traits,
        Arrays.copyOf(toRows, count),
        Arrays.copyOf(toColumns, count),
        Arrays.copyOf(values, count),
        size * logDeterminant + traits * this.logDeterminant);
  }

  /** How many levels. */
  public int size() {
    return size;
  }

  /** Of the covariances, not of their inverse. */
  double logDeterminant() {
    return logDeterminant;
  }

  boolean isDiagonal() {
    return rows == columns;
  }

  int entries() {
    return rows.length;
  }

  /** Row of an entry of the inverse; only the upper triangle is listed. */
  int row(int entry) {
    return rows[entry];
  }

  int column(int entry) {
    return columns[entry];
  }

  double value(int entry) {
    return inverse[entry];
  }

  /** u′·K⁻¹·u. */
  double inverseSquare(double[] levels) {
    double sum = 0;
    for (int i = 0; i < rows.length; i++) {
      double term = inverse[i] * levels[rows[i]] * levels[columns[i]];
      sum += rows[i] == columns[i] ? term : 2 * term;
    }
    return sum;
  }
}
