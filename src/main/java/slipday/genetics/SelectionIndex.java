package slipday.genetics;

import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Several traits as one figure: what a difference in each measured trait counts.
 *
 * <p>b = P⁻¹·G·a, which of all linear figures goes best with the worth of the breeding values (H.
 * F. Smith 1936, Annals of Eugenics 7:240; L. N. Hazel 1943, Genetics 28:476; from memory). With
 * aims given as gains and no weights, b = G⁻¹·d (J. Pesek and R. J. Baker 1969, Canadian Journal of
 * Plant Science 49:803, from memory).
 *
 * @param weights b, one for each trait, per unit of its figure
 * @param deviation standard deviation of the index among what is chosen from
 * @param accuracy correlation of the index with what it is to tell, 0 to 1; of a desired-gains
 *     index with its own weights as worth
 * @param gains what each trait's breeding value gains per unit of selection intensity
 */
public record SelectionIndex(
    List<Double> weights, double deviation, double accuracy, List<Double> gains) {
  private static final double SINGULAR = 1e-12;

  public SelectionIndex {
    weights = List.copyOf(weights);
    gains = List.copyOf(gains);
  }

  /**
   * The Smith–Hazel index.
   *
   * @param phenotypic P, variances and covariances of what was measured
   * @param genetic G, those of the breeding values of the same traits
   * @param worth a, what a unit of each breeding value is worth
   * @return refused where two traits say the same, so that P has no inverse, or where G is no
   *     matrix of variances
   */
  public static Answer<SelectionIndex> smithHazel(
      double[][] phenotypic, double[][] genetic, double[] worth) {
    DMatrixRMaj p = square(phenotypic, worth.length);
    DMatrixRMaj g = square(genetic, worth.length);
    DMatrixRMaj a = column(worth);
    DMatrixRMaj ga = new DMatrixRMaj(worth.length, 1);
    CommonOps_DDRM.mult(g, a, ga);
    return solved(p, ga).then(b -> index(b, a, p, g));
  }

  /**
   * The index that gains the traits in the proportion asked for.
   *
   * @param desired d, the gain wanted in each trait, in its unit
   * @return refused where the breeding values of two traits can't be told apart
   */
  public static Answer<SelectionIndex> desiredGains(
      double[][] phenotypic, double[][] genetic, double[] desired) {
    DMatrixRMaj p = square(phenotypic, desired.length);
    DMatrixRMaj g = square(genetic, desired.length);
    if (Arrays.stream(desired).allMatch(d -> d == 0)) {
      return Answer.refused("No gain is asked for.");
    }
    return solved(g, column(desired)).then(b -> index(b, b, p, g));
  }

  /** What a unit of each trait is worth where its worth is told per standard deviation. */
  public static double[] perUnit(double[] worthPerDeviation, double[] deviations) {
    double[] worth = new double[worthPerDeviation.length];
    for (int i = 0; i < worth.length; i++) {
      if (!(deviations[i] > 0)) {
        throw new IllegalArgumentException("a standard deviation of " + deviations[i]);
      }
      worth[i] = worthPerDeviation[i] / deviations[i];
    }
    return worth;
  }

  /** The index of one set of figures, each as its difference from the mean. */
  public double of(double[] differences) {
    double sum = 0;
    for (int i = 0; i < differences.length; i++) {
      sum += weights.get(i) * differences[i];
    }
    return sum;
  }

  /**
   * @param worth what a unit of each breeding value is worth
   */
  private static Answer<SelectionIndex> index(
      DMatrixRMaj b, DMatrixRMaj worth, DMatrixRMaj p, DMatrixRMaj g) {
    DMatrixRMaj gb = new DMatrixRMaj(b.numRows, 1);
    CommonOps_DDRM.mult(g, b, gb);
    double variance = quadratic(b, p);
    double goal = quadratic(worth, g);
    if (!(variance > 0) || !(goal > 0)) {
      return Answer.refused("Nothing that matters varies from one breeding value to another.");
    }
    double deviation = Math.sqrt(variance);
    double accuracy = CommonOps_DDRM.dot(worth, gb) / (deviation * Math.sqrt(goal));
    CommonOps_DDRM.divide(gb, deviation);
    return Answer.of(new SelectionIndex(list(b), deviation, Math.min(1, accuracy), list(gb)));
  }

  private static Answer<DMatrixRMaj> solved(DMatrixRMaj matrix, DMatrixRMaj right) {
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(matrix.numRows);
    DMatrixRMaj copy = matrix.copy();
    if (!solver.setA(copy) || solver.quality() < SINGULAR) {
      return Answer.refused(
          "Two of the traits say the same, so their weights can't be told apart; leave one out.");
    }
    DMatrixRMaj x = new DMatrixRMaj(right.numRows, 1);
    solver.solve(right, x);
    return Answer.of(x);
  }

  private static double quadratic(DMatrixRMaj x, DMatrixRMaj matrix) {
    DMatrixRMaj mx = new DMatrixRMaj(x.numRows, 1);
    CommonOps_DDRM.mult(matrix, x, mx);
    return CommonOps_DDRM.dot(x, mx);
  }

  private static DMatrixRMaj square(double[][] rows, int size) {
    DMatrixRMaj matrix = new DMatrixRMaj(rows);
    if (matrix.numRows != size || matrix.numCols != size) {
      throw new IllegalArgumentException(
          matrix.numRows + " by " + matrix.numCols + " for " + size + " traits");
    }
    return matrix;
  }

  private static DMatrixRMaj column(double[] values) {
    return DMatrixRMaj.wrap(values.length, 1, values.clone());
  }

  private static List<Double> list(DMatrixRMaj column) {
    return Arrays.stream(column.data).limit(column.numRows).boxed().toList();
  }
}
