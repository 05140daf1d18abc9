package slipday.genetics;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The shares T that pass down and the draws D of a {@link Pedigree}, and the walk up through them.
 */
final class Descent {
  private static final int BULK = -2;
  private static final int WORD = 64;

  /** Below this a negative is a rounding of nothing. */
  private static final double HAIR = 1e-13;

  /** What an individual has of each of its parents; the shares sum to 1 or less. */
  record Shares(int[] parents, double[] shares) {}

  private final int size;
  private final int[] seedParent;
  private final int[] pollenParent;
  private final Map<Integer, Shares> bulks = new HashMap<>();
  private final double[] inbreeding;
  private final double[] draw;

  private final double[] work;
  private final long[] marked;

  Descent(Rows rows) {
    size = rows.size;
    seedParent = Arrays.copyOf(rows.seedParent, size);
    pollenParent = Arrays.copyOf(rows.pollenParent, size);
    inbreeding = new double[size];
    draw = new double[size];
    work = new double[size];
    marked = new long[size / WORD + 1];
    Map<Long, Double> families = new HashMap<>();
    for (int i = 0; i < size; i++) {
      if (seedParent[i] == BULK) {
        bulk(i, rows.bulks.get(i), families);
      } else if (seedParent[i] == Pedigree.UNKNOWN) {
        inbreeding[i] = rows.founders.get(i);
        draw[i] = 1 + inbreeding[i];
      } else {
        int seed = seedParent[i];
        int pollen = pollenParent[i];
        inbreeding[i] = coancestry(seed, pollen, families);
        draw[i] = drawOfTwo(seed, pollen);
      }
    }
  }

  /** Individuals as they are added. */
  static final class Rows {
    private int size;
    private int[] seedParent = new int[WORD];
    private int[] pollenParent = new int[WORD];
    private final Map<Integer, Double> founders = new HashMap<>();
    private final Map<Integer, List<Pedigree.Fruit>> bulks = new HashMap<>();

    void founder(double inbreeding) {
      founders.put(size, inbreeding);
      offspring(Pedigree.UNKNOWN, Pedigree.UNKNOWN);
    }

    void bulk(List<Pedigree.Fruit> fruits) {
      bulks.put(size, List.copyOf(fruits));
      offspring(BULK, BULK);
    }

    void offspring(int seed, int pollen) {
      if (size == seedParent.length) {
        seedParent = Arrays.copyOf(seedParent, 2 * size);
        pollenParent = Arrays.copyOf(pollenParent, 2 * size);
      }
      seedParent[size] = seed;
      pollenParent[size] = pollen;
      size++;
    }
  }

  int size() {
    return size;
  }

  double inbreeding(int individual) {
    return inbreeding[individual];
  }

  /** D: what the plant's own draw of genes adds to its relationship with itself. */
  double draw(int individual) {
    return draw[individual];
  }

  /** The parents of an individual, none for a founder; a selfed plant has one of share 1. */
  Shares shares(int individual) {
    int seed = seedParent[individual];
    int pollen = pollenParent[individual];
    if (seed == BULK) {
      return bulks.get(individual);
    }
    if (seed == Pedigree.UNKNOWN) {
      return new Shares(new int[0], new double[0]);
    }
    if (seed == pollen) {
      return new Shares(new int[] {seed}, new double[] {1});
    }
    return pollen == Pedigree.UNKNOWN
        ? new Shares(new int[] {seed}, new double[] {0.5})
        : new Shares(new int[] {seed, pollen}, new double[] {0.5, 0.5});
  }

  /** x′·A·y. */
  double relationship(Map<Integer, Double> x, Map<Integer, Double> y) {
    double[] one = new double[size];
    double[] other = new double[size];
    x.forEach((individual, share) -> one[individual] += share);
    y.forEach((individual, share) -> other[individual] += share);
    int top =
        Math.max(
            x.keySet().stream().mapToInt(i -> i).max().orElse(-1),
            y.keySet().stream().mapToInt(i -> i).max().orElse(-1));
    double sum = 0;
    for (int i = top; i >= 0; i--) {
      if (one[i] != 0 || other[i] != 0) {
        sum += one[i] * other[i] * draw[i];
        passUp(i, one);
        passUp(i, other);
      }
    }
    return sum;
  }

  private void passUp(int from, double[] to) {
    double share = to[from];
    int seed = seedParent[from];
    if (seed >= 0) {
      to[seed] += share / 2;
      if (pollenParent[from] >= 0) {
        to[pollenParent[from]] += share / 2;
      }
    } else if (seed == BULK) {
      Shares bulk = bulks.get(from);
      for (int k = 0; k < bulk.parents.length; k++) {
        to[bulk.parents[k]] += share * bulk.shares[k];
      }
    }
  }

  private void bulk(int i, List<Pedigree.Fruit> fruits, Map<Long, Double> families) {
    double seeds = fruits.stream().mapToDouble(Pedigree.Fruit::seeds).sum();
    Map<Integer, Double> parents = new HashMap<>();
    double sum = 0;
    for (Pedigree.Fruit fruit : fruits) {
      double weight = fruit.seeds() / seeds;
      int pollen = fruit.pollenParent().orElse(Pedigree.UNKNOWN);
      sum += weight * coancestry(fruit.seedParent(), pollen, families);
      parents.merge(fruit.seedParent(), weight / 2, Double::sum);
      if (pollen >= 0) {
        parents.merge(pollen, weight / 2, Double::sum);
      }
    }
    inbreeding[i] = sum;
    int[] who = parents.keySet().stream().mapToInt(Integer::intValue).sorted().toArray();
    double[] shares = Arrays.stream(who).mapToDouble(parents::get).toArray();
    bulks.put(i, new Shares(who, shares));
    draw[i] = notNegative(1 + sum - square(who, shares));
  }

  private double drawOfTwo(int seed, int pollen) {
    double fromPollen = pollen < 0 ? 0.5 : (1 - inbreeding[pollen]) / 4;
    return (1 - inbreeding[seed]) / 4 + fromPollen;
  }

  private double coancestry(int seed, int pollen, Map<Long, Double> families) {
    if (pollen < 0) {
      return 0;
    }
    if (seed == pollen) {
      return (1 + inbreeding[seed]) / 2;
    }
    int older = Math.min(seed, pollen);
    int younger = Math.max(seed, pollen);
    if (seedParent[younger] == Pedigree.UNKNOWN) {
      return 0;
    }
    Double known = families.get(((long) older << Integer.SIZE) + younger);
    if (known != null) {
      return known;
    }
    // (a + b)′A(a + b) is 1 + F of each and twice their relationship, which is twice the
    // coancestry.
    double both = square(new int[] {older, younger}, new double[] {1, 1});
    double found = notNegative((both - 2 - inbreeding[older] - inbreeding[younger]) / 4);
    families.put(((long) older << Integer.SIZE) + younger, found);
    return found;
  }

  /**
   * x′·A·x by one walk from the youngest up. Ancestors met are marked in a bit set, so that the
   * walk passes by all others.
   */
  private double square(int[] who, double[] shares) {
    int top = 0;
    for (int k = 0; k < who.length; k++) {
      add(who[k], shares[k]);
      top = Math.max(top, who[k]);
    }
    double sum = 0;
    for (int word = top / WORD; word >= 0; word--) {
      while (marked[word] != 0) {
        int bit = WORD - 1 - Long.numberOfLeadingZeros(marked[word]);
        marked[word] &= ~(1L << bit);
        int i = word * WORD + bit;
        double share = work[i];
        work[i] = 0;
        sum += share * share * draw[i];
        int seed = seedParent[i];
        if (seed >= 0) {
          add(seed, share / 2);
          if (pollenParent[i] >= 0) {
            add(pollenParent[i], share / 2);
          }
        } else if (seed == BULK) {
          Shares bulk = bulks.get(i);
          for (int k = 0; k < bulk.parents.length; k++) {
            add(bulk.parents[k], share * bulk.shares[k]);
          }
        }
      }
    }
    return sum;
  }

  private void add(int individual, double share) {
    work[individual] += share;
    marked[individual / WORD] |= 1L << (individual % WORD);
  }

  private static double notNegative(double value) {
    return value < HAIR ? 0 : value;
  }
}
