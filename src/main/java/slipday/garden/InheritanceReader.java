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
  private final TraitNames names;

  InheritanceReader(List<Finding> findings, KnownTraits traits) {
    this.findings = findings;
    this.names = new TraitNames(findings, traits);
  }

  List<Goal.Inheritance> heritabilities(Block block, Line line) {
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
      } else if (names.find(clause.bound().name("trait")).isPresent()) {
        heritability(clause, trait, line).ifPresent(read::add);
      }
    }
    return read;
  }

  private Optional<Goal.Inheritance> heritability(BoundClause clause, String trait, Line line) {
    Bound bound = clause.bound();
    double share = bound.number("heritability");
    Value.Name generation = bound.name("generation");
    Value.Name species = bound.name("species");
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
    boolean same = species.text().equals(line.crop().species().name());
    if (!same) {
      findings.add(
          Finding.error(
                  "species-differs",
                  species.span(),
                  "`"
                      + line.name()
                      + "` is a "
                      + line.crop().species().name()
                      + ", and the heritability was found for `"
                      + species.text()
                      + "`.")
              .withHelp("A heritability holds for the species it was found in: leave it out."));
    }
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
                    bound.has("fruits") ? bound.count("fruits") : 1,
                    g,
                    clause.span()));
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
