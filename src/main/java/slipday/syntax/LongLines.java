package slipday.syntax;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import slipday.source.Source;

/**
 * Lines so long that no one wrote them, such as those of a file of another sort. They are not taken
 * apart, for that could take longer than anyone waits; each is one word as it stands.
 *
 * @param blanked the text with spaces in their stead
 */
record LongLines(String blanked, List<Line> lines) {
  private static final int LONGEST = 10_000;

  static LongLines of(Source source) {
    List<Line> lines = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    for (int number = 1; number <= source.lineCount(); number++) {
      if (length(source, number) > LONGEST && !source.line(number).isBlank()) {
        Line line = line(source, number);
        text.append(source.text(), text.length(), line.first().start());
        text.append(" ".repeat(line.first().text().length()));
        lines.add(line);
      }
    }
    if (lines.isEmpty()) {
      return new LongLines(source.text(), lines);
    }
    text.append(source.text(), text.length(), source.text().length());
    return new LongLines(text.toString(), lines);
  }

  private static int length(Source source, int number) {
    int next = number < source.lineCount() ? source.lineStart(number + 1) : source.text().length();
    return next - source.lineStart(number);
  }

  private static Line line(Source source, int number) {
    String whole = source.line(number);
    String text = whole.strip();
    int start = source.lineStart(number) + whole.indexOf(text);
    return new Line(List.of(new Word(WordKind.OTHER, text, source, start, start + text.length())));
  }

  /**
   * All lines of the file, in their order.
   *
   * @param others not to be changed any more
   */
  List<Line> among(List<Line> others) {
    if (lines.isEmpty()) {
      return Collections.unmodifiableList(others);
    }
    List<Line> all = new ArrayList<>(others);
    all.addAll(lines);
    all.sort(Comparator.comparingInt(line -> line.first().start()));
    return List.copyOf(all);
  }
}
