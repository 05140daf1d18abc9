package slipday.choice;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.garden.Line;
import slipday.genetics.Aim;
import slipday.genetics.Regression;
import slipday.genetics.mixed.BreedingModel.Repeatability;

/**
 * The plants of a line that stood in one season, valued and ranked for what the line is bred for.
 *
 * @param year the season by its first year: the plan's, or else the last in which plants of the
 *     line were measured or marked
 * @param candidates by rank, then those that are refused
 * @param chosen how many plants the goal asks for at least; empty where it does not say
 * @param notes what is lacking, taken for granted or left aside, a sentence each
 */
public record Candidates(
    Line line,
    Optional<Goal> goal,
    int year,
    List<Study> traits,
    List<Candidate> candidates,
    Optional<Integer> chosen,
    List<String> notes) {
  public Candidates {
    traits = List.copyOf(traits);
    candidates = List.copyOf(candidates);
    notes = List.copyOf(notes);
  }

  /**
   * How one trait was valued.
   *
   * @param aim what the goal says of it, in its words; empty where it says nothing
   * @param wanted where the goal wants its figures and what distance from there matters, as the
   *     index counts it; empty where it says nothing
   * @param weight what it matters, for a standard deviation or as the goal weighs
   * @param plants how many candidates were measured
   * @param mean of their corrected means
   * @param deviation standard deviation among those
   * @param heritabilities of one fruit among the plants measured: one figure, or several where none
   *     is known
   * @param onParent of selfed plants on their parent, where both were measured
   * @param corrected what its figures are corrected for
   * @param together the goal's lines by which it was valued together with other traits; none where
   *     it was valued by itself
   * @param says how its heritability is known and what else to know, a sentence each
   */
  public record Study(
      Trait trait,
      Optional<String> aim,
      Optional<Aim> wanted,
      double weight,
      int plants,
      double mean,
      double deviation,
      Source source,
      List<Double> heritabilities,
      Optional<Repeatability> repeatability,
      Optional<Regression> onParent,
      Set<Correction> corrected,
      List<Effect> effects,
      List<Goal.Correlation> together,
      List<String> says) {
    public Study {
      heritabilities = List.copyOf(heritabilities);
      corrected = Set.copyOf(corrected);
      effects = List.copyOf(effects);
      together = List.copyOf(together);
      says = List.copyOf(says);
    }
  }

  /**
   * A correction that was made.
   *
   * @param of what was corrected for
   * @param level which; empty for an amount, then by one of it
   * @param beside the one it is a difference from; empty for an amount
   * @param estimate in the trait's unit
   * @param error its standard error
   */
  public record Effect(String of, String level, String beside, double estimate, double error) {}

  /** What an index is counted in, in words. */
  public String counted() {
    return switch (goal.map(Goal::weighing).orElse(Goal.Weighing.DEVIATION)) {
      case DEVIATION -> "in standard deviations times what each matters";
      case UNIT -> "in each trait's own unit times what that matters";
      case LACKING -> "weighed so that each trait gains by what it lacks";
    };
  }

  /**
   * The candidates of a line.
   *
   * @param line of the garden
   */
  public static Candidates of(Garden garden, Line line) {
    return new CandidateFinder(garden, line).find();
  }
}
