package slipday.language;

import java.util.Optional;
import slipday.source.Placed;
import slipday.source.Span;
import slipday.syntax.Line;

/** A line that fits its clause, with its values and, for a crop fact, its source. */
public record BoundClause(Clause clause, Bound bound, Line line, Optional<Says> says)
    implements Placed {
  @Override
  public Span span() {
    return line.span();
  }
}
