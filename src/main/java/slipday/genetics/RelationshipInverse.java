package slipday.genetics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The inverse of the relationships, written down from the pedigree by rules: for each plant with a
 * draw of genes of its own (1, −share of each parent)·(1, −share of each parent)′ ÷ D (C. R.
 * Henderson 1976, Biometrics 32:69, from memory). Selfing counts as one parent of share 1.
 *
 * <p>A plant without a draw of its own is no unknown of its own: the selfed seed of a fully inbred
 * plant is that plant again, and the F1 of two is their mean. Such a plant is written in terms of
 * those that are free.
 */
public final class RelationshipInverse {
  /** A draw less than this is nothing: thirty selfings. */
  private static final double NO_DRAW = 1e-9;

  private final List<Integer> free = new ArrayList<>();
  private final List<List<Term>> stands = new ArrayList<>();
  private final List<Entry> entries;
  private double logDeterminant;

  /**
   * A share of a free plant.
   *
   * @param free its place among {@link #free}
   */
  public record Term(int free, double share) {}

  /**
   * One number of the inverse, not 0; both halves are listed.
   *
   * @param row a place among {@link #free}
   * @param column a place among {@link #free}
   */
  public record Entry(int row, int column, double value) {}

  private RelationshipInverse(Pedigree pedigree) {
    List<Map<Integer, Double>> rows = new ArrayList<>();
    Descent descent = pedigree.descent();
    for (int i = 0; i < descent.size(); i++) {
      Map<Integer, Double> mean = meanOfParents(descent.shares(i));
      if (descent.draw(i) < NO_DRAW) {
        stands.add(mean.entrySet().stream().map(e -> new Term(e.getKey(), e.getValue())).toList());
      } else {
        mean.replaceAll((place, share) -> -share);
        mean.put(free.size(), 1.0);
        stands.add(List.of(new Term(free.size(), 1)));
        free.add(i);
        rows.add(new TreeMap<>());
        logDeterminant += Math.log(descent.draw(i));
        addSquare(mean, 1 / descent.draw(i), rows);
      }
    }
    entries = entries(rows);
  }

  /**
   * The inverse, plants of one genotype as one; refused where a plant is the mean of several others
   * and the matrix of relationships therefore has no inverse.
   */
  static Answer<RelationshipInverse> of(Pedigree pedigree) {
    RelationshipInverse inverse = new RelationshipInverse(pedigree);
    for (int i = 0; i < pedigree.size(); i++) {
      if (inverse.stands.get(i).size() > 1) {
        return Answer.refused(
            "The genotype of `"
                + pedigree.name(i)
                + "` is settled by its fully inbred parents, so its breeding value can't be told"
                + " apart from theirs.");
      }
    }
    return Answer.of(inverse);
  }

  /** The inverse among the free plants only, which there always is. */
  static RelationshipInverse reduced(Pedigree pedigree) {
    return new RelationshipInverse(pedigree);
  }

  /** The plants that have a draw of genes of their own, in the pedigree's order. */
  public List<Integer> free() {
    return List.copyOf(free);
  }

  /**
   * What a plant's breeding value is made of: itself, the plant it equals, or a mean of several.
   */
  public List<Term> stands(int individual) {
    return stands.get(individual);
  }

  /** The numbers that are not 0, by row and column. */
  public List<Entry> entries() {
    return entries;
  }

  /** Logarithm of the determinant of the relationships among the free plants: Σ ln D. */
  public double logDeterminant() {
    return logDeterminant;
  }

  private Map<Integer, Double> meanOfParents(List<Descent.Share> shares) {
    Map<Integer, Double> mean = new TreeMap<>();
    for (Descent.Share share : shares) {
      for (Term term : stands.get(share.parent())) {
        mean.merge(term.free, term.share * share.of(), Double::sum);
      }
    }
    return mean;
  }

  private static void addSquare(
      Map<Integer, Double> vector, double factor, List<Map<Integer, Double>> rows) {
    vector.forEach(
        (row, one) ->
            vector.forEach(
                (column, other) -> rows.get(row).merge(column, one * other * factor, Double::sum)));
  }

  private static List<Entry> entries(List<Map<Integer, Double>> rows) {
    List<Entry> all = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      int row = i;
      rows.get(i)
          .forEach(
              (column, value) -> {
                if (value != 0) {
                  all.add(new Entry(row, column, value));
                }
              });
    }
    return Collections.unmodifiableList(all);
  }
}
