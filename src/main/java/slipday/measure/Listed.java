package slipday.measure;

import java.util.List;

/** Things listed in a sentence. */
public final class Listed {
  private Listed() {}

  /** {@code a}, {@code a or b}, {@code a, b or c}. */
  public static String either(List<String> things) {
    int last = things.size() - 1;
    return last <= 0
        ? String.join("", things)
        : String.join(", ", things.subList(0, last)) + " or " + things.get(last);
  }
}
