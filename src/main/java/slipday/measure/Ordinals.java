package slipday.measure;

/** First, second and so on, in figures. */
public final class Ordinals {
  private static final int TEN = 10;

  private Ordinals() {}

  /** {@code 1st}, {@code 2nd}, {@code 11th}. */
  public static String of(int n) {
    boolean teens = n / TEN % TEN == 1;
    String end =
        teens
            ? "th"
            : switch (n % TEN) {
              case 1 -> "st";
              case 2 -> "nd";
              case 3 -> "rd";
              default -> "th";
            };
    return n + end;
  }
}
