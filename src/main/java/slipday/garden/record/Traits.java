package slipday.garden.record;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slipday.finding.Finding;
import slipday.finding.Nearest;
import slipday.language.Block;
import slipday.language.Clause;
import slipday.language.PlanClauses;
import slipday.language.RecordClauses;
import slipday.language.Value;
import slipday.measure.Dimension;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.measure.Unit;
import slipday.source.Span;

/** The traits that can be recorded: those every gardener has, and the plan's own. */
final class Traits {
  static final List<String> SCORES =
      List.of(
          "flavour",
          "texture",
          "aroma",
          "juiciness",
          "firmness",
          "colour",
          "looks",
          "keeping",
          "vigour",
          "netting");
  static final List<String> LENGTHS =
      List.of("length", "width", "height", "girth", "flesh", "cavity", "rind", "vine");

  /** What is told in lines of its own. */
  private static final Map<String, Clause> LINES =
      Map.of(
          KnownTraits.SWEETNESS,
          RecordClauses.SWEETNESS,
          KnownTraits.FRUIT_WEIGHT,
          RecordClauses.WEIGHED);

  private final List<Finding> findings;
  private final Map<String, Trait> known = new TreeMap<>();

  /** A trait with what a figure for it must be; nothing where any figure will do. */
  private record Trait(
      String name, Optional<Dimension> dimension, Optional<Range> scale, Optional<Span> span) {}

  Traits(List<Finding> findings, List<Block> declared) {
    this.findings = findings;
    SCORES.forEach(s -> known.put(s, new Trait(s, Optional.empty(), Optional.empty(), none())));
    LENGTHS.forEach(
        s -> known.put(s, new Trait(s, Optional.of(Dimension.LENGTH), Optional.empty(), none())));
    Map<String, Span> first = new HashMap<>();
    declared.forEach(b -> declare(b, first));
  }

  private static Optional<Span> none() {
    return Optional.empty();
  }

  private void declare(Block block, Map<String, Span> first) {
    if (block.head().isEmpty()) {
      return;
    }
    String name = key(block.head().get().name("name").text());
    Span earlier = first.putIfAbsent(name, block.span());
    if (earlier != null) {
      findings.add(
          Finding.error("name-twice", block.span(), "There are two traits called `" + name + "`.")
              .labelled("declared again")
              .also(earlier, "declared first")
              .withHelp("Give one of them another name."));
      return;
    }
    Optional<Dimension> dimension =
        block.find(PlanClauses.UNIT).flatMap(c -> dimension(c.bound().name("unit")));
    Optional<Range> scale = block.find(PlanClauses.SCALE).map(c -> c.bound().range("scale"));
    known.put(name, new Trait(name, dimension, scale, Optional.of(block.span())));
  }

  private Optional<Dimension> dimension(Value.Name word) {
    Optional<Unit> unit = Unit.named(word.text());
    if (unit.isEmpty()) {
      findings.add(
          Finding.error("unit-unknown", word.span(), "`" + word.text() + "` is not a unit.")
              .nearest(word.text(), Unit.allWords().toList(), "unit"));
    }
    return unit.map(Unit::dimension);
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** A figure for a trait; empty, with a finding, where the trait is unknown or does not fit. */
  Optional<Figures.Trait> read(Value.Name name, Value figure) {
    Trait trait = known.get(key(name.text()));
    if (trait == null) {
      findings.add(
          Finding.error("unknown-name", name.span(), "There is no trait `" + name.text() + "`.")
              .meant(near(name.text()), () -> instead(name.text())));
      return Optional.empty();
    }
    if (figure instanceof Value.Amount amount) {
      return amount(trait, name, amount);
    }
    if (trait.dimension.isPresent()) {
      findings.add(KnownTraits.unitMissing(figure.span(), trait.name, trait.dimension.get()));
      return Optional.empty();
    }
    if (figure instanceof Value.Score score) {
      return Optional.of(
              new Figures.Trait(
                  trait.name,
                  score.points(),
                  Optional.empty(),
                  Optional.of(score.of()),
                  span(name, figure)))
          .filter(f -> isOnScale(trait, f.value(), figure) && isOutOf(trait, score));
    }
    double number = ((Value.Plain) figure).number();
    return isOnScale(trait, number, figure)
        ? Optional.of(
            new Figures.Trait(
                trait.name,
                number,
                Optional.empty(),
                trait.scale.map(Range::high),
                span(name, figure)))
        : Optional.empty();
  }

  private Optional<String> near(String name) {
    return LINES.containsKey(KnownTraits.key(name))
        ? Optional.empty()
        : Nearest.to(name, known.keySet());
  }

  private static String instead(String name) {
    Clause line = LINES.get(KnownTraits.key(name));
    return line == null
        ? "Declare it in the plan with a line such as `trait " + name + "`."
        : "It has a line of its own, as `"
            + line.example()
            + "`; after `picked` the figure stands without the word.";
  }

  private Optional<Figures.Trait> amount(Trait trait, Value.Name name, Value.Amount amount) {
    Unit unit = amount.quantity().unit();
    boolean fits = trait.dimension.map(d -> d == unit.dimension()).orElse(trait.scale.isEmpty());
    if (!fits) {
      findings.add(
          Finding.error(
                  "unit-wrong",
                  amount.span(),
                  "`" + trait.name + "` is not measured in `" + unit.word() + "`.")
              .withHelp(
                  trait
                      .dimension
                      .map(d -> "It takes " + d.fittingUnits() + ".")
                      .orElse("Give it points, such as `8 of 10`.")));
      return Optional.empty();
    }
    return Optional.of(
        new Figures.Trait(
            trait.name,
            amount.quantity().base(),
            Optional.of(unit),
            Optional.empty(),
            span(name, amount)));
  }

  private static Span span(Value.Name name, Value figure) {
    return name.span().to(figure.span());
  }

  private boolean isOnScale(Trait trait, double points, Value figure) {
    boolean on =
        trait.scale.isEmpty()
            || (points >= trait.scale.get().low() && points <= trait.scale.get().high());
    if (!on) {
      findings.add(offScale(trait, figure));
    }
    return on;
  }

  private boolean isOutOf(Trait trait, Value.Score score) {
    boolean same = trait.scale.isEmpty() || trait.scale.get().high() == score.of();
    if (!same) {
      findings.add(offScale(trait, score));
    }
    return same;
  }

  private static Finding offScale(Trait trait, Value figure) {
    Range scale = trait.scale.orElseThrow();
    Finding finding =
        Finding.error(
                "off-scale",
                figure.span(),
                "`" + figure.span().text() + "` is not on the scale of `" + trait.name + "`.")
            .withHelp(
                "It goes from "
                    + Quantity.plain(scale.low())
                    + " to "
                    + Quantity.plain(scale.high())
                    + ".");
    return trait.span.map(s -> finding.also(s, "its scale")).orElse(finding);
  }
}
