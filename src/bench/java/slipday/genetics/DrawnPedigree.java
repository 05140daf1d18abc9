package slipday.genetics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A pedigree of twenty generations of one size, drawn by lot. */
public final class DrawnPedigree {
  public static final int GENERATIONS = 20;

  private static final long SEED = 17;

  private DrawnPedigree() {}

  /** How seed is made: a gardener's way, or every plant of two drawn at random. */
  public enum Mating {
    /** Half of the fruits selfed, a third of sibs, the others crossed; eight plants a fruit. */
    GARDEN(8, 0.5, 0.83),
    /** Each plant of parents of its own, any two of the generation before. */
    AT_RANDOM(1, 0, 0);

    private final int plants;
    private final double selfed;
    private final double selfedOrSib;

    Mating(int plants, double selfed, double selfedOrSib) {
      this.plants = plants;
      this.selfed = selfed;
      this.selfedOrSib = selfedOrSib;
    }
  }

  /** Seed and pollen parent of each plant after the first generation. */
  static List<int[]> parents(int plants, Mating mating) {
    Random random = new Random(SEED);
    List<int[]> parents = new ArrayList<>();
    int size = plants / GENERATIONS;
    int[] made = new int[2];
    for (int i = size; i < plants; i++) {
      if (i % mating.plants == 0) {
        int from = (i / size - 1) * size;
        int seed = from + random.nextInt(size);
        double kind = random.nextDouble();
        int pollen = from + random.nextInt(size);
        if (kind < mating.selfed) {
          pollen = seed;
        } else if (kind < mating.selfedOrSib) {
          pollen = Math.min(from + size - 1, seed + 1);
        }
        made = new int[] {seed, pollen};
      }
      parents.add(made);
    }
    return parents;
  }

  static Pedigree.Builder of(int plants, List<int[]> parents) {
    Pedigree.Builder builder = Pedigree.begin(0);
    for (int i = 0; i < plants / GENERATIONS; i++) {
      builder.founder("founder", 0);
    }
    parents.forEach(two -> builder.offspring("plant", two[0], two[1]));
    return builder;
  }

  public static Pedigree of(int plants, Mating mating) {
    return of(plants, parents(plants, mating)).build();
  }
}
