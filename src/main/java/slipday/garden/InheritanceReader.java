package slipday.garden;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.garden.record.KnownTraits;
import slipday.genetics.Generation;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.GoalClauses;
import slipday.language.Value;
import slipday.measure.Quantity;
import slipday.source.Span;

/** What a goal says of how its traits are inherited. */
final class InheritanceReader {
  private final List<Finding> findings;
  private final Names<Species> species;
  private final TraitNames names;

  InheritanceReader(List<Finding> findings, Names<Species> species, KnownTraits traits) {
    this.findings = findings;
    this.species = species;
    this.names = new TraitNames(findings, traits);
  }

  /**
   * @param line the goal is of; empty where there is none
   */
  List<Goal.Inheritance> heritabilities(Block block, Optional<Line> line) {
    Map<String, Span> first = new HashMap<>();
    List<Goal.Inheritance> read = new ArrayList<>();
    for (BoundClause clause : block.every(GoalClauses.HERITABILITY).toList()) {
      String trait = clause.bound().name("trait").text();
      Span earlier = first.putIfAbsent(KnownTraits.key(trait), clause.span());
      if (earlier != null) {
        findings.add(
            Finding.error(
                    "said-twice",
                    clause.span(),
                    "The heritability of `" + trait + "` is stated twice.")
                .also(earlier, "stated first")
                .withHelp("Keep the one that was found for plants like these."));
      } else {
        boolean known = names.find(clause.bound().name("trait")).isPresent();
        heritability(clause, trait, line).filter(h -> known).ifPresent(read::add);
      }
    }
    return read;
  }

  private Optional<Goal.Inheritance> heritability(
      BoundClause clause, String trait, Optional<Line> line) {
    Bound bound = clause.bound();
    double share = bound.number("heritability");
    Value.Name generation = bound.name("generation");
    Optional<Generation> among = Generation.parse(generation.text()).value();
    boolean inRange = share > 0 && share < 1;
    if (!inRange) {
      findings.add(
          Finding.error(
                  "figure-out-of-range",
                  bound.find("heritability").orElseThrow().span(),
                  "A heritability of " + Quantity.plain(share) + " can't be.")
              .withHelp("It is a share of the differences: above 0 and below 1."));
    }
    boolean same = isOf(bound.name("species"), line);
    boolean fits = meansFit(clause);
    return among
        .filter(g -> inRange && same && fits)
        .map(
            g ->
                new Goal.Inheritance(
                    trait,
                    share,
                    unit(bound.choice("unit")),
                    bound.has("plants") ? Optional.of(bound.count("plants")) : Optional.empty(),
                    bound.has("fruits") ? Optional.of(bound.count("fruits")) : Optional.empty(),
                    g,
                    clause.span()));
  }

  /** Whether the species is known, and that of the line. */
  private boolean isOf(Value.Name name, Optional<Line> line) {
    if (species.need(name).isEmpty() || line.isEmpty()) {
      return false;
    }
    String its = line.get().crop().species().name();
    boolean same = name.text().equals(its);
    if (!same) {
      findings.add(
          Finding.error(
                  "species-differs",
                  name.span(),
                  "`"
                      + line.get().name()
                      + "` is a "
                      + its
                      + ", and the heritability was found for `"
                      + name.text()
                      + "`.")
              .withHelp("A heritability holds for the species it was found in: leave it out."));
    }
    return same;
  }

  /** A fruit is no mean, and plants are what a plot is the mean of. */
  private boolean meansFit(BoundClause clause) {
    Bound bound = clause.bound();
    Goal.Unit unit = unit(bound.choice("unit"));
    boolean plants = bound.has("plants") && unit != Goal.Unit.PLOT;
    boolean fruits = bound.has("fruits") && unit == Goal.Unit.FRUIT;
    if (plants || fruits) {
      findings.add(
          Finding.error(
                  "figure-out-of-range",
                  bound.find(plants ? "plants" : "fruits").orElseThrow().span(),
                  "A heritability of "
                      + bound.choice("unit")
                      + " has no number of "
                      + (plants ? "plants" : "fruits")
                      + ".")
              .labelled("of how many what?")
              .withHelp(
                  "Write what it was found of: `of a fruit`, `of plant means of 3 fruits`, or `of"
                      + " plot means of 6 plants`."));
    }
    return !plants && !fruits;
  }

  private static Goal.Unit unit(String words) {
    return switch (words) {
      case "a fruit" -> Goal.Unit.FRUIT;
      case "plant means" -> Goal.Unit.PLANT;
      default -> Goal.Unit.PLOT;
    };
  }
}
