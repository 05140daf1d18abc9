package slipday.garden;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.garden.record.KnownTraits;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.PlanClauses;
import slipday.language.Value;
import slipday.measure.Dimension;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.source.Span;

/** What a goal aims at: traits that are known, each once, with figures that fit them. */
final class AimReader {
  private final List<Finding> findings;
  private final TraitNames names;

  AimReader(List<Finding> findings, KnownTraits traits) {
    this.findings = findings;
    this.names = new TraitNames(findings, traits);
  }

  List<Goal.Aim> aims(Block block) {
    Map<String, Span> first = new HashMap<>();
    List<Goal.Aim> aims = new ArrayList<>();
    for (BoundClause clause : block.clauses()) {
      Optional<Goal.Way> way = way(clause);
      if (way.isPresent() && fits(clause, first)) {
        aims.add(aim(clause, way.get()));
      }
    }
    return aims;
  }

  private static Optional<Goal.Way> way(BoundClause clause) {
    if (clause.clause().equals(PlanClauses.RAISE)) {
      return Optional.of(Goal.Way.RAISE);
    }
    if (clause.clause().equals(PlanClauses.LOWER)) {
      return Optional.of(Goal.Way.LOWER);
    }
    return clause.clause().equals(PlanClauses.KEEP_AT)
        ? Optional.of(Goal.Way.KEEP)
        : Optional.empty();
  }

  private static Goal.Aim aim(BoundClause clause, Goal.Way way) {
    Bound b = clause.bound();
    Goal.Figure at = figure(b, b.has("amount") ? "amount" : "number");
    Optional<Goal.Figure> to = b.has("high") ? Optional.of(figure(b, "high")) : Optional.empty();
    double weight = b.has("weight") ? b.number("weight") : 1;
    boolean orMore = clause.span().text().contains("or more");
    return new Goal.Aim(b.name("trait").text(), way, at, to, orMore, weight, clause.span());
  }

  private static Goal.Figure figure(Bound b, String name) {
    Value value = b.find(name).orElseThrow();
    if (value instanceof Value.Amount amount) {
      return new Goal.Figure(amount.quantity().amount(), Optional.of(amount.quantity()));
    }
    return new Goal.Figure(b.number(name), Optional.empty());
  }

  private boolean fits(BoundClause clause, Map<String, Span> first) {
    Value.Name name = clause.bound().name("trait");
    Optional<KnownTraits.Kind> kind = names.find(name);
    if (kind.isEmpty()) {
      return false;
    }
    Span earlier = first.putIfAbsent(KnownTraits.key(name.text()), clause.span());
    if (earlier != null) {
      findings.add(
          Finding.error("said-twice", clause.span(), "`" + name.text() + "` is aimed at twice.")
              .labelled("aimed at again")
              .also(earlier, "aimed at first")
              .withHelp("Keep one of them; for a range write `keep` with both ends."));
      return false;
    }
    return figuresFit(clause, name.text(), kind.get()) && forwards(clause);
  }

  private boolean figuresFit(BoundClause clause, String trait, KnownTraits.Kind kind) {
    Bound b = clause.bound();
    boolean fit = fits(b.find(b.has("amount") ? "amount" : "number").orElseThrow(), trait, kind);
    return (!b.has("high") || fits(b.find("high").orElseThrow(), trait, kind)) && fit;
  }

  private boolean fits(Value figure, String trait, KnownTraits.Kind kind) {
    if (figure instanceof Value.Amount amount) {
      Dimension dimension = amount.quantity().unit().dimension();
      boolean right = kind.dimension().filter(d -> d == dimension).isPresent();
      if (!right) {
        findings.add(
            Finding.error(
                    "unit-wrong",
                    figure.span(),
                    "`" + trait + "` is not measured in `" + amount.quantity().unit().word() + "`.")
                .withHelp(
                    kind.dimension()
                        .map(d -> "It takes " + d.fittingUnits() + ".")
                        .orElse("Give it a bare number.")));
      }
      return right;
    }
    if (kind.unitNeeded()) {
      findings.add(KnownTraits.unitMissing(figure.span(), trait, kind.dimension().orElseThrow()));
      return false;
    }
    return kind.scale().isEmpty() || isOnScale(figure, trait, kind.scale().get());
  }

  private boolean isOnScale(Value figure, String trait, Range scale) {
    double points = ((Value.Plain) figure).number();
    boolean on = points >= scale.low() && points <= scale.high();
    if (!on) {
      findings.add(
          Finding.error(
                  "off-scale",
                  figure.span(),
                  "`" + figure.span().text() + "` is not on the scale of `" + trait + "`.")
              .withHelp(
                  "It goes from "
                      + Quantity.plain(scale.low())
                      + " to "
                      + Quantity.plain(scale.high())
                      + "."));
    }
    return on;
  }

  private boolean forwards(BoundClause clause) {
    Bound b = clause.bound();
    if (!b.has("high")) {
      return true;
    }
    Goal.Figure low = figure(b, b.has("amount") ? "amount" : "number");
    Goal.Figure high = figure(b, "high");
    boolean forwards = base(low) <= base(high);
    if (!forwards) {
      Span from = b.find(b.has("amount") ? "amount" : "number").orElseThrow().span();
      Span range = from.to(b.find("high").orElseThrow().span());
      findings.add(
          Finding.error(
                  "range-backwards",
                  range,
                  "The first figure of `" + range.text() + "` is larger than the second.")
              .withHelp("Write the smaller one first."));
    }
    return forwards;
  }

  private static double base(Goal.Figure figure) {
    return figure.quantity().map(Quantity::base).orElse(figure.number());
  }
}
