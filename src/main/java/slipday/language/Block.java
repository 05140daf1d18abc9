package slipday.language;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.source.Span;
import slipday.syntax.Line;

/**
 * A declaration with the clauses under it.
 *
 * @param head its values; empty where its own line is mistaken, and nothing can then refer to it
 * @param damaged whether a line of it is mistaken; then nobody can say that a clause is missing
 */
public record Block(
    Declaration declaration,
    Optional<Bound> head,
    Line line,
    List<BoundClause> clauses,
    boolean damaged) {
  public Span span() {
    return line.span();
  }

  public Stream<BoundClause> every(Clause clause) {
    return clauses.stream().filter(c -> c.clause().equals(clause));
  }

  public Optional<BoundClause> find(Clause clause) {
    // By index: asked a dozen times of each block, of which there can be very many.
    for (int i = 0; i < clauses.size(); i++) {
      BoundClause bound = clauses.get(i);
      if (bound.clause().equals(clause)) {
        return Optional.of(bound);
      }
    }
    return Optional.empty();
  }
}
