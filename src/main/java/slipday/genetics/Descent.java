package slipday.genetics;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * The shares T that pass down and the draws D of a {@link Pedigree}, and the walk up through them.
 *
 * <p>Inbreeding is worked out by a walk through the ancestors of each pair while that is short, as
 * it is where lines are kept apart. Where all are akin, every plant of every generation before is
 * met by each walk; once it shows that the walks would take longer than a table of the plants of
 * each generation, the table is made instead.
 */
final class Descent {
  private static final int WORD = 64;

  /** Below this a negative is a rounding of nothing. */
  private static final double HAIR = 1e-13;

  /** So many ancestors met before it is asked whether a table would be quicker. */
  private static final long PATIENCE = 1_000_000;

  /** An ancestor met costs as much as so many numbers of the table, which stand side by side. */
  private static final double WALKED = 2;

  /** What an individual has of one of its parents; all of its shares sum to 1 or less. */
  record Share(int parent, double of) {}

  private final Families families;
  private final int size;

  /** Of each family. */
  private final double[] inbreeding;

  private final double[] draw;

  private final double[] work;
  private final long[] marked;
  private long met;

  private Descent(PedigreeRows rows) {
    families = new Families(rows);
    size = rows.size();
    inbreeding = new double[families.count()];
    draw = new double[families.count()];
    work = new double[size];
    marked = new long[size / WORD + 1];
    for (int i = 0; i < size; i++) {
      if (rows.isFounder(i)) {
        inbreeding[families.of(i)] = rows.statedInbreeding(i);
        draw[families.of(i)] = 1 + rows.statedInbreeding(i);
      }
    }
  }

  /** How inbreeding is worked out; the results are the same. */
  enum Way {
    WALKS,
    TABLE,
    WHICHEVER_IS_QUICKER
  }

  static Descent of(PedigreeRows rows, Way way) {
    Descent descent = new Descent(rows);
    descent.reckon(way);
    return descent;
  }

  private void reckon(Way way) {
    double[] ofPair = new double[families.pairs().count()];
    Arrays.fill(ofPair, Double.NaN);
    long most = way == Way.TABLE ? -1 : way == Way.WALKS ? Long.MAX_VALUE : PATIENCE;
    long metBefore = 0;
    int doneBefore = 0;
    for (int family = 0; family < families.count(); family++) {
      if (met > most) {
        Contemporaries table = new Contemporaries(families, inbreeding, draw);
        double pace = (double) (met - metBefore) / (family - doneBefore);
        boolean quicker = WALKED * pace * (families.count() - family) > table.steps();
        if (way == Way.TABLE || (table.fits() && quicker)) {
          table.fill();
          return;
        }
        metBefore = met;
        doneBefore = family;
        most = table.fits() ? 2 * met : Long.MAX_VALUE;
      }
      if (!families.isFounder(family)) {
        tell(family, ofPair);
      }
    }
  }

  int size() {
    return size;
  }

  double inbreeding(int individual) {
    return inbreeding[families.of(individual)];
  }

  /** D: what the plant's own draw of genes adds to its relationship with itself. */
  double draw(int individual) {
    return draw[families.of(individual)];
  }

  /** The parents of an individual, none for a founder; a selfed plant has one of share 1. */
  List<Share> shares(int individual) {
    return families.parents().list(families.of(individual));
  }

  /** x′·A·y. */
  double relationship(Map<Integer, Double> x, Map<Integer, Double> y) {
    double[] one = new double[size];
    double[] other = new double[size];
    x.forEach((individual, share) -> one[individual] += share);
    y.forEach((individual, share) -> other[individual] += share);
    int top = Math.max(youngest(x), youngest(y));
    double sum = 0;
    for (int i = top; i >= 0; i--) {
      if (one[i] != 0 || other[i] != 0) {
        sum += one[i] * other[i] * draw(i);
        passUp(i, one);
        passUp(i, other);
      }
    }
    return sum;
  }

  /**
   * A·x: once up through the shares, times the draws, and once down (J. J. Colleau 2002, Genetics
   * Selection Evolution 34:409, from memory).
   */
  double[] times(Map<Integer, Double> x) {
    double[] product = new double[size];
    x.forEach((individual, share) -> product[individual] += share);
    for (int i = youngest(x); i >= 0; i--) {
      if (product[i] != 0) {
        passUp(i, product);
      }
    }
    Families.Lists parents = families.parents();
    for (int i = 0; i < size; i++) {
      product[i] *= draw(i);
      int family = families.of(i);
      for (int k = parents.from(family); k < parents.from(family + 1); k++) {
        product[i] += parents.share(k) * product[parents.number(k)];
      }
    }
    return product;
  }

  private static int youngest(Map<Integer, Double> of) {
    int youngest = -1;
    for (int individual : of.keySet()) {
      youngest = Math.max(youngest, individual);
    }
    return youngest;
  }

  private void passUp(int from, double[] to) {
    Families.Lists parents = families.parents();
    int family = families.of(from);
    int end = parents.from(family + 1);
    for (int k = parents.from(family); k < end; k++) {
      to[parents.number(k)] += to[from] * parents.share(k);
    }
  }

  private void tell(int family, double[] ofPair) {
    Families.Lists matings = families.matings();
    int end = matings.from(family + 1);
    double sum = 0;
    for (int k = matings.from(family); k < end; k++) {
      int pair = matings.number(k);
      if (Double.isNaN(ofPair[pair])) {
        ofPair[pair] = coancestry(pair);
      }
      sum += matings.share(k) * ofPair[pair];
    }
    inbreeding[family] = sum;
    draw[family] = drawOf(family, sum);
  }

  private double drawOf(int family, double ownInbreeding) {
    return families.isOfOnePair(family)
        ? families.drawOfTwo(family, inbreeding)
        : notNegative(1 + ownInbreeding - square(families.parents(), family));
  }

  private double coancestry(int pair) {
    int older = families.pairs().older(pair);
    int younger = families.pairs().younger(pair);
    if (older < 0) {
      return 0;
    }
    if (older == younger) {
      return (1 + inbreeding(older)) / 2;
    }
    int family = families.of(younger);
    if (families.isFounder(family)) {
      return 0;
    }
    if (families.of(older) == family) {
      // What one has with itself, less what its own draw adds.
      return notNegative((1 + inbreeding[family] - draw[family]) / 2);
    }
    // (a + b)′A(a + b) is 1 + F of each and twice their relationship, which is twice the
    // coancestry.
    add(older, 1);
    add(younger, 1);
    double both = squareOfMarked(younger);
    return notNegative((both - 2 - inbreeding(older) - inbreeding(younger)) / 4);
  }

  /** x′·A·x. */
  private double square(Families.Lists shares, int list) {
    int top = 0;
    for (int k = shares.from(list); k < shares.from(list + 1); k++) {
      add(shares.number(k), shares.share(k));
      top = Math.max(top, shares.number(k));
    }
    return squareOfMarked(top);
  }

  /**
   * By one walk from the youngest up. Ancestors met are marked in a bit set, so that the walk
   * passes by all others.
   */
  private double squareOfMarked(int top) {
    Families.Lists parents = families.parents();
    double sum = 0;
    for (int word = top / WORD; word >= 0; word--) {
      while (marked[word] != 0) {
        int bit = WORD - 1 - Long.numberOfLeadingZeros(marked[word]);
        marked[word] &= ~(1L << bit);
        int i = word * WORD + bit;
        double share = work[i];
        work[i] = 0;
        int family = families.of(i);
        sum += share * share * draw[family];
        int end = parents.from(family + 1);
        for (int k = parents.from(family); k < end; k++) {
          add(parents.number(k), share * parents.share(k));
        }
        met += 1 + end - parents.from(family);
      }
    }
    return sum;
  }

  private void add(int individual, double share) {
    work[individual] += share;
    marked[individual / WORD] |= 1L << (individual % WORD);
  }

  static double notNegative(double value) {
    return value < HAIR ? 0 : value;
  }
}
