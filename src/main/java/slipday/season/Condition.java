package slipday.season;

/** A condition that bounds when something can be planted out or sown. */
public enum Condition {
  FROST("frost risk", "no killing frost follows"),
  SOIL("cold soil", "the soil is warm enough"),
  CHILL("cold nights", "the nights are warm enough"),
  HEAT("heat at flowering", "the first flowers open in bearable heat"),
  RIPENING("fruit ripe before frost", "a fruit ripens before frost"),
  SEED_RIPENING("seed ripe before frost", "seed ripens before frost"),
  /** A partner's bloom: the parents of a cross, or a planting to bloom apart from. */
  BLOOM("bloom with its partner", "it blooms with its partner"),
  /** The first or last day that was looked at. */
  CALENDAR("the season itself", "the season is long enough");

  /** Warm enough "as a rule": in this share of years. */
  private static final double USUALLY = 0.5;

  private final String words;
  private final String met;

  Condition(String words, String met) {
    this.words = words;
    this.met = met;
  }

  /** What it is for the condition to be met: a sentence without its stop. */
  public String met() {
    return met;
  }

  /**
   * The share of years in which it must be met.
   *
   * @param risk the frost risk that is taken
   */
  public double wanted(double risk) {
    return switch (this) {
      case FROST, RIPENING, SEED_RIPENING -> 1 - risk;
      default -> USUALLY;
    };
  }

  public String words() {
    return words;
  }

  /** What stands in the way of a day on which it isn't met. */
  public String hindrance() {
    return switch (this) {
      case RIPENING -> "frost before a fruit is ripe";
      case SEED_RIPENING -> "frost before seed is ripe";
      case BLOOM -> "a partner that is not in bloom";
      default -> words;
    };
  }
}
