package slipday.garden;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.garden.record.KnownTraits;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.GoalClauses;
import slipday.language.PlanClauses;
import slipday.source.Span;

/** Goals of lines, and allowances. */
final class GoalResolver {
  private final List<Finding> findings;
  private final Names<Line> lines;
  private final Names<Goal> goals;
  private final AimReader aims;
  private final InheritanceReader inheritance;
  private final CorrelationReader correlations;

  /**
   * @param traits that can be aimed at
   */
  GoalResolver(
      List<Finding> findings, Names<Line> lines, Names<Species> species, KnownTraits traits) {
    this.findings = findings;
    this.lines = lines;
    this.goals = new Names<>("goal", findings);
    this.aims = new AimReader(findings, traits);
    this.inheritance = new InheritanceReader(findings, species, traits);
    this.correlations = new CorrelationReader(findings, traits);
  }

  List<Goal> goals() {
    return goals.all();
  }

  void goal(Block block) {
    if (block.head().isEmpty()) {
      return;
    }
    Optional<Line> line = lines.need(block.head().get().name("line"));
    // What it says is looked up all the same where there is no such line.
    List<Goal.Aim> aimed = aims.aims(block);
    List<Goal.Refusal> refused = refusals(block);
    List<Goal.Inheritance> inherited = inheritance.heritabilities(block, line);
    List<Goal.Correlation> genetic = correlations.read(block, GoalClauses.CORRELATION);
    List<Goal.Correlation> environmental =
        correlations.read(block, GoalClauses.ENVIRONMENTAL_CORRELATION);
    if (line.isEmpty()) {
      return;
    }
    goals.add(
        new Goal(
            line.get(),
            aimed,
            refused,
            block.find(PlanClauses.PARENTS).map(c -> c.bound().count("count")),
            inherited,
            genetic,
            environmental,
            weighing(block),
            new Places(block)));
  }

  /** Each fault once: of two limits nobody could tell which holds. */
  private List<Goal.Refusal> refusals(Block block) {
    Map<String, Span> first = new HashMap<>();
    List<Goal.Refusal> refusals = new ArrayList<>();
    for (BoundClause clause : block.every(PlanClauses.REFUSE).toList()) {
      String fault = clause.bound().name("fault").text();
      Span earlier = first.putIfAbsent(fault.toLowerCase(Locale.ROOT), clause.span());
      if (earlier == null) {
        refusals.add(refusal(clause));
      } else {
        findings.add(
            Finding.error("said-twice", clause.span(), "`" + fault + "` is refused twice.")
                .labelled("refused again")
                .also(earlier, "refused first")
                .withHelp("Keep the one whose limit you mean."));
      }
    }
    return refusals;
  }

  private static Goal.Refusal refusal(BoundClause clause) {
    Bound bound = clause.bound();
    return new Goal.Refusal(
        bound.name("fault").text(),
        bound.has("share") ? Optional.of(bound.share("share").share()) : Optional.empty(),
        bound.has("count") ? Optional.of(bound.count("count")) : Optional.empty(),
        clause.span());
  }

  private static Goal.Weighing weighing(Block block) {
    return block
        .find(GoalClauses.WEIGHTS)
        .map(c -> c.bound().choice("how"))
        .map(
            how ->
                switch (how) {
                  case "per unit" -> Goal.Weighing.UNIT;
                  case "by what is lacking" -> Goal.Weighing.LACKING;
                  default -> Goal.Weighing.DEVIATION;
                })
        .orElse(Goal.Weighing.DEVIATION);
  }

  static Optional<Allowance> allowance(Block block) {
    return block
        .head()
        .map(
            head ->
                new Allowance(
                    head.name("rule"),
                    block
                        .find(PlanClauses.ALLOW_IN)
                        .map(c -> c.bound().names("name"))
                        .orElse(List.of()),
                    block.find(PlanClauses.BECAUSE).map(c -> c.bound().text("text")),
                    new Places(block)));
  }
}
