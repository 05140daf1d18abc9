package slipday.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.source.Source;
import slipday.syntax.Comment;
import slipday.syntax.Line;
import slipday.syntax.SeasonFile;

/**
 * A line of the file as it stands, with words, a comment or both.
 *
 * @param afterBlank whether an empty line stands before it
 * @param indented whether it stands in from the edge
 */
record Row(boolean afterBlank, boolean indented, Optional<Line> line, Optional<Comment> comment) {

  boolean isOnlyComment() {
    return line.isEmpty();
  }

  /** Lines and comments of a file, those on one line together. */
  static List<Row> of(SeasonFile file) {
    List<Row> rows = new ArrayList<>();
    Source source = file.source();
    List<Line> lines = file.lines();
    List<Comment> comments = file.comments();
    int lineAt = 0;
    int commentAt = 0;
    int lastNumber = 0;
    while (lineAt < lines.size() || commentAt < comments.size()) {
      int ofLine = lineAt < lines.size() ? number(lines.get(lineAt)) : Integer.MAX_VALUE;
      int ofComment =
          commentAt < comments.size() ? comments.get(commentAt).span().line() : Integer.MAX_VALUE;
      int number = Math.min(ofLine, ofComment);
      Optional<Line> line = ofLine == number ? Optional.of(lines.get(lineAt++)) : Optional.empty();
      Optional<Comment> comment =
          ofComment == number ? Optional.of(comments.get(commentAt++)) : Optional.empty();
      rows.add(new Row(number > lastNumber + 1, isIndented(source, number), line, comment));
      lastNumber = number;
    }
    return rows;
  }

  private static int number(Line line) {
    return line.first().source().lineOf(line.first().start());
  }

  private static boolean isIndented(Source source, int number) {
    int start = source.lineStart(number);
    boolean mark = start == 0 && source.text().charAt(0) == '\uFEFF';
    int first = mark ? 1 : start;
    return first < source.text().length()
        && " \t\u00A0\u2009\u202F".indexOf(source.text().charAt(first)) >= 0;
  }
}
