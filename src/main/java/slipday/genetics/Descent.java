package slipday.genetics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The shares T that pass down and the draws D of a {@link Pedigree}, and the walk up through them.
 */
final class Descent {
  /** Stands for the seed parent of a bulk; its pollen parent is then the bulk's place in a list. */
  private static final int BULK = -2;

  private static final int WORD = 64;

  /** Below this a negative is a rounding of nothing. */
  private static final double HAIR = 1e-13;

  /** What an individual has of one of its parents; all of its shares sum to 1 or less. */
  record Share(int parent, double of) {}

  private final int size;
  private final int[] seedParent;
  private final int[] pollenParent;
  private final List<List<Share>> bulks = new ArrayList<>();
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
    Map<List<Pedigree.Fruit>, Integer> mixed = new HashMap<>();
    for (int i = 0; i < size; i++) {
      if (seedParent[i] == BULK) {
        List<Pedigree.Fruit> fruits = rows.bulks.get(pollenParent[i]);
        Integer twin = mixed.putIfAbsent(fruits, i);
        if (twin == null) {
          bulk(i, fruits, families);
        } else {
          asTwin(i, twin);
        }
      } else if (seedParent[i] == Pedigree.UNKNOWN) {
        inbreeding[i] = rows.inbreeding[i];
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
    private double[] inbreeding = new double[WORD];
    private final List<List<Pedigree.Fruit>> bulks = new ArrayList<>();

    void founder(double stated) {
      offspring(Pedigree.UNKNOWN, Pedigree.UNKNOWN);
      inbreeding[size - 1] = stated;
    }

    void bulk(List<Pedigree.Fruit> fruits) {
      offspring(BULK, bulks.size());
      bulks.add(List.copyOf(fruits));
    }

    void offspring(int seed, int pollen) {
      if (size == seedParent.length) {
        seedParent = Arrays.copyOf(seedParent, 2 * size);
        pollenParent = Arrays.copyOf(pollenParent, 2 * size);
        inbreeding = Arrays.copyOf(inbreeding, 2 * size);
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
  List<Share> shares(int individual) {
    int seed = seedParent[individual];
    int pollen = pollenParent[individual];
    if (seed == BULK) {
      return bulks.get(pollen);
    }
    if (seed == Pedigree.UNKNOWN) {
      return List.of();
    }
    if (seed == pollen) {
      return List.of(new Share(seed, 1));
    }
    return pollen == Pedigree.UNKNOWN
        ? List.of(new Share(seed, 0.5))
        : List.of(new Share(seed, 0.5), new Share(pollen, 0.5));
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
      bulks.get(pollenParent[from]).forEach(part -> to[part.parent] += share * part.of);
    }
  }

  private void bulk(int i, List<Pedigree.Fruit> fruits, Map<Long, Double> families) {
    double seeds = fruits.stream().mapToDouble(Pedigree.Fruit::seeds).sum();
    Map<Integer, Double> parents = new TreeMap<>();
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
    List<Share> shares = new ArrayList<>();
    parents.forEach((parent, share) -> shares.add(new Share(parent, share)));
    bulks.add(List.copyOf(shares));
    draw[i] = notNegative(1 + sum - square(shares));
  }

  /** Another plant of the same mixed seed: its own draw, with the same of everything expected. */
  private void asTwin(int i, int twin) {
    inbreeding[i] = inbreeding[twin];
    draw[i] = draw[twin];
    bulks.add(bulks.get(pollenParent[twin]));
    pollenParent[i] = pollenParent[twin];
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
    if (seedParent[older] == seedParent[younger] && pollenParent[older] == pollenParent[younger]) {
      // Of the same parents: what one has with itself, less what its own draw adds.
      return notNegative((1 + inbreeding[younger] - draw[younger]) / 2);
    }
    Double known = families.get(((long) older << Integer.SIZE) + younger);
    if (known != null) {
      return known;
    }
    // (a + b)′A(a + b) is 1 + F of each and twice their relationship, which is twice the
    // coancestry.
    double both = square(List.of(new Share(older, 1), new Share(younger, 1)));
    double found = notNegative((both - 2 - inbreeding[older] - inbreeding[younger]) / 4);
    families.put(((long) older << Integer.SIZE) + younger, found);
    return found;
  }

  /**
   * x′·A·x by one walk from the youngest up. Ancestors met are marked in a bit set, so that the
   * walk passes by all others.
   */
  private double square(List<Share> shares) {
    int top = 0;
    for (Share share : shares) {
      add(share.parent, share.of);
      top = Math.max(top, share.parent);
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
          bulks.get(pollenParent[i]).forEach(part -> add(part.parent, share * part.of));
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
