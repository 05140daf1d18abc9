package slipday.nextseason;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slipday.garden.Allowance;
import slipday.garden.Lot;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.Clause;
import slipday.language.PlanClauses;
import slipday.language.Value;
import slipday.nextseason.NextSeason.Made;
import slipday.nextseason.NextSeason.Role;
import slipday.nextseason.NextSeason.Sown;

/** Lines for what is sown, crossed and allowed, after those of this season. */
final class GrowText {
  /** Said anew, or of this season only. */
  private static final List<Clause> NOT_COPIED =
      List.of(
          PlanClauses.IN,
          PlanClauses.PLANTS,
          PlanClauses.SOW_ON,
          PlanClauses.PLANT_OUT_ON,
          PlanClauses.SOW_SEEDS,
          PlanClauses.POLLINATE,
          PlanClauses.SEED);

  private final NextSeason next;

  GrowText(NextSeason next) {
    this.next = next;
  }

  List<String> sown(Sown s) {
    Block block = s.from().places().block();
    List<String> lines = new ArrayList<>();
    boolean first = followers(s.from().name()).stream().limit(1).allMatch(s.name()::equals);
    boolean same = first && (s.role() == Role.AGAIN || s.role() == Role.CARRIED_ON);
    if (same || s.lot().name().equals(s.from().lot().name())) {
      lines.addAll(BlockText.comment(block));
    }
    s.why().forEach(w -> lines.addAll(Comments.of(w)));
    lines.add("grow " + s.name());
    s.bed().ifPresent(b -> lines.add("  in " + b.name()));
    plants(s, block).ifPresent(lines::add);
    lines.addAll(BlockText.under(block, c -> copied(c, s)));
    boolean careful = block.find(PlanClauses.FLOWERS).isPresent();
    if (s.fruits() > 0 && !careful) {
      lines.add("  flowers cover the chosen");
    }
    if (s.fruits() > 0) {
      lines.add("  pollinate " + pollination(s));
    }
    lines.add(s.seedSaved() ? "  seed saved" : "  seed not saved");
    return lines;
  }

  private static String pollination(Sown s) {
    String from = s.fromPlants() > 1 ? " from " + s.fromPlants() + " plants or more" : "";
    return (s.selfed() ? "self" : "sib")
        + " by hand, for "
        + s.fruits()
        + (s.fruits() == 1 ? " fruit" : " fruits")
        + from;
  }

  private static Optional<String> plants(Sown s, Block block) {
    if (s.plants() == 0) {
      return Optional.empty();
    }
    String apart =
        block
            .find(PlanClauses.PLANTS)
            .flatMap(c -> c.bound().find("apart"))
            .map(v -> ", " + v.span().text() + " apart")
            .orElse("");
    return Optional.of("  plants " + s.plants() + apart);
  }

  private List<String> copied(BoundClause clause, Sown s) {
    if (NOT_COPIED.contains(clause.clause())) {
      return List.of();
    }
    if (clause.clause().equals(PlanClauses.BLOOM_APART)) {
      return followers(clause.bound().name("planting").text()).stream()
          .filter(n -> !n.equals(s.name()))
          .map(n -> "  bloom apart from " + n)
          .toList();
    }
    if (clause.clause().equals(PlanClauses.FLOWERS)) {
      return flowers(clause, s);
    }
    return List.of(BlockText.line(clause));
  }

  private List<String> flowers(BoundClause clause, Sown s) {
    Bound bound = clause.bound();
    boolean chosen = bound.choice("how").equals("cover the chosen");
    if (!s.seedSaved() && chosen) {
      return List.of();
    }
    List<Value.Name> caged = bound.names("planting");
    if (caged.isEmpty()) {
      return List.of(BlockText.line(clause));
    }
    String mates =
        caged.stream()
            .flatMap(n -> followers(n.text()).stream())
            .filter(n -> !n.equals(s.name()))
            .collect(Collectors.joining(" and "));
    return List.of("  flowers caged" + (mates.isEmpty() ? "" : " with " + mates));
  }

  private List<String> followers(String planting) {
    return next.followers().getOrDefault(planting, List.of());
  }

  List<String> cross(Made made) {
    List<String> lines = new ArrayList<>(BlockText.comment(made.cross().places().block()));
    lines.addAll(Comments.of("It was not made this season."));
    lines.addAll(
        BlockText.body(
            made.cross().places().block(),
            c ->
                c.clause().equals(PlanClauses.SEED_PARENT)
                    ? List.of("  seed parent " + made.seedParent())
                    : c.clause().equals(PlanClauses.POLLEN_PARENT)
                        ? List.of("  pollen parent " + made.pollenParent())
                        : List.of(BlockText.line(c))));
    return lines;
  }

  /** An allowance for what goes on; nothing where all it names is gone. */
  List<String> allowance(Allowance allowance) {
    List<String> names = new ArrayList<>();
    for (Value.Name subject : allowance.subjects()) {
      String name = subject.text();
      List<String> after = followers(name);
      if (!after.isEmpty()) {
        names.addAll(after);
      } else if (!next.garden().planting(name).isPresent()) {
        names.add(name);
      }
    }
    if (names.isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>(BlockText.comment(allowance.places().block()));
    lines.addAll(
        BlockText.body(
            allowance.places().block(),
            c ->
                c.clause().equals(PlanClauses.ALLOW_IN)
                    ? List.of("  in " + String.join(" and ", names))
                    : List.of(BlockText.line(c))));
    return lines;
  }

  /** A declared lot with what is left of it. */
  List<String> lot(Lot lot) {
    Map<String, Integer> left = next.left();
    return BlockText.body(
        lot.places().block(),
        c ->
            c.clause().equals(PlanClauses.SEEDS) && left.containsKey(lot.name())
                ? List.of("  seeds " + left.get(lot.name()))
                : List.of(BlockText.line(c)));
  }
}
