package slipday.garden;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.PlanClauses;
import slipday.language.Value;

/** Goals of lines, and allowances. */
final class GoalResolver {
  private final Names<Line> lines;
  private final Names<Goal> goals;
  private final InheritanceReader inheritance;

  GoalResolver(List<Finding> findings, Names<Line> lines) {
    this.lines = lines;
    this.goals = new Names<>("goal", findings);
    this.inheritance = new InheritanceReader(findings);
  }

  List<Goal> goals() {
    return goals.all();
  }

  void goal(Block block) {
    if (block.head().isEmpty()) {
      return;
    }
    Optional<Line> line = lines.need(block.head().get().name("line"));
    if (line.isEmpty()) {
      return;
    }
    List<Goal.Aim> aims = new ArrayList<>();
    for (BoundClause clause : block.clauses()) {
      aim(clause).ifPresent(aims::add);
    }
    goals.add(
        new Goal(
            line.get(),
            aims,
            block.every(PlanClauses.REFUSE).map(c -> c.bound().name("fault").text()).toList(),
            block.find(PlanClauses.PARENTS).map(c -> c.bound().count("count")),
            inheritance.heritabilities(block, line.get()),
            inheritance.correlations(block),
            new Places(block)));
  }

  private static Optional<Goal.Aim> aim(BoundClause clause) {
    Goal.Way way;
    if (clause.clause().equals(PlanClauses.RAISE)) {
      way = Goal.Way.RAISE;
    } else if (clause.clause().equals(PlanClauses.LOWER)) {
      way = Goal.Way.LOWER;
    } else if (clause.clause().equals(PlanClauses.KEEP_AT)) {
      way = Goal.Way.KEEP;
    } else {
      return Optional.empty();
    }
    Bound b = clause.bound();
    Goal.Figure at = b.has("amount") ? figure(b, "amount") : figure(b, "number");
    Optional<Goal.Figure> to = b.has("high") ? Optional.of(figure(b, "high")) : Optional.empty();
    double weight = b.has("weight") ? b.number("weight") : 1;
    boolean orMore = clause.span().text().contains("or more");
    return Optional.of(
        new Goal.Aim(b.name("trait").text(), way, at, to, orMore, weight, clause.span()));
  }

  private static Goal.Figure figure(Bound b, String name) {
    Value value = b.find(name).orElseThrow();
    if (value instanceof Value.Amount amount) {
      return new Goal.Figure(amount.quantity().amount(), Optional.of(amount.quantity()));
    }
    return new Goal.Figure(b.number(name), Optional.empty());
  }

  static Optional<Allowance> allowance(Block block) {
    return block
        .head()
        .map(
            head ->
                new Allowance(
                    head.name("rule").text(),
                    block
                        .find(PlanClauses.ALLOW_IN)
                        .map(c -> c.bound().names("name"))
                        .orElse(List.of()),
                    block.find(PlanClauses.BECAUSE).map(c -> c.bound().text("text")),
                    new Places(block)));
  }
}
