package slipday.genetics.parents;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The question with candidates that are alike in all that counts taken as one: fruits of one selfed
 * plant, above all. Whoever gives a part of them is the same, so they are dealt in the order they
 * stand in.
 */
record Merged(Question question, List<List<Integer>> groups) {

  static Merged of(Question whole) {
    List<List<Integer>> groups = new ArrayList<>();
    for (int i = 0; i < whole.values().size(); i++) {
      int one = i;
      if (whole.most().get(i) == 0) {
        continue;
      }
      groups.stream()
          .filter(g -> areAlike(whole, g.get(0), one))
          .findFirst()
          .ifPresentOrElse(
              g -> g.add(one), () -> groups.add(new ArrayList<>(Collections.singletonList(one))));
    }
    return new Merged(smaller(whole, groups), groups);
  }

  private static boolean areAlike(Question q, int i, int j) {
    if (!q.values().get(i).equals(q.values().get(j)) || q.least().get(i) + q.least().get(j) > 0) {
      return false;
    }
    for (Question.Limit limit : q.limits()) {
      double[][] m = limit.matrix();
      for (int k = 0; k < m.length; k++) {
        if (m[i][k] != m[j][k]) {
          return false;
        }
      }
    }
    return true;
  }

  private static Question smaller(Question whole, List<List<Integer>> groups) {
    List<Double> values = new ArrayList<>();
    List<Integer> most = new ArrayList<>();
    List<Integer> least = new ArrayList<>();
    for (List<Integer> group : groups) {
      values.add(whole.values().get(group.get(0)));
      least.add(whole.least().get(group.get(0)));
      int there = group.stream().mapToInt(i -> Math.min(whole.parts(), whole.most().get(i))).sum();
      most.add(Math.min(whole.parts(), there));
    }
    List<Question.Limit> limits = new ArrayList<>();
    for (Question.Limit limit : whole.limits()) {
      double[][] matrix = new double[groups.size()][groups.size()];
      for (int i = 0; i < matrix.length; i++) {
        for (int j = 0; j < matrix.length; j++) {
          matrix[i][j] = limit.matrix()[groups.get(i).get(0)][groups.get(j).get(0)];
        }
      }
      limits.add(new Question.Limit(matrix, limit.most()));
    }
    return new Question(values, most, least, whole.parts(), limits);
  }

  /** The parts of the whole question's candidates. */
  int[] dealt(int[] parts, Question whole) {
    int[] dealt = new int[whole.values().size()];
    for (int g = 0; g < parts.length; g++) {
      int left = parts[g];
      for (int i : groups.get(g)) {
        dealt[i] = Math.min(left, whole.most().get(i));
        left -= dealt[i];
      }
    }
    return dealt;
  }
}
