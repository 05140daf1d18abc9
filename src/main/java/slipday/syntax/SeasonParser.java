package slipday.syntax;

import java.util.List;
import slipday.finding.Outcome;
import slipday.source.Source;
import slipday.source.Span;

/**
 * The one way from a text to its lines. {@link GrammarLines} has them from the grammar, which says
 * what a line is; {@link PlainLines} has the same lines of most texts in a fraction of the time.
 */
public final class SeasonParser {
  private SeasonParser() {}

  /**
   * Parses any text at all; what is wrong with it is in the findings, and the rest still parses.
   */
  public static Outcome<SeasonFile> parse(Source source) {
    LongLines tooLong = LongLines.of(source);
    return PlainLines.parse(source, tooLong).orElseGet(() -> GrammarLines.parse(source, tooLong));
  }

  /**
   * Parses some parts of a text, and leaves out the lines between.
   *
   * @param parts in their order, each from the beginning of a line to the end of one; none of their
   *     lines may be so long that it is not taken apart
   */
  public static Outcome<SeasonFile> parse(Source source, List<Span> parts) {
    return PlainLines.parse(source, parts).orElseGet(() -> GrammarLines.parse(source, parts));
  }
}
