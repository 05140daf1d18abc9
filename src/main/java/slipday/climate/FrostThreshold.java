package slipday.climate;

import slipday.measure.Units;

/**
 * Lows at screen height (1.5 to 2 m) that matter to a garden. The ground is some degrees colder
 * than the screen on a still clear night.
 */
public enum FrostThreshold {
  /** The ground freezes though the thermometer does not. */
  GROUND(2, "ground frost"),
  /** Tender leaves are lost. */
  TENDER(0, "frost"),
  /** 28 °F: all but hardy plants are lost. */
  HARD(-2.2, "hard frost");

  /** Lows that are this near a threshold are at it: they were converted or shifted. */
  private static final double ROUNDING = 1e-9;

  private final double celsius;
  private final String word;

  FrostThreshold(double celsius, String word) {
    this.celsius = celsius;
    this.word = word;
  }

  public double celsius() {
    return celsius;
  }

  public String word() {
    return word;
  }

  /** A low at or below the threshold; a missing one is not. */
  public boolean isReachedBy(double low) {
    return low <= celsius + ROUNDING;
  }

  /** {@code frost (0 °C)}. */
  public String words(Units units) {
    return word + " (" + units.temperature(celsius) + ")";
  }
}
