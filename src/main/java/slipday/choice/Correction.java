package slipday.choice;

/**
 * What figures are corrected for; the last go first where there are too few figures.
 *
 * <p>Where plants of one season stood in several beds, season and bed are one correction.
 */
public enum Correction {
  SEASON("season"),
  LINE("line"),
  BED("season and bed"),
  MARKED("marked or kitchen"),
  INBREEDING("inbreeding"),
  LOAD("fruits on the plant");

  private final String words;

  Correction(String words) {
    this.words = words;
  }

  /** Without it plants that had better soil or a better year would seem better plants. */
  boolean isNeeded() {
    return this == SEASON || this == LINE || this == BED;
  }

  public String words() {
    return words;
  }
}
