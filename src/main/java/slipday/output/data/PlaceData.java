package slipday.output.data;

import slipday.finding.Label;
import slipday.source.Span;

/**
 * A place in a file.
 *
 * @param builtIn whether the file ships with Slipday
 * @param line 1-based
 * @param column 1-based, in code points
 * @param endLine of the first character past the place
 * @param endColumn of the first character past the place
 * @param label what it has to do with the matter; may be empty
 */
public record PlaceData(
    String file, boolean builtIn, int line, int column, int endLine, int endColumn, String label) {
  static PlaceData of(Label label) {
    return of(label.span(), label.text());
  }

  static PlaceData of(Span span, String label) {
    return new PlaceData(
        span.source().name(),
        span.source().isBuiltIn(),
        span.line(),
        span.column(),
        span.endLine(),
        span.endColumn(),
        label);
  }
}
