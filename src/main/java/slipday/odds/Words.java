package slipday.odds;

/** Small words for sentences. */
final class Words {
  private Words() {}

  /** {@code 1 plant}, {@code 2 plants}. */
  static String count(long n, String word) {
    return n + " " + word + (n == 1 ? "" : "s");
  }
}
