package slipday.source;

import java.util.Arrays;

/**
 * One text with the name people know it by, and the map from offsets to lines.
 *
 * <p>Compared by identity: two files with the same text are still two places.
 */
public final class Source {
  private static final int NONE = Integer.MAX_VALUE;

  /** Characters of a line, taken for a first guess at how many lines there are. */
  private static final int USUAL_LINE = 16;

  private final String name;
  private final String text;
  private final boolean builtIn;
  private final int[] lineStarts;

  private Source(String name, String text, boolean builtIn) {
    this.name = name;
    this.text = text;
    this.builtIn = builtIn;
    this.lineStarts = lineStarts(text);
  }

  /** A file of the user's, named as the user would write it (relative, forward slashes). */
  public static Source of(String name, String text) {
    return new Source(name, text, false);
  }

  /** A file that ships with Slipday, such as the crop facts. */
  public static Source builtIn(String name, String text) {
    return new Source(name, text, true);
  }

  private static int[] lineStarts(String text) {
    int[] starts = new int[text.length() / USUAL_LINE + 64];
    int count = 1;
    int feed = next(text, '\n', 0);
    int back = next(text, '\r', 0);
    while (feed != NONE || back != NONE) {
      int end = back < feed && back + 1 != feed ? back : feed;
      if (count == starts.length) {
        starts = Arrays.copyOf(starts, count * 2);
      }
      starts[count++] = end + 1;
      feed = feed <= end ? next(text, '\n', end + 1) : feed;
      back = back <= end ? next(text, '\r', end + 1) : back;
    }
    return count == starts.length ? starts : Arrays.copyOf(starts, count);
  }

  /** The next place of a character, or {@link #NONE}. */
  private static int next(String text, char c, int from) {
    int at = text.indexOf(c, from);
    return at < 0 ? NONE : at;
  }

  public String name() {
    return name;
  }

  /** What its name says of its folder, with the slash after it; empty where it says nothing. */
  public String folder() {
    return name.substring(0, name.lastIndexOf('/') + 1);
  }

  public String text() {
    return text;
  }

  /** Whether this text ships with Slipday rather than coming from the gardener. */
  public boolean isBuiltIn() {
    return builtIn;
  }

  public int lineCount() {
    return lineStarts.length;
  }

  /** The 1-based line that holds an offset. */
  public int lineOf(int offset) {
    int at = Arrays.binarySearch(lineStarts, offset);
    return at >= 0 ? at + 1 : -at - 1;
  }

  /** The 1-based column of an offset, counted in characters as people see them (code points). */
  public int columnOf(int offset) {
    int start = lineStarts[lineOf(offset) - 1];
    return text.codePointCount(start, Math.min(offset, text.length())) + 1;
  }

  /** Offset of the first character of a 1-based line. */
  public int lineStart(int line) {
    return lineStarts[line - 1];
  }

  /** The text of a 1-based line, without its line end. */
  public String line(int line) {
    int start = lineStarts[line - 1];
    int end = line < lineStarts.length ? lineStarts[line] : text.length();
    while (end > start && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
      end--;
    }
    return text.substring(start, end);
  }

  public Span span(int start, int end) {
    return new Span(this, start, end);
  }

  @Override
  public String toString() {
    return name;
  }
}
