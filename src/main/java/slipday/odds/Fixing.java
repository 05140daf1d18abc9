package slipday.odds;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import slipday.genetics.Selfing;

/** How many generations of selfing it takes until plants are alike. */
public final class Fixing {
  private static final String ALLARD =
      "R. W. Allard 1960, Principles of Plant Breeding, chapter 6 (from memory).";
  private static final int BEYOND = 2;

  private Fixing() {}

  /**
   * The first generation in which that share of plants is fixed at all the genes; with one gene,
   * that share of genes is fixed in a plant.
   *
   * @param share above 0 and below 1
   * @param genes that the parents differ in and that matter, 1 or more
   */
  public static Reckoning reckon(double share, int genes) {
    OptionalInt answer = Selfing.firstFixed(genes, share);
    String asked = Rate.percent(share);
    String what =
        genes == 1
            ? asked + " or more of the genes that the parents differed in are fixed in a plant"
            : asked + " or more of the plants are fixed at all " + genes + " genes";
    String says =
        answer.isEmpty()
            ? "No generation up to F" + Selfing.LAST + " is so uniform."
            : "F"
                + answer.getAsInt()
                + " is the first generation in which "
                + what
                + ": "
                + Words.count(answer.getAsInt() - 1L, "selfing")
                + " after the F1.";
    List<String> next =
        List.of(
            "A plant's seed is one generation on: the seed in a selfed F4 fruit is F5.",
            "This is without choosing; to choose for sameness within families is quicker where it"
                + " shows.");
    return new Reckoning(
        "fix",
        answer,
        "generation",
        says,
        share,
        List.of(),
        generations(genes, answer.orElse(Selfing.LAST)),
        steps(share, genes, answer),
        List.of(ALLARD),
        next);
  }

  private static List<Reckoning.Generation> generations(int genes, int last) {
    List<Reckoning.Generation> all = new ArrayList<>();
    for (int g = 2; g <= Math.min(last + BEYOND, Selfing.LAST); g++) {
      all.add(new Reckoning.Generation(g, 1 - Selfing.heterozygous(g), Selfing.fixedAt(genes, g)));
    }
    return all;
  }

  private static List<String> steps(double share, int genes, OptionalInt answer) {
    List<String> steps = new ArrayList<>();
    steps.add(
        "An F1 of two pure parents is split at every gene they differ in; each selfing fixes half"
            + " of what is left. In generation n, 1 − ½ⁿ⁻¹ of genes are fixed.");
    if (genes > 1) {
      steps.add(
          "All of "
              + genes
              + " genes, not linked, are fixed in (1 − ½ⁿ⁻¹) to the power "
              + genes
              + " of plants.");
    }
    answer.ifPresent(
        n ->
            steps.add(
                "F"
                    + n
                    + ": "
                    + Rate.percent(Selfing.fixedAt(genes, n))
                    + (n > 1 ? "; F" + (n - 1) + ": " : "")
                    + (n > 1 ? Rate.percent(Selfing.fixedAt(genes, n - 1)) : "")
                    + "; asked for "
                    + Rate.percent(share)
                    + "."));
    return steps;
  }
}
