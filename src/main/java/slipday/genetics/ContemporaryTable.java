package slipday.genetics;

import java.util.Arrays;

/**
 * The relationships of the {@link Contemporaries} of one generation, two members of a family as
 * well; then those of the next.
 *
 * <p>A row stands for a family, or for one plant parted from it. A new row is the mean of its
 * parents' rows; where two have a parent in common that is one of many in its row, what that plant
 * has with itself more than with its sibs is added, which is its own draw.
 */
final class ContemporaryTable {
  private static final int SQUARE = 32;

  private final Contemporaries plan;
  private final Families families;
  private final Families.Lists parents;

  /** The place of each row, of families by number, then of parted plants. */
  private final int[] place;

  private double[][] now;
  private double[][] next;
  private int[] units;
  private int[] nextUnits;
  private int generation;
  private int count;
  private int nextCount;

  /** For each new row the places of the two it is the mean of; {@link #nothing} for none. */
  private final int[] one;

  private final int[] other;

  /** New rows of mixed seed, in order. */
  private final int[] mixedRows;

  private int mixedCount;
  private final double[] row;
  private final double[] zeros;

  /** The place of the row of zeros. */
  private int nothing;

  private final Shared shared;

  ContemporaryTable(Contemporaries plan, int rows) {
    this.plan = plan;
    families = plan.families();
    parents = families.parents();
    place = new int[families.count() + families.size()];
    now = new double[rows][rows];
    next = new double[rows][rows];
    units = new int[rows];
    nextUnits = new int[rows];
    one = new int[rows];
    other = new int[rows];
    mixedRows = new int[rows];
    row = new double[rows + 1];
    zeros = new double[rows];
    shared = new Shared(families.size());
  }

  /** The table before any offspring: founders are not related. */
  void found() {
    addBorn(0);
    swap(0);
  }

  /** Between two plants that are still to have offspring; not of one with itself. */
  double relationship(int plant, int another) {
    return now[place(plant)][place(another)];
  }

  private int place(int plant) {
    return place[unit(plant)];
  }

  private int unit(int plant) {
    return plan.isParted(plant, generation) ? families.count() + plant : families.of(plant);
  }

  /** Makes the next generation's table of this one. */
  void follow(int generationNext) {
    nothing = count;
    addCarried(generationNext);
    addBorn(generationNext);
    addParted(generationNext);
    for (int i = 0; i < nextCount; i++) {
      meanOfParents(i);
      fillUpTo(i);
    }
    mirror();
    addShared(generationNext);
    swap(generationNext);
  }

  private void addCarried(int generationNext) {
    for (int i = 0; i < count; i++) {
      int unit = units[i];
      boolean wanted =
          unit < families.count()
              ? plan.hasUnusedAfter(generationNext, unit)
              : plan.isWantedAfter(generationNext, unit - families.count());
      if (wanted) {
        add(unit, i, i);
      }
    }
  }

  private void addBorn(int generationNext) {
    Contemporaries.Order born = plan.familiesBorn();
    for (int k = born.from(generationNext); k < born.from(generationNext + 1); k++) {
      int family = born.at(k);
      if (plan.hasUnusedAfter(generationNext, family)) {
        addBorn(family, parents.from(family), parents.from(family + 1));
      }
    }
  }

  private void addBorn(int family, int from, int end) {
    if (from == end) {
      add(family, nothing, nothing);
    } else if (!families.isOfOnePair(family)) {
      mixedRows[mixedCount++] = nextCount;
      add(family, nothing, nothing);
    } else {
      int seed = place(parents.number(from));
      int alone = parents.share(from) == 1 ? seed : nothing;
      add(family, seed, end - from == 2 ? place(parents.number(from + 1)) : alone);
    }
  }

  private void addParted(int generationNext) {
    Contemporaries.Order used = plan.firstUsed();
    for (int k = used.from(generationNext); k < used.from(generationNext + 1); k++) {
      int plant = used.at(k);
      if (plan.isWantedAfter(generationNext, plant)) {
        add(families.count() + plant, place(plant), place(plant));
      }
    }
  }

  private void add(int unit, int first, int second) {
    nextUnits[nextCount] = unit;
    one[nextCount] = first;
    other[nextCount] = second;
    nextCount++;
  }

  /** Half of the table, since it is the same both ways. */
  private void fillUpTo(int i) {
    row[nothing] = 0;
    double[] filled = next[i];
    for (int j = 0; j <= i; j++) {
      filled[j] = (row[one[j]] + row[other[j]]) / 2;
    }
    for (int k = 0; k < mixedCount && mixedRows[k] <= i; k++) {
      filled[mixedRows[k]] = mixed(nextUnits[mixedRows[k]]);
    }
  }

  /** By squares, so that what is written is near what was written just before. */
  private void mirror() {
    for (int top = 0; top < nextCount; top += SQUARE) {
      for (int left = 0; left <= top; left += SQUARE) {
        for (int i = top; i < Math.min(nextCount, top + SQUARE); i++) {
          for (int j = left; j < Math.min(i, left + SQUARE); j++) {
            next[j][i] = next[i][j];
          }
        }
      }
    }
  }

  /** A row of its parents' relationships with this generation. */
  private void meanOfParents(int i) {
    if (isMixed(i)) {
      Arrays.fill(row, 0, count, 0);
      for (int k = parents.from(nextUnits[i]); k < parents.from(nextUnits[i] + 1); k++) {
        addRow(parents.share(k), now[place(parents.number(k))]);
      }
      return;
    }
    double[] first = one[i] == nothing ? zeros : now[one[i]];
    double[] second = other[i] == nothing ? zeros : now[other[i]];
    for (int j = 0; j < count; j++) {
      row[j] = (first[j] + second[j]) / 2;
    }
  }

  private boolean isMixed(int newRow) {
    return Arrays.binarySearch(mixedRows, 0, mixedCount, newRow) >= 0;
  }

  private void addRow(double share, double[] of) {
    for (int j = 0; j < count; j++) {
      row[j] += share * of[j];
    }
  }

  private double mixed(int family) {
    double sum = 0;
    for (int k = parents.from(family); k < parents.from(family + 1); k++) {
      sum += parents.share(k) * row[place(parents.number(k))];
    }
    return sum;
  }

  /** Plants used now for the first time were in their families' rows. */
  private void addShared(int generationNext) {
    shared.clear();
    for (int i = 0; i < nextCount; i++) {
      int unit = nextUnits[i];
      if (unit >= families.count()) {
        shareIfFirst(unit - families.count(), i, 1, generationNext);
      } else if (plan.isBornIn(generationNext, unit)) {
        for (int k = parents.from(unit); k < parents.from(unit + 1); k++) {
          shareIfFirst(parents.number(k), i, parents.share(k), generationNext);
        }
      }
    }
    shared.addTo(next, plan);
  }

  private void shareIfFirst(int plant, int newRow, double share, int generationNext) {
    if (plan.isFirstUsed(plant, generationNext)) {
      shared.add(plant, newRow, share);
    }
  }

  private void swap(int generationNext) {
    for (int i = 0; i < nextCount; i++) {
      place[nextUnits[i]] = i;
    }
    double[][] before = now;
    now = next;
    next = before;
    int[] unitsBefore = units;
    units = nextUnits;
    nextUnits = unitsBefore;
    count = nextCount;
    nextCount = 0;
    mixedCount = 0;
    generation = generationNext;
  }

  /** Which new rows have how much of which plant. */
  private static final class Shared {
    private final int[] lastOf;
    private int[] plants = new int[16];
    private int[] rows = new int[16];
    private double[] shares = new double[16];
    private int[] before = new int[16];
    private int length;

    private Shared(int plantsInAll) {
      lastOf = new int[plantsInAll];
      Arrays.fill(lastOf, -1);
    }

    private void clear() {
      for (int k = 0; k < length; k++) {
        lastOf[plants[k]] = -1;
      }
      length = 0;
    }

    private void add(int plant, int row, double share) {
      if (length == rows.length) {
        plants = Arrays.copyOf(plants, 2 * length);
        rows = Arrays.copyOf(rows, 2 * length);
        shares = Arrays.copyOf(shares, 2 * length);
        before = Arrays.copyOf(before, 2 * length);
      }
      plants[length] = plant;
      rows[length] = row;
      shares[length] = share;
      before[length] = lastOf[plant];
      lastOf[plant] = length++;
    }

    private void addTo(double[][] table, Contemporaries plan) {
      for (int k = 0; k < length; k++) {
        double draw = plan.drawOf(plants[k]) * shares[k];
        for (int l = lastOf[plants[k]]; l >= 0; l = before[l]) {
          table[rows[k]][rows[l]] += draw * shares[l];
        }
      }
    }
  }
}
