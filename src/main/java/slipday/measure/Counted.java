package slipday.measure;

/** Whole numbers of things, in words. */
public final class Counted {
  private Counted() {}

  /** {@code 1 plant}, {@code 2 plants}. */
  public static String of(long n, String thing) {
    return n + " " + thing + (n == 1 ? "" : "s");
  }
}
