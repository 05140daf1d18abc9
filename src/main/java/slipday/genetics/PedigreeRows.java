package slipday.genetics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The individuals of a {@link Pedigree} as they are added, parents before their offspring. */
final class PedigreeRows {
  /** Stands for the seed parent of a bulk; its pollen parent is then the bulk's place in a list. */
  private static final int BULK = -2;

  private int size;
  private int[] seedParent = new int[64];
  private int[] pollenParent = new int[64];
  private double[] stated = new double[64];
  private final List<List<Pedigree.Fruit>> bulks = new ArrayList<>();

  void founder(double inbreeding) {
    offspring(Pedigree.UNKNOWN, Pedigree.UNKNOWN);
    stated[size - 1] = inbreeding;
  }

  void bulk(List<Pedigree.Fruit> fruits) {
    offspring(BULK, bulks.size());
    bulks.add(List.copyOf(fruits));
  }

  void offspring(int seed, int pollen) {
    if (size == seedParent.length) {
      seedParent = Arrays.copyOf(seedParent, 2 * size);
      pollenParent = Arrays.copyOf(pollenParent, 2 * size);
      stated = Arrays.copyOf(stated, 2 * size);
    }
    seedParent[size] = seed;
    pollenParent[size] = pollen;
    size++;
  }

  int size() {
    return size;
  }

  boolean isBulk(int individual) {
    return seedParent[individual] == BULK;
  }

  boolean isFounder(int individual) {
    return seedParent[individual] == Pedigree.UNKNOWN;
  }

  List<Pedigree.Fruit> fruits(int bulk) {
    return bulks.get(pollenParent[bulk]);
  }

  /** Not of a founder or a bulk. */
  int seedParent(int individual) {
    return seedParent[individual];
  }

  /** {@link Pedigree#UNKNOWN} where nobody knows it. */
  int pollenParent(int individual) {
    return pollenParent[individual];
  }

  /** A founder's. */
  double statedInbreeding(int individual) {
    return stated[individual];
  }
}
