package slipday.genetics.parents;

import java.util.ArrayList;
import java.util.List;

/**
 * A good choice within the limits to begin with: parts are moved from one candidate to another as
 * long as that keeps better to the limits, and then as long as it is worth more.
 */
final class Swaps {
  private static final double HAIR = 1e-9;
  private static final int MOST_ROUNDS = 2_000;

  private final Question question;
  private final int n;

  Swaps(Question question) {
    this.question = question;
    this.n = question.values().size();
  }

  static double quadratic(double[][] matrix, int[] x) {
    return quadratic(matrix, java.util.Arrays.stream(x).asDoubleStream().toArray());
  }

  static double quadratic(double[][] matrix, double[] x) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      if (x[i] != 0) {
        double row = 0;
        for (int j = 0; j < x.length; j++) {
          row += matrix[i][j] * x[j];
        }
        sum += x[i] * row;
      }
    }
    return sum;
  }

  /**
   * Choices within the limits, found from an even one and from one near the relaxed best.
   *
   * @param relaxed parts of any size
   */
  List<int[]> best(double[] relaxed) {
    List<int[]> found = new ArrayList<>();
    for (int[] x : List.of(begin(), rounded(relaxed))) {
      for (int round = 0; round < MOST_ROUNDS && move(x); round++) {}
      if (over(x) <= HAIR) {
        found.add(x);
      }
    }
    return found;
  }

  /** Whole parts near these, the largest remainders rounded up. */
  private int[] rounded(double[] relaxed) {
    int[] x = new int[n];
    double[] rest = new double[n];
    int left = question.parts();
    for (int i = 0; i < n; i++) {
      x[i] = (int) Math.max(question.least().get(i), Math.floor(relaxed[i] + HAIR));
      rest[i] = relaxed[i] - x[i];
      left -= x[i];
    }
    for (; left > 0; left--) {
      int most = -1;
      for (int i = 0; i < n; i++) {
        boolean free = x[i] < question.most().get(i);
        most = free && (most < 0 || rest[i] > rest[most]) ? i : most;
      }
      x[most]++;
      rest[most]--;
    }
    return x;
  }

  /** What is to be kept, and then round by round a part of each, best first. */
  private int[] begin() {
    int[] x = new int[n];
    int left = question.parts();
    for (int i = 0; i < n; i++) {
      x[i] = question.least().get(i);
      left -= x[i];
    }
    Integer[] byValue = new Integer[n];
    for (int i = 0; i < n; i++) {
      byValue[i] = i;
    }
    java.util.Arrays.sort(
        byValue, java.util.Comparator.comparingDouble(i -> -question.values().get(i)));
    while (left > 0) {
      for (int k = 0; k < n && left > 0; k++) {
        int i = byValue[k];
        if (x[i] < question.most().get(i)) {
          x[i]++;
          left--;
        }
      }
    }
    return x;
  }

  private double over(int[] x) {
    double sum = 0;
    for (Question.Limit limit : question.limits()) {
      double over = quadratic(limit.matrix(), x) - limit.most();
      sum += Math.max(0, over) / Math.max(1, limit.most());
    }
    return sum;
  }

  /** Moves the one part whose move is best; false where none is better. */
  private boolean move(int[] x) {
    double[][] marginal = marginals(x);
    double[] now = new double[marginal.length];
    for (int k = 0; k < now.length; k++) {
      now[k] = quadratic(question.limits().get(k).matrix(), x);
    }
    double overNow = over(x);
    double bestOver = overNow;
    double bestGain = 0;
    int from = -1;
    int to = -1;
    for (int i = 0; i < n; i++) {
      if (x[i] <= question.least().get(i)) {
        continue;
      }
      for (int j = 0; j < n; j++) {
        if (j == i || x[j] >= question.most().get(j)) {
          continue;
        }
        double gain = question.values().get(j) - question.values().get(i);
        double over = over(marginal, now, i, j);
        boolean better =
            over < bestOver - HAIR || (over <= bestOver + HAIR && gain > bestGain + HAIR);
        if (better && (over < overNow - HAIR || gain > HAIR)) {
          bestOver = over;
          bestGain = gain;
          from = i;
          to = j;
        }
      }
    }
    if (from < 0) {
      return false;
    }
    x[from]--;
    x[to]++;
    return true;
  }

  /** Q·x for each limit. */
  private double[][] marginals(int[] x) {
    double[][] marginal = new double[question.limits().size()][n];
    for (int k = 0; k < marginal.length; k++) {
      double[][] matrix = question.limits().get(k).matrix();
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          marginal[k][i] += matrix[i][j] * x[j];
        }
      }
    }
    return marginal;
  }

  private double over(double[][] marginal, double[] now, int from, int to) {
    double sum = 0;
    for (int k = 0; k < now.length; k++) {
      Question.Limit limit = question.limits().get(k);
      double[][] q = limit.matrix();
      double then =
          now[k]
              + 2 * (marginal[k][to] - marginal[k][from])
              + q[from][from]
              + q[to][to]
              - 2 * q[from][to];
      sum += Math.max(0, then - limit.most()) / Math.max(1, limit.most());
    }
    return sum;
  }
}
