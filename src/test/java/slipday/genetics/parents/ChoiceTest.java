package slipday.genetics.parents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import slipday.genetics.Answer;
import slipday.genetics.EffectiveSize;
import slipday.genetics.Pedigree;

class ChoiceTest {
  private static Choice best(Question question) {
    return Choice.best(question).value().orElseThrow();
  }

  private static List<Integer> times(int n, int value) {
    return Collections.nCopies(n, value);
  }

  private static double[][] identity(int n) {
    double[][] matrix = new double[n][n];
    for (int i = 0; i < n; i++) {
      matrix[i][i] = 1;
    }
    return matrix;
  }

  private static Question four(List<Question.Limit> limits) {
    return new Question(List.of(1.0, 4.0, 3.0, 2.0), times(4, 8), times(4, 0), 8, limits);
  }

  @Test
  void withoutLimitsTheBestGivesAll() {
    Choice choice = best(four(List.of()));
    assertThat(choice.parts()).containsExactly(0, 8, 0, 0);
    assertThat(choice.value()).isEqualTo(4);
    assertThat(choice.unlimited()).isEqualTo(4);
    assertThat(choice.proved()).isTrue();
  }

  /** Two parents alike give half each; what that costs against the one best is told. */
  @Test
  void aFloorOnParentsDealsAlike() {
    Question.Limit two = Question.Limit.parents(2, List.of(0, 1, 2, 3), 8);
    Choice choice =
        best(new Question(List.of(1.0, 4.0, 3.5, 2.0), times(4, 8), times(4, 0), 8, List.of(two)));
    assertThat(choice.parts()).containsExactly(0, 4, 4, 0);
    assertThat(choice.value()).isEqualTo(3.75);
    assertThat(choice.unlimited() - choice.value()).isEqualTo(0.25);
    assertThat(choice.used()).containsExactly(32.0);
  }

  /** Fruits of one plant are one parent: four fruits of two plants are two parents. */
  @Test
  void fruitsOfOnePlantAreOneParent() {
    Question.Limit two = Question.Limit.parents(2, List.of(0, 1, 1, 0), 8);
    Choice choice = best(four(List.of(two)));
    assertThat(choice.parts().get(1) + choice.parts().get(2)).isEqualTo(4);
    assertThat(choice.parts().get(0) + choice.parts().get(3)).isEqualTo(4);
    assertThat(choice.value()).isEqualTo(3);
  }

  @Test
  void seedThatThereIsNotCannotBeSown() {
    Question few =
        new Question(List.of(1.0, 4.0, 3.0, 2.0), List.of(8, 2, 1, 8), times(4, 0), 8, List.of());
    assertThat(best(few).parts()).containsExactly(0, 2, 1, 5);
    Question refused = new Question(List.of(1.0, 4.0), List.of(8, 0), times(2, 0), 8, List.of());
    assertThat(best(refused).parts()).containsExactly(8, 0);
  }

  @Test
  void whatIsKeptIsKept() {
    Question kept =
        new Question(List.of(1.0, 4.0, 3.0), times(3, 8), List.of(1, 0, 0), 8, List.of());
    assertThat(best(kept).parts()).containsExactly(1, 7, 0);
  }

  /** Of two sibs and a stranger, the cap leaves the second-best sib behind. */
  @Test
  void aCapOnCoancestryPassesOverASib() {
    Pedigree.Builder pedigree = Pedigree.begin(0);
    int a = pedigree.founder("a", 0);
    int b = pedigree.founder("b", 0);
    int c = pedigree.founder("c", 0);
    int d = pedigree.founder("d", 0);
    int one = pedigree.offspring("one", a, b);
    int sib = pedigree.offspring("sib", a, b);
    int stranger = pedigree.offspring("stranger", c, d);
    Pedigree built = pedigree.build();
    int[] plants = {one, sib, stranger};
    double[][] kin = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        kin[i][j] = built.coancestry(plants[i], plants[j]);
      }
    }
    Question.Limit alike = Question.Limit.parents(2, List.of(0, 1, 2), 10);
    List<Double> values = List.of(3.0, 2.9, 1.0);
    Question free = new Question(values, times(3, 10), times(3, 0), 10, List.of(alike));
    assertThat(best(free).parts()).containsExactly(5, 5, 0);
    Question capped =
        new Question(
            values,
            times(3, 10),
            times(3, 0),
            10,
            List.of(alike, Question.Limit.coancestry(0.26, kin, 10)));
    Choice choice = best(capped);
    assertThat(choice.parts()).containsExactly(4, 4, 2);
    assertThat(choice.used().get(1) / 100).isLessThanOrEqualTo(0.26);
  }

  @Test
  void anEffectiveSizeIsKeptTo() {
    int parts = 20;
    Question.Limit size = Question.Limit.effectiveSize(3, identity(4), parts);
    Choice choice =
        best(
            new Question(
                List.of(1.0, 4.0, 3.0, 2.0), times(4, 20), times(4, 0), parts, List.of(size)));
    List<Double> shares = choice.parts().stream().map(p -> (double) p).toList();
    assertThat(EffectiveSize.fromShares(shares)).isGreaterThanOrEqualTo(3);
    assertThat(choice.parts().get(1)).isGreaterThan(choice.parts().get(3));
  }

  @Test
  void whatCannotBeIsSaid() {
    Question noSeed = new Question(List.of(1.0, 2.0), List.of(2, 3), times(2, 0), 8, List.of());
    assertThat(Choice.best(noSeed).refusal())
        .contains("There is seed for 5 of 8 parts among what may be chosen.");
    Question.Limit many = Question.Limit.effectiveSize(5, identity(2), 8);
    Question tooFew = new Question(List.of(1.0, 2.0), times(2, 8), times(2, 0), 8, List.of(many));
    assertThat(Choice.best(tooFew).refusal())
        .contains("No choice of what is there keeps to the limits.");
    Question refusedKept =
        new Question(List.of(1.0, 2.0), List.of(8, 0), List.of(0, 1), 8, List.of());
    assertThat(Choice.best(refusedKept).refusal()).isPresent();
    Question allKept = new Question(List.of(1.0, 2.0), times(2, 8), times(2, 5), 8, List.of());
    assertThat(Choice.best(allKept).refusal()).contains("More is to be kept than there are parts.");
    assertThatThrownBy(() -> new Question(List.of(1.0), times(2, 1), times(1, 0), 4, List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** No descent makes such coancestries, but they may be stated; what keeps to them is found. */
  @Test
  void coancestriesThatFitNoDescentAreKeptTo() {
    double[][] kin = {
      {0.75, 0.50, 0.25, 0.50, 0.25},
      {0.50, 0.75, 0.25, 0.50, 0.75},
      {0.25, 0.25, 0.75, 0.75, 0.50},
      {0.50, 0.50, 0.75, 0.75, 0.25},
      {0.25, 0.75, 0.50, 0.25, 0.75}
    };
    Question question =
        new Question(
            List.of(-0.43, -1.33, -0.81, -0.19, -0.41),
            List.of(0, 2, 2, 1, 2),
            times(5, 0),
            4,
            List.of(Question.Limit.coancestry(8.55 / 16, kin, 4)));
    assertThat(best(question).parts()).containsExactly(0, 2, 2, 0, 0);
  }

  /** Against every choice there is, one by one. */
  @Property(tries = 400)
  void noChoiceIsBetter(
      @ForAll @IntRange(min = 1, max = 1_000_000) int seed,
      @ForAll @IntRange(min = 2, max = 6) int n,
      @ForAll @IntRange(min = 1, max = 7) int parts) {
    Question question = drawn(new Random(seed), n, parts);
    double[] best = {Double.NEGATIVE_INFINITY};
    everyChoice(question, new int[n], 0, parts, best);
    Answer<Choice> answer = Choice.best(question);
    if (Double.isInfinite(best[0])) {
      assertThat(answer.refusal()).isPresent();
      return;
    }
    Choice choice = answer.value().orElseThrow();
    assertThat(choice.proved()).isTrue();
    assertThat(choice.value()).isCloseTo(best[0] / parts, within(1e-9));
    assertThat(choice.unlimited()).isGreaterThanOrEqualTo(choice.value() - 1e-9);
    assertThat(choice.parts().stream().mapToInt(Integer::intValue).sum()).isEqualTo(parts);
  }

  /** Cut short it still names a bound that holds. */
  @Property(tries = 200)
  void cutShortItsBoundHolds(@ForAll @IntRange(min = 1, max = 1_000_000) int seed) {
    Question question = drawn(new Random(seed), 6, 6);
    Answer<Choice> whole = Choice.best(question);
    Answer<Choice> cut = Choice.best(question, 3);
    if (whole.value().isEmpty() || cut.value().isEmpty()) {
      return;
    }
    double best = whole.value().get().value();
    assertThat(cut.value().get().value()).isLessThanOrEqualTo(best + 1e-9);
    assertThat(cut.value().get().bound()).isGreaterThanOrEqualTo(best - 1e-9);
    assertThat(Choice.best(question)).isEqualTo(whole);
  }

  /** A few plants out of few families, with whatever seed and limits come up. */
  static Question drawn(Random random, int n, int parts) {
    List<Double> values = new ArrayList<>();
    List<Integer> most = new ArrayList<>();
    List<Integer> least = new ArrayList<>();
    List<Integer> mothers = new ArrayList<>();
    int[] family = new int[n];
    for (int i = 0; i < n; i++) {
      values.add(Math.round(random.nextGaussian() * 100) / 100.0);
      most.add(random.nextInt(5) == 0 ? 0 : 1 + random.nextInt(parts));
      least.add(random.nextInt(12) == 0 ? 1 : 0);
      mothers.add(random.nextInt(n));
      family[i] = random.nextInt(3);
    }
    // As by descent where families don't count within a mother's; else as no descent can make them.
    boolean descent = random.nextBoolean();
    double[][] kin = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        boolean same = mothers.get(i).equals(mothers.get(j));
        int one = descent ? mothers.get(i) % 3 : family[i];
        int other = descent ? mothers.get(j) % 3 : family[j];
        kin[i][j] = i == j || same ? 0.75 : one == other ? 0.5 : 0.25;
      }
    }
    List<Question.Limit> limits = new ArrayList<>();
    if (random.nextBoolean()) {
      limits.add(Question.Limit.parents(1 + random.nextInt(3), mothers, parts));
    }
    if (random.nextBoolean()) {
      limits.add(Question.Limit.coancestry(0.4 + random.nextDouble() * 0.3, kin, parts));
    }
    return new Question(values, most, least, parts, limits);
  }

  private static void everyChoice(Question q, int[] x, int at, int left, double[] best) {
    if (at == x.length) {
      if (left == 0
          && q.limits().stream().allMatch(l -> Swaps.quadratic(l.matrix(), x) <= l.most() + 1e-9)) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
          sum += x[i] * q.values().get(i);
        }
        best[0] = Math.max(best[0], sum);
      }
      return;
    }
    for (x[at] = q.least().get(at); x[at] <= Math.min(left, q.most().get(at)); x[at]++) {
      everyChoice(q, x, at + 1, left - x[at], best);
    }
    x[at] = 0;
  }
}
