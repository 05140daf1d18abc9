package slipday.climate;

/** The two frosts a season lies between, split at midsummer. */
public enum FrostSide {
  /** The last before midsummer. */
  SPRING("last spring"),
  /** The first from midsummer on. */
  AUTUMN("first autumn");

  private final String words;

  FrostSide(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
