package slipday.odds;

import java.util.ArrayList;
import java.util.List;
import slipday.genetics.Answer;
import slipday.genetics.Odds;
import slipday.genetics.Selfing;
import slipday.measure.Quantity;

/**
 * The share of a type among the selfed offspring of an F1, by what it must be at each gene.
 *
 * @param recessive genes at which it must show the recessive
 * @param dominant genes at which it must show the dominant, pure or not
 * @param pure genes at which it must breed true for the dominant
 * @param generation F-number of the plants grown, 2 or more
 */
public record TypeShare(int recessive, int dominant, int pure, int generation) {
  /** More genes than this no garden finds together. */
  public static final int MOST_GENES = 40;

  /** The share, with its reckoning, or why it can't be asked. */
  public static Answer<TypeShare> of(int recessive, int dominant, int pure, int generation) {
    int genes = recessive + dominant + pure;
    if (genes == 0) {
      return Answer.refused("No gene is named that the type is known by.");
    }
    if (genes > MOST_GENES) {
      return Answer.refused("So many genes as " + genes + " no garden finds together.");
    }
    if (generation < 2 || generation > Selfing.LAST) {
      return Answer.refused(
          "F" + generation + " does not segregate from one F1; F2 to F" + Selfing.LAST + " do.");
    }
    return Answer.of(new TypeShare(recessive, dominant, pure, generation));
  }

  public double share() {
    return Math.pow(Selfing.fixedForOne(generation), recessive + pure)
        * Math.pow(Selfing.showsDominant(generation), dominant);
  }

  /** As a rate, in words. */
  public Rate rate() {
    double share = share();
    double in = 1 / share;
    String words =
        Math.abs(in - Math.rint(in)) < 1e-9
            ? "1 in " + Quantity.plain(Math.rint(in))
            : Rate.percent(share);
    return new Rate.Certain(share, words);
  }

  /** How the share comes about, a sentence each. */
  public List<String> steps() {
    List<String> steps = new ArrayList<>();
    double het = Selfing.heterozygous(generation);
    steps.add(
        "In F"
            + generation
            + ", selfed from one F1, a gene is still split in ½"
            + (generation == 2 ? "" : " to the power " + (generation - 1))
            + " = "
            + Rate.percent(het)
            + " of plants.");
    List<String> factors = new ArrayList<>();
    factor(recessive, "shows the recessive", Selfing.fixedForOne(generation), factors, steps);
    factor(dominant, "shows the dominant", Selfing.showsDominant(generation), factors, steps);
    factor(pure, "breeds true for the dominant", Selfing.fixedForOne(generation), factors, steps);
    if (recessive + dominant + pure > 1) {
      steps.add(
          "The genes are taken as not linked, so their shares multiply: "
              + String.join(" × ", factors)
              + " = "
              + rate().words()
              + ".");
    }
    if (pure > 0) {
      steps.add(
          "Which of the dominant plants breed true shows only in their selfed offspring: grow "
              + Words.count(Odds.plantsNeeded(0.25, 1, 0.95).orElseThrow(), "plant")
              + " of each, and one recessive among them tells, with a chance of 95 %.");
    }
    return steps;
  }

  private static void factor(
      int genes, String what, double share, List<String> factors, List<String> steps) {
    if (genes > 0) {
      String figure = Quantity.plain(share);
      factors.add(genes == 1 ? figure : figure + " to the power " + genes);
      steps.add(
          "At " + Words.count(genes, "gene") + " it " + what + ": " + figure + " of plants each.");
    }
  }
}
