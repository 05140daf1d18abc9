package slipday.garden;

import java.util.Optional;
import slipday.language.Block;
import slipday.language.BoundClause;
import slipday.language.Clause;
import slipday.measure.Reason;
import slipday.source.Span;

/** Where the clauses of one thing stand. */
public record Places(Block block) {
  /** The line of a clause, or the declaration where it is not said. */
  public Span of(Clause clause) {
    return find(clause).orElseGet(block::span);
  }

  public Optional<Span> find(Clause clause) {
    return block.find(clause).map(BoundClause::span);
  }

  /** A reason that quotes the clause, or the declaration where it is not said. */
  public Reason reason(Clause clause) {
    return Reason.quoting(of(clause));
  }
}
