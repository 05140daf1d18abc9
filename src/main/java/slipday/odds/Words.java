package slipday.odds;

import slipday.measure.Counted;

/** Small words for sentences. */
final class Words {
  private Words() {}

  /** {@code 1 plant}, {@code 2 plants}. */
  static String count(long n, String word) {
    return Counted.of(n, word);
  }
}
