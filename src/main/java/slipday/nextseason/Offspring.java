package slipday.nextseason;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.descent.Births;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Mating;
import slipday.garden.record.Plants;
import slipday.genetics.Generation;
import slipday.genetics.PlainGeneration;

/** The seed that was saved this season, by the plantings it comes from. */
final class Offspring {
  private final Garden garden;
  private final Births births;
  private final Map<String, List<Lot>> pure = new LinkedHashMap<>();
  private final Map<Lot, Fruit> crossed = new LinkedHashMap<>();

  Offspring(Garden garden) {
    this.garden = garden;
    this.births = new Births(garden.record());
    Set<String> seen = new HashSet<>();
    for (Lot lot : garden.lots()) {
      if (seen.add(lot.name())) {
        file(lot);
      }
    }
  }

  private void file(Lot lot) {
    List<Fact.Saved> takings = births.of(lot);
    if (takings.isEmpty() || !takings.stream().allMatch(this::isOfSeason)) {
      return;
    }
    Optional<Fruit> cross =
        takings.stream()
            .filter(t -> t.from() instanceof Fruit f && f.mating().isCross())
            .map(t -> (Fruit) t.from())
            .findFirst();
    if (cross.isPresent()) {
      crossed.put(lot, cross.get());
      return;
    }
    String mother = mother(takings.get(0)).stand().name();
    pure.computeIfAbsent(mother, n -> new ArrayList<>()).add(lot);
  }

  private boolean isOfSeason(Fact.Saved taking) {
    return mother(taking).stand().year() == garden.season().year();
  }

  /** The plant, or plants, that bore the fruit. */
  static Plants mother(Fact.Saved taking) {
    return taking.from() instanceof Fruit fruit ? fruit.seedParent() : (Plants) taking.from();
  }

  List<Fact.Saved> takings(Lot lot) {
    return births.of(lot);
  }

  /** Lots saved within a planting: selfed, sibbed or left to the bees. */
  List<Lot> of(Planting planting) {
    return pure.getOrDefault(planting.name(), List.of());
  }

  /** Lots of seed that was crossed, with one of the fruits of each. */
  Map<Lot, Fruit> crossed() {
    return crossed;
  }

  /** Whether the lot's own seed comes from a cross, so that the next one parts into types. */
  boolean isFirstGeneration(Lot lot) {
    return births.of(lot).stream()
        .anyMatch(t -> t.from() instanceof Fruit f && f.mating().isCross());
  }

  /** How many plants the seed of a lot was taken from; 0 where nobody numbered them. */
  int seedParents(Lot lot) {
    return (int)
        births.of(lot).stream()
            .map(Offspring::mother)
            .filter(p -> p.plant().isPresent())
            .distinct()
            .count();
  }

  /** The one plant that was selfed for it; empty for all other seed. */
  Optional<Plants> selfed(Lot lot) {
    List<Fact.Saved> takings = births.of(lot);
    boolean selfs =
        !takings.isEmpty()
            && takings.stream()
                .allMatch(t -> t.from() instanceof Fruit f && f.mating() == Mating.SELF);
    return selfs && takings.stream().map(Offspring::mother).distinct().count() == 1
        ? Optional.of(mother(takings.get(0)))
        : Optional.empty();
  }

  Optional<String> generation(Lot lot) {
    return births
        .generation(lot)
        .filter(g -> !(g instanceof PlainGeneration.Unknown))
        .map(Generation::print);
  }
}
