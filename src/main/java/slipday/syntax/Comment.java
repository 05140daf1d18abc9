package slipday.syntax;

import slipday.source.Span;

/** A comment, from its {@code #} to the end of its line. */
public record Comment(Span span) {
  public String text() {
    return span.text().stripTrailing();
  }
}
