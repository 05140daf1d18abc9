package slipday.syntax;

import slipday.source.Source;
import slipday.source.Span;

/** One word of a line. Offsets are into the source; {@code text} is as written. */
public record Word(WordKind kind, String text, Source source, int start, int end) {
  public Span span() {
    return new Span(source, start, end);
  }

  public boolean is(WordKind k) {
    return kind == k;
  }

  /** Whether this is that word of the language; case does not matter. */
  public boolean isWord(String word) {
    return kind == WordKind.WORD && text.equalsIgnoreCase(word);
  }

  /** The text between the quotes of a TEXT, or the rest of the line after an open quote. */
  public String unquoted() {
    return switch (kind) {
      case TEXT -> text.substring(1, text.length() - 1);
      case OPEN_TEXT -> text.substring(1).stripTrailing();
      default -> text;
    };
  }
}
