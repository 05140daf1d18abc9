package slipday.genetics.parents;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The question with parts of any size and a price on what its limits count: v·x − Σλ·(x·Q·x′ − q).
 * For any λ ≥ 0 its best is no less than that of the question; the prices are set so that it is as
 * low as may be, and the limits are kept to.
 *
 * <p>With d the least eigenvalue of the priced matrix C = ΣλQ, x·C·x′ ≥ d·Σx² + 2·y·(C − d)·x′ −
 * y·(C − d)·y′ for any y; with y the best x itself that gives up nothing but what whole parts cost.
 * What is left is separable, and concave where d is 0 or more, as for all coancestries by descent.
 * For such as were stated and fit no descent d may be negative; x² ≤ m·x, with m the most parts,
 * then makes a line of it.
 */
final class Relaxed {
  private static final int CYCLES = 6;
  private static final int HALVINGS = 40;
  private static final int MOST_MOVES = 4_000;
  private static final double NEAR = 1e-9;

  final double[] best;
  final double[][] cost;

  /** The least eigenvalue of the cost, or a hair less; what is nearly 0 is 0. */
  final double diagonal;

  final double allowance;

  /** False where no parts of any size keep to the limit; true also where that isn't known. */
  final boolean possible;

  private final Question question;
  private final int n;
  private final double[] prices;

  Relaxed(Question question) {
    this.question = question;
    this.n = question.values().size();
    this.prices = new double[question.limits().size()];
    double[] x = begin();
    boolean kept = true;
    for (int cycle = 0; cycle < CYCLES && (cycle == 0 || prices.length > 1); cycle++) {
      kept = true;
      for (int k = 0; k < prices.length; k++) {
        kept &= price(k, x);
      }
    }
    this.cost = cost();
    climb(x, cost);
    this.best = x;
    this.diagonal = leastEigenvalue(cost);
    // Several limits are priced in turn, not together; below 0 the climb may end short of the best.
    this.possible = kept || prices.length > 1 || diagonal < 0;
    double sum = 0;
    for (int k = 0; k < prices.length; k++) {
      sum += prices[k] * question.limits().get(k).most();
    }
    this.allowance = sum;
  }

  /** As even as there is seed for. */
  private double[] begin() {
    double[] x = new double[n];
    double left = question.parts();
    for (int i = 0; i < n; i++) {
      x[i] = question.least().get(i);
      left -= x[i];
    }
    while (left > NEAR) {
      int free = 0;
      for (int i = 0; i < n; i++) {
        free += x[i] < question.most().get(i) - NEAR ? 1 : 0;
      }
      double each = left / free;
      for (int i = 0; i < n; i++) {
        double more = Math.min(each, question.most().get(i) - x[i]);
        x[i] += more;
        left -= more;
      }
    }
    return x;
  }

  /** The least price of a limit at which it is kept to; false where none does. */
  private boolean price(int k, double[] x) {
    Question.Limit limit = question.limits().get(k);
    prices[k] = 0;
    climb(x, cost());
    if (Swaps.quadratic(limit.matrix(), x) <= limit.most() + NEAR) {
      return true;
    }
    double high = 1e-3;
    while (over(k, high, x) && high < 1e9) {
      high *= 8;
    }
    boolean kept = high < 1e9;
    double low = 0;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (over(k, middle, x)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    prices[k] = high;
    return kept;
  }

  private boolean over(int k, double price, double[] x) {
    prices[k] = price;
    climb(x, cost());
    Question.Limit limit = question.limits().get(k);
    return Swaps.quadratic(limit.matrix(), x) > limit.most() + NEAR;
  }

  private double[][] cost() {
    double[][] sum = new double[n][n];
    for (int k = 0; k < prices.length; k++) {
      double[][] matrix = question.limits().get(k).matrix();
      for (int i = 0; i < n && prices[k] > 0; i++) {
        for (int j = 0; j < n; j++) {
          sum[i][j] += prices[k] * matrix[i][j];
        }
      }
    }
    return sum;
  }

  /** The best x for a cost: what stands worst gives to what stands best, as much as pays. */
  private void climb(double[] x, double[][] c) {
    double[] slope = new double[n];
    for (int i = 0; i < n; i++) {
      slope[i] = question.values().get(i);
      for (int j = 0; j < n; j++) {
        slope[i] -= 2 * c[i][j] * x[j];
      }
    }
    for (int move = 0; move < MOST_MOVES; move++) {
      int to = -1;
      int from = -1;
      for (int i = 0; i < n; i++) {
        boolean takes = x[i] < question.most().get(i) - NEAR;
        boolean gives = x[i] > question.least().get(i) + NEAR;
        to = takes && (to < 0 || slope[i] > slope[to]) ? i : to;
        from = gives && (from < 0 || slope[i] < slope[from]) ? i : from;
      }
      if (to < 0 || from < 0 || slope[to] - slope[from] < NEAR) {
        return;
      }
      double bend = 2 * (c[to][to] + c[from][from] - 2 * c[to][from]);
      double room = Math.min(x[from] - question.least().get(from), question.most().get(to) - x[to]);
      double step = bend > 0 ? Math.min(room, (slope[to] - slope[from]) / bend) : room;
      x[to] += step;
      x[from] -= step;
      for (int i = 0; i < n; i++) {
        slope[i] -= 2 * step * (c[i][to] - c[i][from]);
      }
    }
  }

  private static double leastEigenvalue(double[][] matrix) {
    int n = matrix.length;
    if (n == 0 || Arrays.stream(matrix).flatMapToDouble(Arrays::stream).allMatch(v -> v == 0)) {
      return 0;
    }
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, false, true);
    double largest = 0;
    for (double[] row : matrix) {
      largest = Math.max(largest, Arrays.stream(row).map(Math::abs).sum());
    }
    if (!eigen.decompose(new DMatrixRMaj(matrix))) {
      // No eigenvalue is beyond the largest sum of a row (Gershgorin's circles).
      return -largest;
    }
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      least = Math.min(least, eigen.getEigenvalue(i).getReal());
    }
    double hair = NEAR * Math.max(1, largest);
    // A hair less, so that rounding never cuts off the best.
    return least < -hair ? least - hair : Math.max(0, least - hair);
  }
}
