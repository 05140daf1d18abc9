package slipday.output;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import slipday.measure.Counted;

/** Lines of text for a terminal: cleaned, measured and wrapped. */
public final class Lines {
  /** No line of ours is longer than this many columns. */
  static final int WIDEST = 100;

  private Lines() {}

  /**
   * A text of the user's that can't steer the terminal: tabs become spaces, marks without width go,
   * other control characters show as a replacement character.
   */
  public static String clean(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> clean(c, out));
    return out.toString();
  }

  private static void clean(int c, StringBuilder out) {
    if (c == '\t') {
      out.append(' ');
    } else if (Character.getType(c) == Character.FORMAT) {
      out.append("");
    } else if (Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE) {
      out.append('\uFFFD');
    } else {
      out.appendCodePoint(c);
    }
  }

  /** Columns a cleaned text takes: a mark set on the letter before it takes none. */
  static int width(String text) {
    return (int) text.codePoints().filter(c -> !isMark(c)).count();
  }

  private static boolean isMark(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
  }

  static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - width(text)));
  }

  static String paddedLeft(String text, int width) {
    return " ".repeat(Math.max(0, width - width(text))) + text;
  }

  /**
   * Wrapped at spaces.
   *
   * @param first what stands before the first line
   * @param next what stands before the others
   */
  static List<String> wrapped(String first, String next, String text) {
    return wrapped(first, next, text, WIDEST);
  }

  private static List<String> wrapped(String first, String next, String text, int widest) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean fresh = true;
    for (String word : clean(text).split(" ", -1)) {
      if (!fresh && width(line.toString()) + 1 + width(word) > widest) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder(next);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    lines.add(line.toString().stripTrailing());
    return lines;
  }

  /** Wrapped, with the same indent on every line but a lead on the first. */
  static String hung(String lead, String text) {
    return String.join("\n", wrapped(lead, " ".repeat(width(lead)), text)) + "\n";
  }

  /**
   * The same within so many columns. A longer word runs over, up to twice as many, and is parted
   * there.
   */
  static String hung(String lead, String text, int widest) {
    int most = Math.max(1, 2 * widest - width(lead));
    String parted =
        Arrays.stream(clean(text).split(" ", -1))
            .map(word -> width(word) <= most ? word : parted(word, most))
            .collect(Collectors.joining(" "));
    return String.join("\n", wrapped(lead, " ".repeat(width(lead)), parted, widest)) + "\n";
  }

  private static String parted(String word, int most) {
    StringBuilder parts = new StringBuilder();
    int columns = 0;
    for (int c : word.codePoints().toArray()) {
      if (!isMark(c) && ++columns > most) {
        parts.append(' ');
        columns = 1;
      }
      parts.appendCodePoint(c);
    }
    return parts.toString();
  }

  /** No longer than so many letters, two or more; the end of a longer text gives way to a mark. */
  public static String shortened(String text, int most) {
    return text.codePointCount(0, text.length()) <= most
        ? text
        : text.substring(0, text.offsetByCodePoints(0, most - 1)) + "…";
  }

  /** {@code 1 error}, {@code 2 errors}. */
  public static String count(long n, String word) {
    return Counted.of(n, word);
  }

  public static String percent(double share) {
    return Math.round(share * 100) + " %";
  }
}
