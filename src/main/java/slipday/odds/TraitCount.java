package slipday.odds;

import java.util.List;

/**
 * Plants of one stand, counted by a trait.
 *
 * @param of the planting
 * @param lot what was sown
 * @param season its label
 * @param trait as asked
 * @param classes in order
 * @param leftOut what could not be counted, a sentence each
 */
public record TraitCount(
    String of, String lot, String season, String trait, List<Kind> classes, List<String> leftOut) {
  public TraitCount {
    classes = List.copyOf(classes);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * One class.
   *
   * @param name what its plants are
   * @param plants how many
   * @param which those whose numbers are known
   */
  public record Kind(String name, int plants, List<Integer> which) {
    public Kind {
      which = List.copyOf(which);
    }
  }

  public List<Integer> counts() {
    return classes.stream().map(Kind::plants).toList();
  }

  public int plants() {
    return classes.stream().mapToInt(Kind::plants).sum();
  }
}
