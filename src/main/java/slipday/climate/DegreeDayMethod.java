package slipday.climate;

/** How a day's degree-days are had from its low and high. */
public enum DegreeDayMethod {
  /** The mean of low and high, capped at the limit, less the base, not below zero. */
  AVERAGE("daily average"),
  /**
   * Low and high each brought between base and limit, then averaged: the 86/50 °F way of corn
   * growers (Ohio State University Extension, Ohioline AGF-101).
   */
  AVERAGE_BOTH_LIMITS("daily average, low and high held between the limits"),
  /** Single sine, horizontal cut-off (Baskerville and Emin 1969, Ecology 50:514). */
  SINGLE_SINE("single sine, horizontal cut-off");

  private final String words;

  DegreeDayMethod(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
