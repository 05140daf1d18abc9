package slipday.climate;

import java.util.Arrays;
import slipday.source.Source;
import slipday.source.Span;

/** The lines of a weather file that hold something: not blank, and no {@code #} comment. */
final class WeatherLines {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final Source source;
  private int[] starts = new int[1024];
  private int[] ends = new int[1024];
  private int count;

  WeatherLines(Source source) {
    this.source = source;
    String text = source.text();
    for (int line = 1; line <= source.lineCount(); line++) {
      int end = line < source.lineCount() ? source.lineStart(line + 1) : text.length();
      add(text, source.lineStart(line), end);
    }
  }

  private void add(String text, int from, int to) {
    int start = from == 0 && !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? 1 : from;
    int end = to;
    while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    int first = start;
    while (first < end && Character.isWhitespace(text.charAt(first))) {
      first++;
    }
    if (first == end || text.charAt(first) == '#') {
      return;
    }
    if (count == starts.length) {
      starts = Arrays.copyOf(starts, count * 2);
      ends = Arrays.copyOf(ends, count * 2);
    }
    starts[count] = start;
    ends[count++] = end;
  }

  int count() {
    return count;
  }

  int start(int index) {
    return starts[index];
  }

  /** Just past the last character that is not a space. */
  int end(int index) {
    return ends[index];
  }

  String text() {
    return source.text();
  }

  String line(int index) {
    return text().substring(starts[index], ends[index]);
  }

  Span span(int index) {
    return source.span(starts[index], ends[index]);
  }

  Source source() {
    return source;
  }
}
