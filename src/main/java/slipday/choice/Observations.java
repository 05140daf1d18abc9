package slipday.choice;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import slipday.garden.Garden;
import slipday.garden.Species;
import slipday.garden.record.Fact;
import slipday.garden.record.Figures;
import slipday.garden.record.Fruit;
import slipday.garden.record.KnownTraits;
import slipday.garden.record.Plants;
import slipday.garden.record.Subject;
import slipday.measure.Range;
import slipday.measure.Unit;
import slipday.measure.Units;
import slipday.source.Span;

/**
 * Everything measured of single plants of a species, over all seasons. Fruit that the record gives
 * to no one plant is left aside and counted.
 */
final class Observations {
  private static final Set<String> NOT_JUST_RIPE = Set.of("before ripe", "overripe");

  private final Map<String, List<Observed>> byTrait = new TreeMap<>();
  private final Map<String, Double> mostPoints = new TreeMap<>();
  private final Map<Plants, Harvest> harvests = new LinkedHashMap<>();
  private int ofNoPlant;

  /**
   * The marked fruits of a plant, and how many for the kitchen were picked and how many weighed:
   * either may be left unsaid.
   */
  private static final class Harvest {
    private final Set<Fruit.Key> marked = new HashSet<>();
    private int picked;
    private int weighed;
    private final Span first;

    Harvest(Span first) {
      this.first = first;
    }

    int fruits() {
      return marked.size() + Math.max(picked, weighed);
    }
  }

  private final Units units;
  private final Trait weight;

  private Observations(Units units) {
    this.units = units;
    this.weight = Trait.weight(units);
  }

  static Observations of(Garden garden, Species species) {
    Observations made = new Observations(garden.units());
    for (Fact fact : garden.record().facts()) {
      figures(fact).ifPresent(made::stretch);
    }
    for (Fact fact : garden.record().facts()) {
      Optional<Figures> figures = figures(fact);
      Optional<Plants> plant = figures.isPresent() ? plants(fact) : Optional.empty();
      if (plant.filter(p -> isOf(p, species)).isPresent()) {
        made.read(fact, plant.get(), figures.orElseThrow());
      }
    }
    made.counts();
    made.byTrait.replaceAll((name, all) -> once(all));
    return made;
  }

  private static boolean isOf(Plants plant, Species species) {
    return plant.stand().lot().line().crop().species().equals(species);
  }

  /** What was measured of a trait, by its key; nothing where it was not. */
  List<Observed> of(String trait) {
    return byTrait.getOrDefault(trait, List.of());
  }

  /** Every trait that was measured. */
  List<Trait> traits() {
    return byTrait.values().stream().map(all -> all.get(0).trait()).toList();
  }

  /** Lines with figures of fruit that are of no one plant. */
  int ofNoPlant() {
    return ofNoPlant;
  }

  /** Stored fruit is looked at when it has dried: it tells of keeping, not of the harvest. */
  private static Optional<Figures> figures(Fact fact) {
    if (fact instanceof Fact.Picked picked) {
      return Optional.of(picked.figures());
    }
    return fact instanceof Fact.Measured measured
        ? Optional.of(measured.figures())
        : Optional.empty();
  }

  private static Subject subject(Fact fact) {
    return fact instanceof Fact.Picked picked ? picked.subject() : ((Fact.Measured) fact).subject();
  }

  private static Optional<Plants> plants(Fact fact) {
    Subject subject = subject(fact);
    if (subject instanceof Fruit fruit) {
      return Optional.of(fruit.seedParent());
    }
    return subject instanceof Plants plants ? Optional.of(plants) : Optional.empty();
  }

  /** A score out of fewer points is stretched to the longest scale that was used for it. */
  private void stretch(Figures figures) {
    for (Figures.Trait trait : figures.traits()) {
      trait.outOf().ifPresent(o -> mostPoints.merge(KnownTraits.key(trait.name()), o, Math::max));
    }
  }

  private void read(Fact fact, Plants plant, Figures figures) {
    Optional<Fruit> fruit =
        subject(fact) instanceof Fruit tagged ? Optional.of(tagged) : Optional.empty();
    if (plant.plant().isEmpty()) {
      boolean told =
          figures.kilograms().isPresent()
              || figures.brix().isPresent()
              || !figures.traits().isEmpty();
      ofNoPlant += told ? 1 : 0;
      return;
    }
    Harvest harvest = harvests.computeIfAbsent(plant, p -> new Harvest(fact.span()));
    if (fruit.isPresent()) {
      harvest.marked.add(fruit.get().key());
    } else if (fact instanceof Fact.Picked) {
      harvest.picked += figures.fruits();
    } else if (figures.kilograms().isPresent()) {
      harvest.weighed += figures.fruits();
    }
    if (fact instanceof Fact.Picked picked) {
      fruit.ifPresent(f -> ripe(f, picked));
    }
    Span span = fact.span();
    figures
        .kilograms()
        .ifPresent(
            kg ->
                add(
                    new Observed(
                        weight,
                        plant,
                        fruit,
                        weight.unit().orElseThrow().fromBase(kg / figures.fruits()),
                        figures.fruits(),
                        span)));
    figures
        .brix()
        .ifPresent(brix -> add(new Observed(Trait.SWEETNESS, plant, fruit, brix, 1, span)));
    for (Figures.Trait trait : figures.traits()) {
      add(new Observed(trait(trait), plant, fruit, value(trait), 1, span));
    }
  }

  private Trait trait(Figures.Trait figure) {
    String key = KnownTraits.key(figure.name());
    return new Trait(
        key,
        figure.unit().map(this::shown),
        Optional.ofNullable(mostPoints.get(key)).map(most -> new Range(0, most)));
  }

  private Unit shown(Unit written) {
    return Trait.shown(written, units);
  }

  private double value(Figures.Trait figure) {
    if (figure.unit().isPresent()) {
      return shown(figure.unit().get()).fromBase(figure.value());
    }
    double most = mostPoints.getOrDefault(KnownTraits.key(figure.name()), 1.0);
    return figure.outOf().map(o -> figure.value() * most / o).orElse(figure.value());
  }

  private void ripe(Fruit fruit, Fact.Picked picked) {
    long days = ChronoUnit.DAYS.between(fruit.date(), picked.date());
    if (picked.state().filter(NOT_JUST_RIPE::contains).isEmpty() && days > 0) {
      add(
          new Observed(
              Trait.DAYS_TO_RIPE, fruit.seedParent(), Optional.of(fruit), days, 1, picked.span()));
    }
  }

  private void counts() {
    harvests.forEach(
        (plant, harvest) -> {
          int fruits = harvest.fruits();
          if (fruits > 0) {
            add(new Observed(Trait.FRUITS, plant, Optional.empty(), fruits, 1, harvest.first));
          }
        });
  }

  private void add(Observed observed) {
    byTrait.computeIfAbsent(observed.trait().name(), n -> new ArrayList<>()).add(observed);
  }

  /** Two readings of one marked fruit are one figure, their mean. */
  private static List<Observed> once(List<Observed> all) {
    Map<Fruit.Key, List<Observed>> byFruit = new LinkedHashMap<>();
    List<Observed> kept = new ArrayList<>();
    for (Observed each : all) {
      each.fruit()
          .ifPresentOrElse(
              f -> byFruit.computeIfAbsent(f.key(), k -> new ArrayList<>()).add(each),
              () -> kept.add(each));
    }
    for (List<Observed> readings : byFruit.values()) {
      Observed first = readings.get(0);
      double mean = readings.stream().mapToDouble(Observed::value).average().orElseThrow();
      kept.add(
          new Observed(
              first.trait(), first.plant(), first.fruit(), mean, first.fruits(), first.span()));
    }
    return List.copyOf(kept);
  }
}
