package slipday.genetics.parents;

import java.util.List;

/**
 * What is to be chosen from, and within which limits.
 *
 * @param values what a part of each candidate is worth: the expected index of its seed
 * @param most the most parts each can give (its seed), 0 for one that is refused
 * @param least the fewest parts each is to give: 1 for one that is to be kept, else 0
 * @param parts into how many equal parts the next generation is divided, such as plants to be grown
 * @param limits what the choice has to keep to
 */
public record Question(
    List<Double> values, List<Integer> most, List<Integer> least, int parts, List<Limit> limits) {
  /** More parts than this no garden deals out. */
  public static final int MOST_PARTS = 200;

  public Question {
    values = List.copyOf(values);
    most = List.copyOf(most);
    least = List.copyOf(least);
    limits = List.copyOf(limits);
    int n = values.size();
    boolean sizes =
        most.size() == n
            && least.size() == n
            && limits.stream().allMatch(l -> l.matrix().length == n);
    if (!sizes || parts < 1 || parts > MOST_PARTS) {
      throw new IllegalArgumentException(n + " candidates, " + parts + " parts");
    }
    for (int i = 0; i < n; i++) {
      boolean sound = least.get(i) >= 0 && Double.isFinite(values.get(i));
      if (!sound) {
        throw new IllegalArgumentException("candidate " + i);
      }
    }
  }

  /**
   * Σ x·Q·x′ is to be no more than a bound, with x the parts of each candidate. Each of the usual
   * limits is one of these: effective size with Q 1 for what shares a parent, mean coancestry with
   * Q the coancestries.
   *
   * @param matrix Q, symmetric, no entry negative
   * @param most the bound
   */
  @SuppressWarnings("ArrayRecordComponent") // read in the inner loop, never compared
  public record Limit(double[][] matrix, double most) {

    /**
     * At least so many parents, used as much alike as the parts can be dealt out: Σx² over parents
     * is no more than with that many used alike.
     *
     * @param parents how many, 1 or more
     * @param parentOf the parent of each candidate
     */
    public static Limit parents(int parents, List<Integer> parentOf, int parts) {
      int n = parentOf.size();
      double[][] same = new double[n][n];
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          same[i][j] = parentOf.get(i).equals(parentOf.get(j)) ? 1 : 0;
        }
      }
      int each = parts / parents;
      int more = parts % parents;
      double squares = more * (each + 1.0) * (each + 1.0) + (parents - more) * (double) each * each;
      return new Limit(same, squares);
    }

    /**
     * An effective size of at least this, by the shares that all parents have: 1 ÷ Σc².
     *
     * @param shares for each candidate what of its seed each plant gave, 1 in all: 1 for a selfed
     *     plant, ½ for each of two
     */
    public static Limit effectiveSize(double size, double[][] shares, int parts) {
      int n = shares.length;
      double[][] common = new double[n][n];
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          for (int p = 0; p < shares[i].length; p++) {
            common[i][j] += shares[i][p] * shares[j][p];
          }
        }
      }
      return new Limit(common, parts * (double) parts / size);
    }

    /**
     * A mean coancestry of no more than this, each candidate with itself included.
     *
     * @param coancestry of the seed of each with the seed of each: of the parents, halved out
     */
    public static Limit coancestry(double cap, double[][] coancestry, int parts) {
      return new Limit(coancestry, cap * parts * parts);
    }
  }
}
