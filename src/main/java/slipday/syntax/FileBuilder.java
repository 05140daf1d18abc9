package slipday.syntax;

import java.util.ArrayList;
import java.util.List;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.source.Source;

/** Takes in the lines and comments of a file, in the order they stand. */
final class FileBuilder {
  private final Source source;
  private final List<Line> lines;
  private final List<Comment> comments = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  FileBuilder(Source source, int expectedLines) {
    this.source = source;
    this.lines = new ArrayList<>(expectedLines);
  }

  void line(List<Word> words) {
    lines.add(new Line(words));
  }

  /** A comment, from its {@code #} on; it says so where it may not be meant as one. */
  void comment(int start, int end) {
    String text = source.text();
    if (end - start > 1 && Character.isLetterOrDigit(text.codePointAt(start + 1))) {
      findings.add(withoutSpace(start, end));
    }
    comments.add(new Comment(source.span(start, end)));
  }

  private Finding withoutSpace(int start, int end) {
    return Finding.error(
            "comment-without-space",
            source.span(start, end),
            "`"
                + firstWord(source.text().substring(start, end))
                + "` reads as a comment, for a `#` hides the rest of its line.")
        .labelled("hidden")
        .withHelp("Put a space after `#` for a comment, or leave the `#` off for a tag.");
  }

  private static String firstWord(String text) {
    int end = 1;
    while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
      end++;
    }
    return text.substring(0, end);
  }

  Outcome<SeasonFile> build(LongLines tooLong) {
    SeasonFile file = new SeasonFile(source, tooLong.among(lines), List.copyOf(comments));
    return new Outcome<>(file, findings);
  }
}
