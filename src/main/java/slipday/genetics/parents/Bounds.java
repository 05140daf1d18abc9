package slipday.genetics.parents;

import java.util.Arrays;

/**
 * What the candidates from a place in the order on can bring at most. For each place the undecided
 * among them are priced by a line that touches their cost where the relaxed best lies; what they
 * cost together with what was dealt already is told exactly, as a pull on each.
 */
final class Bounds {
  private static final double NOTHING = Double.NEGATIVE_INFINITY;

  private final Question question;
  private final Relaxed relaxed;
  private final int[] order;

  /** For each place: 2·(C − d)·y over those from there on, in order; and y·(C − d)·y′ of them. */
  private final double[][] slopes;

  private final double[] bends;
  private final double[] shares;
  private final int[] given;

  Bounds(Question question, Relaxed relaxed, int[] order) {
    this.question = question;
    this.relaxed = relaxed;
    this.order = order;
    this.slopes = new double[order.length + 1][order.length];
    this.bends = new double[order.length + 1];
    this.shares = new double[order.length + 1];
    this.given = new int[order.length];
    for (int from = order.length - 1; from >= 0; from--) {
      shares[from] = shares[from + 1] + relaxed.best[order[from]];
      for (int at = from; at < order.length; at++) {
        slopes[from][at] = slope(from, at);
        bends[from] += relaxed.best[order[at]] * slopes[from][at] / 2;
      }
    }
  }

  private double slope(int from, int at) {
    double sum = 0;
    for (int k = from; k < order.length; k++) {
      double cost = relaxed.cost[order[at]][order[k]] - (k == at ? relaxed.diagonal : 0);
      sum += 2 * cost * relaxed.best[order[k]];
    }
    return sum;
  }

  /** Value less price of all parts, so many of them of the candidate at a place. */
  double mostWith(int place, int parts) {
    double[] nothing = new double[question.values().size()];
    int i = order[place];
    double own =
        parts * (question.values().get(i) - slopes[0][place])
            - relaxed.diagonal * parts * (double) parts;
    nothing[i] = Double.POSITIVE_INFINITY;
    return own + most(0, question.parts() - parts, nothing, 1) + bends[0];
  }

  /** Value less price of the parts left, dealt to those from a place on. */
  double most(int from, int left, double[] pull) {
    if (left == 0) {
      return 0;
    }
    // The line may touch anywhere along the ray to the relaxed best; there it has as many parts.
    double t = shares[from] > 0 ? left / shares[from] : 0;
    return most(from, left, pull, t) + t * t * bends[from];
  }

  private double most(int from, int left, double[] pull, double t) {
    Arrays.fill(given, from, order.length, 0);
    double sum = 0;
    for (int part = 0; part < left; part++) {
      double most = NOTHING;
      int to = -1;
      for (int at = from; at < order.length; at++) {
        if (given[at] < question.most().get(order[at])) {
          double next =
              question.values().get(order[at])
                  - pull[order[at]]
                  - t * slopes[from][at]
                  - nextPart(order[at], given[at]);
          if (next > most) {
            most = next;
            to = at;
          }
        }
      }
      if (to < 0) {
        return NOTHING;
      }
      given[to]++;
      sum += most;
    }
    return sum;
  }

  /**
   * What the next part costs by the diagonal: its square, or where that is no cost a line above it.
   */
  private double nextPart(int i, int given) {
    return relaxed.diagonal
        * (relaxed.diagonal < 0
            ? Math.min(question.parts(), question.most().get(i))
            : 2 * given + 1);
  }
}
