package slipday.genetics;

import java.util.OptionalInt;

/**
 * What selfing fixes. A generation is counted as the F-number of the plants: F1 is 1, and an F1 is
 * taken as heterozygous at every gene asked about, the genes as not linked.
 *
 * <p>R. W. Allard 1960, Principles of Plant Breeding, chapter 6: of plants of generation m + 1,
 * ((2ᵐ − 1) ÷ 2ᵐ)ⁿ are fixed at all of n genes (from memory).
 */
public final class Selfing {
  /** Beyond this nothing more is left to fix that a garden could see. */
  public static final int LAST = 30;

  private Selfing() {}

  /** The share of plants heterozygous at one gene, which is also that of genes in one plant. */
  public static double heterozygous(int generation) {
    if (generation < 1) {
      throw new IllegalArgumentException("generation F" + generation);
    }
    return Math.pow(0.5, generation - 1);
  }

  /** The share of plants with two copies of one of the two alleles. */
  public static double fixedForOne(int generation) {
    return (1 - heterozygous(generation)) / 2;
  }

  /** The share of plants that show a dominant allele: one copy or two. */
  public static double showsDominant(int generation) {
    return (1 + heterozygous(generation)) / 2;
  }

  /** The share of plants fixed, for whichever allele, at all of n genes. */
  public static double fixedAt(int genes, int generation) {
    if (genes < 1) {
      throw new IllegalArgumentException(genes + " genes");
    }
    return Math.pow(1 - heterozygous(generation), genes);
  }

  /**
   * The first generation in which that share of plants is fixed at all of n genes; with one gene,
   * that share of genes is fixed in a plant.
   *
   * @param share above 0 and below 1
   * @return its F-number; empty beyond {@link #LAST}
   */
  public static OptionalInt firstFixed(int genes, double share) {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException("a share of " + share);
    }
    for (int generation = 1; generation <= LAST; generation++) {
      if (fixedAt(genes, generation) >= share) {
        return OptionalInt.of(generation);
      }
    }
    return OptionalInt.empty();
  }
}
