package slipday.genetics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The families of a {@link Pedigree}, numbered by their first individuals: those of the same two
 * parents, or plants of the same mixed seed; a founder is one of its own. Within a family all have
 * the same inbreeding and the same relationship with anyone but themselves and their own offspring.
 */
final class Families {
  private final int[] familyOf;
  private final Pairs pairs;
  private final boolean[] founded;

  private final Lists parents = new Lists();

  /** The pairs its seed is of: one, but for mixed seed. */
  private final Lists matings = new Lists();

  private int count;

  Families(PedigreeRows rows) {
    int size = rows.size();
    familyOf = new int[size];
    founded = new boolean[size];
    pairs = new Pairs(rows);
    int[] ofPair = new int[pairs.count()];
    Arrays.fill(ofPair, -1);
    Map<List<Pedigree.Fruit>, Integer> mixed = new HashMap<>();
    for (int i = 0; i < size; i++) {
      if (rows.isBulk(i)) {
        List<Pedigree.Fruit> fruits = rows.fruits(i);
        Integer known = mixed.putIfAbsent(fruits, count);
        familyOf[i] = known == null ? mixed(fruits) : known;
      } else if (rows.isFounder(i)) {
        founded[count] = true;
        familyOf[i] = end();
      } else {
        int pair = pairs.of(rows.seedParent(i), rows.pollenParent(i));
        if (ofPair[pair] < 0) {
          ofPair[pair] = ofTwo(rows.seedParent(i), rows.pollenParent(i), pair);
        }
        familyOf[i] = ofPair[pair];
      }
    }
  }

  private int ofTwo(int seedParent, int pollenParent, int pair) {
    if (seedParent == pollenParent) {
      parents.add(seedParent, 1);
    } else {
      parents.add(seedParent, 0.5);
      if (pollenParent >= 0) {
        parents.add(pollenParent, 0.5);
      }
    }
    matings.add(pair, 1);
    return end();
  }

  private int mixed(List<Pedigree.Fruit> fruits) {
    double seeds = fruits.stream().mapToDouble(Pedigree.Fruit::seeds).sum();
    Map<Integer, Double> all = new TreeMap<>();
    for (Pedigree.Fruit fruit : fruits) {
      double weight = fruit.seeds() / seeds;
      int pollen = fruit.pollenParent().orElse(Pedigree.UNKNOWN);
      all.merge(fruit.seedParent(), weight / 2, Double::sum);
      if (pollen >= 0) {
        all.merge(pollen, weight / 2, Double::sum);
      }
      matings.add(pairs.of(fruit.seedParent(), pollen), weight);
    }
    all.forEach(parents::add);
    return end();
  }

  private int end() {
    parents.end();
    matings.end();
    return count++;
  }

  /** How many families there are. */
  int count() {
    return count;
  }

  /** How many individuals there are. */
  int size() {
    return familyOf.length;
  }

  int of(int individual) {
    return familyOf[individual];
  }

  boolean isFounder(int family) {
    return founded[family];
  }

  /** Its parents, each once, with what it has of each. */
  Lists parents() {
    return parents;
  }

  /** Numbers among {@link #pairs}, with the share of each in the seed. */
  Lists matings() {
    return matings;
  }

  Pairs pairs() {
    return pairs;
  }

  /** Whether all its seed is of one pair, or selfed; not of a founder. */
  boolean isOfOnePair(int family) {
    return matings.from(family) + 1 == matings.from(family + 1);
  }

  /**
   * What its draw of genes adds to the relationship of a plant of two parents with itself: a
   * quarter of what each lacks in inbreeding.
   *
   * @param inbreeding of each family
   */
  double drawOfTwo(int family, double[] inbreeding) {
    int pair = matings.number(matings.from(family));
    int older = pairs.older(pair);
    double fromOlder = older < 0 ? 0.5 : (1 - inbreeding[familyOf[older]]) / 4;
    return (1 - inbreeding[familyOf[pairs.younger(pair)]]) / 4 + fromOlder;
  }

  /** Lists of numbers with a share each, one list after the other. */
  static final class Lists {
    private int[] from = new int[16];
    private int[] numbers = new int[16];
    private double[] shares = new double[16];
    private int lists;
    private int length;

    private void add(int number, double share) {
      if (length == numbers.length) {
        numbers = Arrays.copyOf(numbers, 2 * length);
        shares = Arrays.copyOf(shares, 2 * length);
      }
      numbers[length] = number;
      shares[length] = share;
      length++;
    }

    private void end() {
      lists++;
      if (lists == from.length) {
        from = Arrays.copyOf(from, 2 * lists);
      }
      from[lists] = length;
    }

    /** The first place of a list; it ends before {@code from(list + 1)}. */
    int from(int list) {
      return from[list];
    }

    int number(int place) {
      return numbers[place];
    }

    double share(int place) {
      return shares[place];
    }

    List<Descent.Share> list(int list) {
      List<Descent.Share> all = new ArrayList<>();
      for (int k = from[list]; k < from[list + 1]; k++) {
        all.add(new Descent.Share(numbers[k], shares[k]));
      }
      return all;
    }
  }

  /** All matings there were, each once, whichever of the two bore the seed. */
  static final class Pairs {
    private final long[] keys;

    private Pairs(PedigreeRows rows) {
      long[] all = new long[rows.size()];
      int found = 0;
      for (int i = 0; i < rows.size(); i++) {
        if (rows.isBulk(i)) {
          for (Pedigree.Fruit fruit : rows.fruits(i)) {
            all = withRoom(all, found);
            all[found++] = key(fruit.seedParent(), fruit.pollenParent().orElse(Pedigree.UNKNOWN));
          }
        } else if (!rows.isFounder(i)) {
          all = withRoom(all, found);
          all[found++] = key(rows.seedParent(i), rows.pollenParent(i));
        }
      }
      Arrays.sort(all, 0, found);
      int distinct = 0;
      for (int i = 0; i < found; i++) {
        if (i == 0 || all[i] != all[i - 1]) {
          all[distinct++] = all[i];
        }
      }
      keys = Arrays.copyOf(all, distinct);
    }

    private static long[] withRoom(long[] all, int found) {
      return found < all.length ? all : Arrays.copyOf(all, 2 * found);
    }

    /** An unknown plant counts as number −1. */
    private static long key(int one, int other) {
      return ((long) Math.max(one, other) << Integer.SIZE) + Math.min(one, other) + 1;
    }

    private int of(int one, int other) {
      return Arrays.binarySearch(keys, key(one, other));
    }

    int count() {
      return keys.length;
    }

    /** The one added to the pedigree later; both where it was selfed. */
    int younger(int pair) {
      return (int) (keys[pair] >>> Integer.SIZE);
    }

    /** The one added earlier, or {@link Pedigree#UNKNOWN}. */
    int older(int pair) {
      return (int) keys[pair] - 1;
    }
  }
}
