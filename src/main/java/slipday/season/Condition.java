package slipday.season;

/** A condition that bounds when something can be planted out or sown. */
public enum Condition {
  FROST("frost risk"),
  SOIL("cold soil"),
  CHILL("cold nights"),
  HEAT("heat at flowering"),
  RIPENING("fruit ripe before frost"),
  SEED_RIPENING("seed ripe before frost"),
  /** A partner's bloom: the parents of a cross, or a planting to bloom apart from. */
  BLOOM("bloom with its partner"),
  /** The first or last day that was looked at. */
  CALENDAR("the season itself");

  private final String words;

  Condition(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
