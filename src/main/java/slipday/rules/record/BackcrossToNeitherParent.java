package slipday.rules.record;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import slipday.descent.Births;
import slipday.finding.Level;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Mating;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.source.Span;

/** A cross written as a backcross, to a line that the other side does not come from. */
public final class BackcrossToNeitherParent implements Rule {
  @Override
  public String id() {
    return "backcross-to-neither-parent";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Garden garden = season.garden();
    Births births = new Births(garden.record());
    garden
        .record()
        .every(Fruit.class)
        .filter(f -> f.year() == garden.record().season() && f.mating() == Mating.BACKCROSS)
        .forEach(f -> judge(f, garden, births, reporter));
  }

  private static void judge(Fruit fruit, Garden garden, Births births, Reporter reporter) {
    Lot mother = fruit.seedParent().stand().lot();
    Lot father = fruit.pollenParent().stand().lot();
    Set<String> kin = ancestors(mother, garden, births);
    kin.retainAll(ancestors(father, garden, births));
    if (!kin.isEmpty()) {
      return;
    }
    Optional<Span> ofMother = cross(mother, births);
    Optional<Span> ofFather = cross(father, births);
    if (ofMother.isPresent()) {
      found(fruit, mother, father, ofMother.get(), reporter);
    } else if (ofFather.isPresent()) {
      found(fruit, father, mother, ofFather.get(), reporter);
    }
  }

  /** Where the cross that a lot goes back to was made; empty where a parent of it is not known. */
  private static Optional<Span> cross(Lot lot, Births births) {
    Optional<BoundClause> began = lot.line().began().filter(c -> named(c.bound()).count() == 2);
    if (began.isPresent()) {
      return began.map(BoundClause::span);
    }
    List<Fact.Saved> takings = births.of(lot);
    if (takings.isEmpty() || !takings.stream().allMatch(t -> t.from() instanceof Fruit)) {
      return Optional.empty();
    }
    Fruit fruit = (Fruit) takings.get(0).from();
    Lot mother = fruit.seedParent().stand().lot();
    if (!mother.line().name().equals(fruit.pollenParent().stand().lot().line().name())) {
      return Optional.of(fruit.span());
    }
    return mother.name().equals(lot.name()) ? Optional.empty() : cross(mother, births);
  }

  private static Stream<String> named(Bound began) {
    return Stream.of("mother", "father").flatMap(n -> began.names(n).stream()).map(n -> n.text());
  }

  /** The line of a lot and all lines that it is known to come from. */
  private static Set<String> ancestors(Lot lot, Garden garden, Births births) {
    Set<String> lines = new HashSet<>();
    lots(lot, garden, births, lines, new HashSet<>());
    return lines;
  }

  private static void lots(
      Lot lot, Garden garden, Births births, Set<String> lines, Set<String> seen) {
    if (!seen.add(lot.name())) {
      return;
    }
    lines(lot.line(), garden, lines);
    for (Fact.Saved taking : births.of(lot)) {
      new Taking(taking).parents().forEach(p -> lots(p.stand().lot(), garden, births, lines, seen));
    }
  }

  private static void lines(Line line, Garden garden, Set<String> lines) {
    if (lines.add(line.name())) {
      Set<String> parents = new HashSet<>();
      line.began().stream().flatMap(c -> named(c.bound())).forEach(parents::add);
      garden.lines().stream()
          .filter(l -> parents.contains(l.name()))
          .forEach(l -> lines(l, garden, lines));
    }
  }

  private static void found(Fruit fruit, Lot cross, Lot other, Span made, Reporter reporter) {
    OfFruit.report(
            fruit,
            Words.tick(fruit.tag())
                + " is recorded as a backcross, and "
                + Words.tick(other.line().name())
                + " is no parent of the cross that "
                + Words.tick(cross.name())
                + " is from.",
            reporter)
        .marked("backcrossed here")
        .also(made, "its cross")
        .concerns(cross)
        .concerns(other)
        .note("A backcross goes from the offspring of a cross to one of its two parents.")
        .help(
            "If the plants are right, write `crossed` for `backcrossed`; if it was one of the"
                + " parents, name a planting of that line.");
  }
}
