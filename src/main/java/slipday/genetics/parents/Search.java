package slipday.genetics.parents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Depth first through the candidates, the most promising first, cutting off what can't be best. */
final class Search {
  private static final double HAIR = 1e-9;

  private final Question question;
  private final Relaxed relaxed;
  private final int mostLookedAt;
  private final int[] dealt;
  private final double[] pull;
  private final double[][] reach;
  private final double[] counted;
  private final int[] order;
  private final Bounds bounds;
  private Optional<int[]> best = Optional.empty();
  private double bestValue = Double.NEGATIVE_INFINITY;
  private double open = Double.NEGATIVE_INFINITY;
  private double root = Double.POSITIVE_INFINITY;
  private int lookedAt;

  Search(Question question, int mostLookedAt) {
    this.question = question;
    this.mostLookedAt = mostLookedAt;
    this.relaxed = new Relaxed(question);
    int n = question.values().size();
    this.dealt = new int[n];
    this.pull = new double[n];
    this.reach = new double[question.limits().size()][n];
    this.counted = new double[question.limits().size()];
    new Swaps(question).best(relaxed.best).forEach(this::keep);
    this.order = promising();
    this.bounds = new Bounds(question, relaxed, order);
  }

  /** The best parts; empty where none was found. */
  Optional<int[]> run() {
    if (relaxed.possible) {
      root = relaxed.allowance + bounds.most(0, question.parts(), pull);
      deal(0, question.parts(), relaxed.allowance);
    }
    return best;
  }

  /** No choice is better than this. */
  double bound() {
    return Math.max(bestValue, Math.min(open, root));
  }

  double value() {
    return bestValue;
  }

  /** Whether choices were left unseen that may be better. */
  boolean wasCutShort() {
    return open > Double.NEGATIVE_INFINITY;
  }

  private void keep(int[] choice) {
    double value = 0;
    for (int i = 0; i < choice.length; i++) {
      value += choice[i] * question.values().get(i);
    }
    if (value > bestValue + HAIR) {
      bestValue = value;
      best = Optional.of(choice.clone());
    }
  }

  /** Those that could be in a better choice than the best known, the most promising first. */
  private int[] promising() {
    int n = dealt.length;
    int[] all = IntStream.range(0, n).toArray();
    Bounds whole = new Bounds(question, relaxed, all);
    List<Integer> kept = new ArrayList<>();
    for (int i : all) {
      if (question.least().get(i) > 0 || withOne(whole, i) > bestValue + HAIR) {
        kept.add(i);
      }
    }
    kept.sort(
        Comparator.comparingDouble((Integer i) -> -relaxed.best[i])
            .thenComparingDouble(i -> -question.values().get(i)));
    return kept.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The most of any choice with a part of a candidate. */
  private double withOne(Bounds whole, int i) {
    int most = Math.min(question.parts(), question.most().get(i));
    double bound = Double.NEGATIVE_INFINITY;
    for (int parts = 1; parts <= most; parts++) {
      bound = Math.max(bound, whole.mostWith(i, parts));
    }
    return relaxed.allowance + bound;
  }

  private void deal(int at, int left, double score) {
    if (left == 0) {
      finish(at);
      return;
    }
    if (at == order.length) {
      return;
    }
    int i = order[at];
    for (int give : gives(i, left)) {
      double after =
          score + give * (question.values().get(i) - pull[i]) - relaxed.cost[i][i] * give * give;
      give(i, give);
      double bound = fits() ? after + bounds.most(at + 1, left - give, pull) : bestValue;
      if (bound > bestValue + HAIR) {
        if (lookedAt >= mostLookedAt) {
          open = Math.max(open, bound);
        } else {
          lookedAt++;
          deal(at + 1, left - give, after);
        }
      }
      give(i, -give);
    }
  }

  /** The parts a candidate may give, those nearest to the relaxed best first. */
  private int[] gives(int i, int left) {
    int least = question.least().get(i);
    int most = Math.min(left, question.most().get(i));
    return IntStream.rangeClosed(least, most)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer give) -> Math.abs(give - relaxed.best[i])))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** Adds parts of a candidate: to the price of every other, and to what each limit counts. */
  private void give(int i, int more) {
    if (more == 0) {
      return;
    }
    for (int k = 0; k < counted.length; k++) {
      double[] row = question.limits().get(k).matrix()[i];
      counted[k] += more * (2 * reach[k][i] + more * row[i]);
      for (int j : order) {
        reach[k][j] += more * row[j];
      }
    }
    for (int j : order) {
      pull[j] += 2 * more * relaxed.cost[i][j];
    }
    dealt[i] += more;
  }

  private boolean fits() {
    for (int k = 0; k < counted.length; k++) {
      double most = question.limits().get(k).most();
      if (counted[k] > most + HAIR * Math.max(1, most)) {
        return false;
      }
    }
    return true;
  }

  private void finish(int at) {
    for (int k = at; k < order.length; k++) {
      if (question.least().get(order[k]) > 0) {
        return;
      }
    }
    if (fits()) {
      keep(dealt);
    }
  }
}
