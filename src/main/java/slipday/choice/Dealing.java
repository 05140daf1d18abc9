package slipday.choice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import slipday.choice.Chooser.Eligible;
import slipday.genetics.Answer;
import slipday.genetics.Odds;
import slipday.genetics.parents.Choice;
import slipday.genetics.parents.Question;

/**
 * Deals the plants of the next generation out to fruits, as far as their seed goes: first only
 * plants that it is sure to give; where that is too little, one of every fruit as well; and where
 * it still is, one of every seed. Where even that is too little, fewer plants are dealt out, or
 * less evenly to the parents.
 */
final class Dealing {
  private final List<Eligible> eligible;
  private final Kin kin;
  private final List<Candidate> pool;
  private final Wish wish;
  private final FruitSeed seed;
  private final int parents;
  private final int plants;
  private final List<String> notes = new ArrayList<>();

  /**
   * @param pool all that may be parents
   * @param parents the fewest seed parents, no more than there are
   * @param plants as many as parents, or more
   */
  Dealing(
      List<Eligible> eligible,
      Kin kin,
      List<Candidate> pool,
      Wish wish,
      FruitSeed seed,
      int parents,
      int plants) {
    this.eligible = eligible;
    this.kin = kin;
    this.pool = pool;
    this.wish = wish;
    this.seed = seed;
    this.parents = parents;
    long there = 0;
    for (Eligible each : eligible) {
      there += each.fruit().seeds().orElse(plants);
    }
    this.plants = (int) Math.min(plants, there);
    if (there < plants) {
      notes.add(
          "Of all that may go on there "
              + (there == 1 ? "is 1 seed" : "are " + there + " seeds")
              + ", for "
              + Chooser.count(plants, "plant")
              + ": no more can be dealt out than "
              + this.plants
              + ".");
    }
  }

  /**
   * @param choice within the limits
   * @param free the best without them
   */
  record Dealt(Choice choice, Optional<Choice> free, int plants, List<String> notes) {}

  /** The best choice, or why there is none. */
  Answer<Dealt> best() {
    Answer<Dealt> last = Answer.refused("");
    for (List<Integer> most : mosts()) {
      boolean lastTry = most.equals(seeds());
      last = best(most, lastTry);
      if (last.value().isPresent()) {
        return last;
      }
    }
    return last.match(Answer::of, why -> Answer.refused(why + atBest() + binding()));
  }

  private Answer<Dealt> best(List<Integer> most, boolean lastTry) {
    double evenest = evenest(most);
    Question.Limit asked = Question.Limit.parents(parents, kin.mothers(), plants);
    boolean tooLittle = evenest > asked.most();
    if (tooLittle && !lastTry) {
      return Answer.refused("");
    }
    List<Question.Limit> limits = new ArrayList<>();
    limits.add(tooLittle ? new Question.Limit(asked.matrix(), evenest) : asked);
    wish.effectiveSize().ifPresent(n -> limits.add(kin.effectiveSize(n, plants)));
    wish.coancestry().ifPresent(c -> limits.add(kin.coancestry(c, plants)));
    Optional<Choice> free = Choice.best(question(most, List.of())).value();
    return Choice.best(question(most, limits))
        .match(
            choice -> Answer.of(new Dealt(choice, free, plants, told(choice, tooLittle))),
            Answer::refused);
  }

  /** The most plants of each fruit, ever less careful; each once. */
  private Set<List<Integer>> mosts() {
    Set<String> kept = Chooser.lower(wish.keep());
    List<Integer> sure = new ArrayList<>();
    List<Integer> one = new ArrayList<>();
    for (int i = 0; i < eligible.size(); i++) {
      int ofIt = seed.sure(eligible.get(i).fruit(), seeds().get(i));
      one.add(Math.max(1, ofIt));
      sure.add(Math.max(kept.contains(eligible.get(i).tag()) ? 1 : 0, ofIt));
    }
    Set<List<Integer>> mosts = new LinkedHashSet<>();
    for (List<Integer> most : List.of(sure, one)) {
      if (most.stream().mapToInt(Integer::intValue).sum() >= plants) {
        mosts.add(most);
      }
    }
    mosts.add(seeds());
    return mosts;
  }

  private List<Integer> seeds() {
    return eligible.stream().map(e -> Math.min(plants, e.fruit().seeds().orElse(plants))).toList();
  }

  private Question question(List<Integer> most, List<Question.Limit> limits) {
    Set<String> kept = Chooser.lower(wish.keep());
    List<Double> values = new ArrayList<>();
    List<Integer> least = new ArrayList<>();
    for (Eligible each : eligible) {
      values.add(each.fruit().index().orElse(0.0));
      least.add(kept.contains(each.tag()) ? 1 : 0);
    }
    return new Question(values, most, least, plants, limits);
  }

  /** Σx² over seed parents where the plants are dealt out to them as evenly as their seed goes. */
  private double evenest(List<Integer> most) {
    Map<Integer, Integer> room = new HashMap<>();
    for (int i = 0; i < most.size(); i++) {
      room.merge(kin.mothers().get(i), most.get(i), Integer::sum);
    }
    double squares = 0;
    List<Integer> rising = room.values().stream().sorted().toList();
    int left = plants;
    for (int i = 0; i < rising.size(); i++) {
      int given = Math.min(rising.get(i), left / (rising.size() - i));
      squares += (double) given * given;
      left -= given;
    }
    return squares;
  }

  /** What the seed is too little for, a sentence each. */
  private List<String> told(Choice choice, boolean uneven) {
    List<String> told = new ArrayList<>(notes);
    if (uneven) {
      told.add(
          "There is too little seed to deal "
              + Chooser.count(plants, "plant")
              + " out to "
              + Chooser.count(parents, "seed parent")
              + " used alike ("
              + usedUp(choice.parts())
              + "), so they are dealt as evenly as the seed goes.");
    }
    List<String> unsure = new ArrayList<>();
    List<String> left = new ArrayList<>();
    for (int i = 0; i < eligible.size(); i++) {
      Candidate.SeedFruit fruit = eligible.get(i).fruit();
      int given = choice.parts().get(i);
      if (given > 0) {
        scarce(fruit, given).ifPresent(unsure::add);
      } else if (fruit.index().orElse(Double.NEGATIVE_INFINITY) >= worst(choice)) {
        scarce(fruit, 1).ifPresent(left::add);
      }
    }
    if (!unsure.isEmpty()) {
      told.add(
          "Too little seed to count on the plants in 19 of 20 cases: "
              + String.join(", ", unsure)
              + ". Sow all of it, and be ready to make gaps up from the others.");
    }
    if (!left.isEmpty()) {
      told.add(
          "Left out for too little seed, though its value is no less: "
              + String.join(", ", left)
              + ". Sow it besides if there is room.");
    }
    return told;
  }

  /** What the worst of the chosen fruits is worth. */
  private double worst(Choice choice) {
    double worst = Double.POSITIVE_INFINITY;
    for (int i = 0; i < eligible.size(); i++) {
      if (choice.parts().get(i) > 0) {
        worst = Math.min(worst, eligible.get(i).fruit().index().orElse(worst));
      }
    }
    return worst;
  }

  /** A fruit whose seed can't be counted on for so many plants, in words. */
  private Optional<String> scarce(Candidate.SeedFruit fruit, int plants) {
    int toSow = seed.toSow(fruit, plants);
    return fruit
        .seeds()
        .filter(n -> n < toSow)
        .map(
            n ->
                fruit.fruit().tag()
                    + " ("
                    + Chooser.count(n, "seed")
                    + " for "
                    + Chooser.count(plants, "plant")
                    + ", "
                    + (toSow < Odds.MOST ? toSow + " to be sure" : "and hardly any comes up")
                    + ")");
  }

  private String usedUp(List<Integer> parts) {
    List<String> used = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Candidate.SeedFruit fruit = eligible.get(i).fruit();
      if (parts.get(i) > 0 && fruit.seeds().filter(parts.get(i)::equals).isPresent()) {
        used.add(fruit.fruit().tag() + " has " + Chooser.count(parts.get(i), "seed"));
      }
    }
    return String.join(", ", used);
  }

  /** What the limits could be at best, for somebody who asked for too much. */
  private String atBest() {
    Chosen.Kinship alike = kin.kinship(Collections.nCopies(eligible.size(), 1), pool);
    String size =
        wish.effectiveSize().isPresent()
            ? String.format(
                Locale.ROOT,
                " All used alike have an effective size of %.1f.",
                alike.effectiveSize())
            : "";
    return wish.coancestry().isPresent()
        ? size
            + String.format(
                Locale.ROOT, " All used alike have a mean coancestry of %.3f.", alike.coancestry())
        : size;
  }

  /** Which fruits have too little seed to be used alike. */
  private String binding() {
    Set<String> scarce = new TreeSet<>();
    for (Eligible each : eligible) {
      each.fruit()
          .seeds()
          .filter(n -> n < (plants + eligible.size() - 1) / eligible.size())
          .ifPresent(
              n -> scarce.add(each.fruit().fruit().tag() + " has " + Chooser.count(n, "seed")));
    }
    return scarce.isEmpty() ? "" : " Seed is scarce: " + String.join(", ", scarce) + ".";
  }
}
