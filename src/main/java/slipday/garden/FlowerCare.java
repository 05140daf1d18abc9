package slipday.garden;

import java.util.Set;

/** What is done with the flowers of a planting. */
public record FlowerCare(How how, Set<String> cagedWith) {

  /** The ways of keeping flowers. */
  public enum How {
    OPEN("open"),
    CHOSEN_COVERED("cover the chosen"),
    CAGED("caged"),
    MALES_REMOVED("males removed"),
    FEMALES_REMOVED("females removed"),
    ALL_REMOVED("all removed");

    private final String words;

    How(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public static FlowerCare open() {
    return new FlowerCare(How.OPEN, Set.of());
  }

  public FlowerCare {
    cagedWith = Set.copyOf(cagedWith);
  }

  public boolean caged() {
    return how == How.CAGED;
  }

  /**
   * Whether flowers of a line of this sex shed pollen on others. Covering the chosen leaves all the
   * others open. Males removed leaves the perfect flowers' anthers.
   */
  public boolean sheds(Sex sex) {
    return switch (how) {
      case OPEN, CHOSEN_COVERED -> sex.shedsPollen();
      case CAGED, ALL_REMOVED -> false;
      case MALES_REMOVED -> sex.fruitingFlowersArePerfect();
      case FEMALES_REMOVED -> sex.hasMaleFlowers();
    };
  }

  /** Whether flowers that bear its seed stand open to anybody's pollen. */
  public boolean seedFlowersOpen() {
    return how == How.OPEN || how == How.MALES_REMOVED;
  }
}
