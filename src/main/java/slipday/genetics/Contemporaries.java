package slipday.genetics;

import java.util.Arrays;

/**
 * Inbreeding by a table of relationships, generation by generation, of those plants only that are
 * still to have offspring. Each generation's table is made of the one before: a plant's
 * relationship is the mean of its parents' (the tabular method: L. O. Emik and C. E. Terrill 1949,
 * Journal of Heredity 40:51, from memory).
 *
 * <p>A family whose members have had no offspring is one row, for its members have the same
 * relationships with all others. A member that has offspring and is to have more gets a row of its
 * own, since it is nearer to its offspring than its sibs are. So the time grows with the families
 * at a time and the number of generations, not with the number of ancestors.
 */
final class Contemporaries {
  /** Rows of the largest table made: twice 200 MB. */
  static final int MOST_ROWS = 5000;

  private static final int NEVER = Integer.MAX_VALUE;

  private final Families families;
  private final double[] inbreeding;
  private final double[] draw;

  /** The generation of each family, a founder's that before its first offspring. */
  private final int[] generation;

  /** The generations of an individual's first and last offspring. */
  private final int[] first;

  private final int[] last;

  /** The last of the generations in which a member of the family has its first offspring. */
  private final int[] allUsed;

  /** How many rows the table has in each generation. */
  private final int[] rows;

  private final Order familiesBorn;
  private final Order firstUsed;

  /**
   * @param inbreeding of each family, known for founders
   * @param draw of each family, known for founders
   */
  Contemporaries(Families families, double[] inbreeding, double[] draw) {
    this.families = families;
    this.inbreeding = inbreeding;
    this.draw = draw;
    generation = new int[families.count()];
    first = new int[families.size()];
    last = new int[families.size()];
    allUsed = new int[families.count()];
    int generations = 1 + generations();
    use();
    rows = new int[generations];
    countRows();
    familiesBorn = new Order(generation, generations);
    firstUsed = new Order(first, generations);
  }

  private int generations() {
    Families.Lists parents = families.parents();
    int youngest = 0;
    for (int f = 0; f < families.count(); f++) {
      for (int k = parents.from(f); k < parents.from(f + 1); k++) {
        int above = generation[families.of(parents.number(k))];
        generation[f] = Math.max(generation[f], above + 1);
      }
      youngest = Math.max(youngest, generation[f]);
    }
    return youngest;
  }

  private void use() {
    Arrays.fill(first, NEVER);
    Families.Lists parents = families.parents();
    for (int f = 0; f < families.count(); f++) {
      for (int k = parents.from(f); k < parents.from(f + 1); k++) {
        int parent = parents.number(k);
        first[parent] = Math.min(first[parent], generation[f]);
        last[parent] = Math.max(last[parent], generation[f]);
      }
    }
    for (int i = 0; i < first.length; i++) {
      int family = families.of(i);
      if (first[i] != NEVER) {
        allUsed[family] = Math.max(allUsed[family], first[i]);
        if (families.isFounder(family)) {
          generation[family] = first[i] - 1;
        }
      }
    }
  }

  private void countRows() {
    int[] change = new int[rows.length + 1];
    for (int f = 0; f < generation.length; f++) {
      if (allUsed[f] > generation[f]) {
        change[generation[f]]++;
        change[allUsed[f]]--;
      }
    }
    for (int i = 0; i < first.length; i++) {
      if (last[i] > first[i]) {
        change[first[i]]++;
        change[last[i]]--;
      }
    }
    int now = 0;
    for (int g = 0; g < rows.length; g++) {
      now += change[g];
      rows[g] = now;
    }
  }

  /** Whether the table is small enough to be made. */
  boolean fits() {
    return mostRows() <= MOST_ROWS;
  }

  private int mostRows() {
    return Arrays.stream(rows).max().orElse(0);
  }

  /** About how many numbers are to be worked out. */
  long steps() {
    long steps = 0;
    for (int g = 1; g < rows.length; g++) {
      steps += (long) rows[g] * (rows[g - 1] + rows[g]);
    }
    return steps;
  }

  /** Works out the inbreeding and the draw of all families. */
  void fill() {
    ContemporaryTable table = new ContemporaryTable(this, mostRows());
    table.found();
    for (int g = 1; g < rows.length; g++) {
      for (int k = familiesBorn.from(g); k < familiesBorn.from(g + 1); k++) {
        if (!families.isFounder(familiesBorn.at(k))) {
          tell(familiesBorn.at(k), table);
        }
      }
      table.follow(g);
    }
  }

  private void tell(int family, ContemporaryTable table) {
    Families.Lists matings = families.matings();
    int end = matings.from(family + 1);
    double sum = 0;
    for (int k = matings.from(family); k < end; k++) {
      sum += matings.share(k) * coancestry(matings.number(k), table);
    }
    inbreeding[family] = sum;
    draw[family] =
        families.isOfOnePair(family)
            ? families.drawOfTwo(family, inbreeding)
            : Descent.notNegative(1 + sum - square(family, table));
  }

  private double coancestry(int pair, ContemporaryTable table) {
    int older = families.pairs().older(pair);
    return older < 0
        ? 0
        : Descent.notNegative(relationship(older, families.pairs().younger(pair), table) / 2);
  }

  private double relationship(int one, int other, ContemporaryTable table) {
    return one == other ? 1 + inbreeding[families.of(one)] : table.relationship(one, other);
  }

  /** The relationship of two plants of mixed seed. */
  private double square(int family, ContemporaryTable table) {
    Families.Lists parents = families.parents();
    double sum = 0;
    for (int k = parents.from(family); k < parents.from(family + 1); k++) {
      double row = 0;
      for (int l = parents.from(family); l < parents.from(family + 1); l++) {
        row += parents.share(l) * relationship(parents.number(k), parents.number(l), table);
      }
      sum += parents.share(k) * row;
    }
    return sum;
  }

  Families families() {
    return families;
  }

  double drawOf(int plant) {
    return draw[families.of(plant)];
  }

  boolean isBornIn(int ofGeneration, int family) {
    return generation[family] == ofGeneration;
  }

  /** The families that come up in a generation: born in it, or founders used in the next. */
  Order familiesBorn() {
    return familiesBorn;
  }

  /** The plants that have their first offspring in a generation. */
  Order firstUsed() {
    return firstUsed;
  }

  /** Whether it has its first offspring in this generation. */
  boolean isFirstUsed(int individual, int ofGeneration) {
    return first[individual] == ofGeneration;
  }

  /** Whether it has had offspring by this generation, and so is no longer in its family's row. */
  boolean isParted(int individual, int byGeneration) {
    return first[individual] <= byGeneration;
  }

  /** Whether a parted plant is to have offspring after this generation. */
  boolean isWantedAfter(int someGeneration, int individual) {
    return last[individual] > someGeneration;
  }

  /** Whether a family has members whose first offspring come after this generation. */
  boolean hasUnusedAfter(int someGeneration, int family) {
    return allUsed[family] > someGeneration;
  }

  /** Numbers in the order of the generation each has; those of none are left out. */
  static final class Order {
    private final int[] from;
    private final int[] numbers;

    private Order(int[] ofEach, int generations) {
      from = new int[generations + 2];
      int counted = 0;
      for (int of : ofEach) {
        if (of < generations) {
          from[of + 2]++;
          counted++;
        }
      }
      for (int g = 2; g < from.length; g++) {
        from[g] += from[g - 1];
      }
      numbers = new int[counted];
      for (int i = 0; i < ofEach.length; i++) {
        if (ofEach[i] < generations) {
          numbers[from[ofEach[i] + 1]++] = i;
        }
      }
    }

    int from(int generation) {
      return from[generation];
    }

    int at(int place) {
      return numbers[place];
    }
  }
}
