package slipday.garden.record;

/** How a flower was pollinated by hand. */
public enum Mating {
  SELF,
  SIB,
  CROSS,
  BACKCROSS;

  /** Whether pollen came from another planting. */
  public boolean isCross() {
    return this == CROSS || this == BACKCROSS;
  }
}
