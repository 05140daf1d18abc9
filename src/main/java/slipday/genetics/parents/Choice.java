package slipday.genetics.parents;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slipday.genetics.Answer;

/**
 * The best choice of parents within the limits.
 *
 * @param parts how many of the parts each candidate gives
 * @param value the mean value of what is chosen
 * @param bound no choice within the limits is better than this, by what was searched
 * @param proved whether that is the value itself, so that this is the best there is
 * @param unlimited the mean value of the best choice without limits: what these cost is the
 *     difference
 * @param used what of each limit is used: its left side
 */
public record Choice(
    List<Integer> parts,
    double value,
    double bound,
    boolean proved,
    double unlimited,
    List<Double> used) {
  /** Choices looked at before the search ends without a proof. */
  public static final int MOST_LOOKED_AT = 150_000;

  private static final double HAIR = 1e-9;

  public Choice {
    parts = List.copyOf(parts);
    used = List.copyOf(used);
  }

  /**
   * The best choice, by branch and bound. The bound relaxes the limits by Lagrange's multipliers
   * (M. L. Fisher 1981, Management Science 27:1, from memory) and touches their cost, which is
   * convex, by a plane; the search goes through all the rest. The same question has the same
   * answer, every time.
   *
   * @return refused where nothing can be chosen, or no choice keeps to the limits
   */
  public static Answer<Choice> best(Question question) {
    return best(question, MOST_LOOKED_AT);
  }

  static Answer<Choice> best(Question question, int mostLookedAt) {
    int there = question.most().stream().mapToInt(m -> Math.min(m, question.parts())).sum();
    if (there < question.parts()) {
      return Answer.refused(
          "There is seed for "
              + there
              + " of "
              + question.parts()
              + " parts among what may be chosen.");
    }
    for (int i = 0; i < question.values().size(); i++) {
      if (question.least().get(i) > question.most().get(i)) {
        return Answer.refused("What is to be kept has no seed, or is refused.");
      }
    }
    if (question.least().stream().mapToInt(Integer::intValue).sum() > question.parts()) {
      return Answer.refused("More is to be kept than there are parts.");
    }
    Merged merged = Merged.of(question);
    Search search = new Search(merged.question(), mostLookedAt);
    Optional<int[]> parts = search.run();
    if (parts.isEmpty()) {
      return Answer.refused(
          search.wasCutShort()
              ? "No choice within the limits was found among the " + mostLookedAt + " looked at."
              : "No choice of what is there keeps to the limits.");
    }
    return Answer.of(choice(question, merged.dealt(parts.get(), question), search));
  }

  private static Choice choice(Question question, int[] dealt, Search search) {
    double parts = question.parts();
    double gap = search.bound() - search.value();
    return new Choice(
        IntStream.of(dealt).boxed().toList(),
        search.value() / parts,
        search.bound() / parts,
        gap <= HAIR * Math.max(1, Math.abs(search.value())),
        unlimited(question) / parts,
        question.limits().stream().map(l -> Swaps.quadratic(l.matrix(), dealt)).toList());
  }

  /** All parts to the best of what is there, whatever the limits. */
  private static double unlimited(Question question) {
    int[] byValue =
        IntStream.range(0, question.values().size())
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> -question.values().get(i)))
            .mapToInt(Integer::intValue)
            .toArray();
    int left = question.parts();
    double sum = 0;
    for (int i : byValue) {
      int give = Math.min(left, question.most().get(i));
      sum += give * question.values().get(i);
      left -= give;
    }
    return sum;
  }
}
