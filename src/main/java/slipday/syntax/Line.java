package slipday.syntax;

import java.util.List;
import slipday.source.Span;

/** A line that says something: at least one word. */
public record Line(List<Word> words) {
  public Line {
    if (words.isEmpty()) {
      throw new IllegalArgumentException("a line without words");
    }
  }

  public Word first() {
    return words.get(0);
  }

  public Span span() {
    Word last = words.get(words.size() - 1);
    return new Span(first().source(), first().start(), last.end());
  }
}
