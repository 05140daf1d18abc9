package slipday.language;

import static slipday.language.Declaration.GOAL;

import java.util.List;
import java.util.Set;

/** The clauses of a goal that say how its traits are inherited and weighed. */
public final class GoalClauses {
  public static final Clause HERITABILITY =
      Clause.many(
          Set.of(GOAL),
          "heritability: <phrase:trait> <number:heritability> of"
              + " (unit: a fruit | plant means | plot means)[ of <count:plants> plants]"
              + "[ of <count:fruits> fruits]"
              + ", in <species>, <generation>",
          "What share of the differences in a trait is breeding value: of what it was found, and"
              + " among which plants; of plot means, of how many plants a plot. Without it the record is"
              + " asked.",
          "heritability sweetness 0.4 of plant means of 3 fruits, in melon, F2");
  public static final Clause CORRELATION =
      Clause.many(
          Set.of(GOAL),
          "genetic correlation: <number:correlation> of <phrase:trait>, <phrase:other>",
          "How far the breeding values of two traits go together, from -1 to 1. Traits that do are"
              + " valued together, each told by the others too.",
          "genetic correlation -0.3 of sweetness, fruit weight");
  public static final Clause ENVIRONMENTAL_CORRELATION =
      Clause.many(
          Set.of(GOAL),
          "environmental correlation: <number:correlation> of <phrase:trait>, <phrase:other>",
          "How far what is not inherited goes together in two traits, of plants and of single fruits"
              + " alike, from -1 to 1; 0 where nothing is said.",
          "environmental correlation 0.2 of sweetness, fruit weight");

  public static final Clause WEIGHTS =
      Clause.once(
          Set.of(GOAL),
          "weights: (how: per standard deviation | per unit | by what is lacking)",
          "What `matters` is told for: a standard deviation of the plants, if nothing is said; a unit"
              + " of the trait; or nothing, where every trait is to gain by what it lacks.",
          "weights per unit");

  static final List<Clause> ALL =
      List.of(HERITABILITY, CORRELATION, ENVIRONMENTAL_CORRELATION, WEIGHTS);

  private GoalClauses() {}
}
