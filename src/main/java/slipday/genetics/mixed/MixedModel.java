package slipday.genetics.mixed;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Records as a sum of fixed effects, random effects and a remainder: y = X·b + Σ Z·u + e.
 *
 * <p>Random effect k has the variance σ²ₖ times its {@link Covariance}; the remainder of a record
 * of weight w (the mean of w fruits) has σ²ₑ ÷ w. Solved by the mixed-model equations (C. R.
 * Henderson 1975, Biometrics 31:423, from memory): b comes out by generalised least squares, u as
 * best linear unbiased prediction.
 *
 * <p>Fixed effects that follow from those before them are left at 0 and said to be aliased.
 */
public final class MixedModel {
  private static final double NOTHING_LEFT = 1e-9;

  /** So few equations can be solved however full they are. */
  private static final int FEW = 3000;

  final double[] records;
  final double[] weights;
  final Design fixed;
  final List<Random> random;
  final boolean[] aliased;

  /**
   * A random effect.
   *
   * @param design a row a record, a column a level of the covariance
   */
  public record Random(Design design, Covariance covariance) {
    public Random {
      if (design.columns() != covariance.size()) {
        throw new IllegalArgumentException(
            design.columns() + " effects of " + covariance.size() + " levels");
      }
    }
  }

  /**
   * @param records y
   * @param weights above 0: how many equal fruits each record is the mean of
   * @param fixed the effects that are estimated, one of them standing for the mean
   */
  public MixedModel(double[] records, double[] weights, Design fixed, List<Random> random) {
    this.records = records.clone();
    this.weights = weights.clone();
    this.fixed = fixed;
    this.random = List.copyOf(random);
    boolean fit =
        weights.length == records.length
            && fixed.rows() == records.length
            && random.stream().allMatch(r -> r.design().rows() == records.length)
            && Arrays.stream(records).allMatch(Double::isFinite)
            && Arrays.stream(weights).allMatch(w -> w > 0 && Double.isFinite(w));
    if (!fit) {
      throw new IllegalArgumentException("records, weights and designs do not fit");
    }
    this.aliased = aliased();
  }

  public int size() {
    return records.length;
  }

  /** How many fixed effects are estimated. */
  public int rank() {
    int rank = 0;
    for (boolean each : aliased) {
      rank += each ? 0 : 1;
    }
    return rank;
  }

  /** Whether a fixed effect follows from those before it and is left at 0. */
  public boolean isAliased(int column) {
    return aliased[column];
  }

  /**
   * The solution for given variances.
   *
   * @param variances one for each random effect, 0 to leave it out, and last the remainder's, above
   *     0
   */
  public Solution solve(double... variances) {
    return new Solution(this, variances);
  }

  /** Why the equations can't be solved in reasonable time and memory; empty where they can. */
  Optional<String> tooMuch() {
    boolean[] taken = new boolean[random.size()];
    Arrays.fill(taken, true);
    Layout layout = new Layout(this, taken);
    if (layout.size() <= FEW) {
      return Optional.empty();
    }
    double[] ratios = new double[random.size()];
    Arrays.fill(ratios, 1);
    return Filling.of(layout.equations(ratios)).tooMuch();
  }

  /** Columns of X that add nothing to those before, by elimination in X′·W·X. */
  private boolean[] aliased() {
    int columns = fixed.columns();
    double[][] square = new double[columns][columns];
    for (int row = 0; row < records.length; row++) {
      for (int i = fixed.start(row); i < fixed.end(row); i++) {
        for (int j = fixed.start(row); j < fixed.end(row); j++) {
          square[fixed.column(i)][fixed.column(j)] +=
              weights[row] * fixed.share(i) * fixed.share(j);
        }
      }
    }
    boolean[] left = new boolean[columns];
    double[] whole = new double[columns];
    Arrays.setAll(whole, k -> square[k][k]);
    for (int k = 0; k < columns; k++) {
      left[k] = square[k][k] <= NOTHING_LEFT * whole[k];
      if (!left[k]) {
        sweep(square, k);
      }
    }
    return left;
  }

  private static void sweep(double[][] square, int k) {
    for (int i = k + 1; i < square.length; i++) {
      double factor = square[i][k] / square[k][k];
      for (int j = k + 1; factor != 0 && j < square.length; j++) {
        square[i][j] -= factor * square[k][j];
      }
    }
  }
}
