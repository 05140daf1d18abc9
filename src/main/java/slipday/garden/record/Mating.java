package slipday.garden.record;

/** How a flower was pollinated by hand. */
public enum Mating {
  SELF("selfed"),
  SIB("sibbed"),
  CROSS("crossed"),
  BACKCROSS("backcrossed");

  private final String words;

  Mating(String words) {
    this.words = words;
  }

  /** What was done to the flower, as the record says it. */
  public String words() {
    return words;
  }

  /** Whether pollen came from another planting. */
  public boolean isCross() {
    return this == CROSS || this == BACKCROSS;
  }
}
