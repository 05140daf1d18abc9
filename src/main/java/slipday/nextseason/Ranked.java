package slipday.nextseason;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slipday.choice.Candidate;
import slipday.choice.Candidates;
import slipday.choice.Trait;
import slipday.garden.Lot;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;

/** The plants of a line in the order of its candidates. */
final class Ranked {
  private final Map<Plants, Candidate> byPlant = new HashMap<>();
  private final List<Trait> aimed;

  Ranked(Candidates found) {
    found.candidates().forEach(c -> byPlant.put(c.plant(), c));
    aimed =
        found.traits().stream()
            .filter(s -> s.aim().isPresent())
            .map(Candidates.Study::trait)
            .toList();
  }

  private Optional<Candidate> of(Plants plant) {
    return Optional.ofNullable(byPlant.get(plant));
  }

  /** Why seed that was taken may not go on, by its mother or its pollen; empty where it may. */
  Optional<String> refused(Fact.Saved taking) {
    Optional<Candidate> mother = of(Offspring.mother(taking));
    return mother
        .flatMap(Candidate::refused)
        .map(why -> "its plant may be no parent: " + why)
        .or(
            () ->
                mother.stream()
                    .flatMap(c -> c.fruits().stream())
                    .filter(
                        f -> taking.from() instanceof Fruit t && f.fruit().key().equals(t.key()))
                    .flatMap(f -> f.refused().stream())
                    .findFirst());
  }

  /** The best first; those of which nothing can be said come last, by name. */
  List<Plants> inOrder(Collection<Plants> plants) {
    return plants.stream()
        .sorted(
            Comparator.<Plants>comparingInt(
                    p -> of(p).flatMap(Candidate::rank).orElse(Integer.MAX_VALUE))
                .thenComparing(p -> p.stand().name())
                .thenComparing(p -> p.plant().orElse(0)))
        .toList();
  }

  /** Where a lot stands among those of its plant: fruit that is best for seed comes first. */
  int place(Plants plant, Lot lot) {
    List<Candidate.SeedFruit> fruits = of(plant).map(Candidate::fruits).orElse(List.of());
    for (int i = 0; i < fruits.size(); i++) {
      if (fruits.get(i).savedInto().contains(lot.name())) {
        return i;
      }
    }
    return fruits.size();
  }

  /** What was measured of a plant that the goal speaks of: {@code : sweetness 13.4 brix}. */
  String figures(Plants plant) {
    String words =
        of(plant).stream()
            .flatMap(c -> c.figures().stream())
            .filter(f -> aimed.contains(f.trait()) && f.raw().isPresent())
            .map(f -> f.trait().name() + " " + f.trait().words(f.raw().orElseThrow()))
            .collect(Collectors.joining(", "));
    return words.isEmpty() ? "" : ": " + words;
  }

  /** What speaks for a plant and against it, a sentence each. */
  List<String> speaks(Plants plant) {
    List<String> says = new ArrayList<>();
    List<String> good = of(plant).map(Candidate::speaksFor).orElse(List.of());
    List<String> bad = of(plant).map(Candidate::speaksAgainst).orElse(List.of());
    if (!good.isEmpty()) {
      says.add("For it: " + String.join(", ", good) + ".");
    }
    if (!bad.isEmpty()) {
      says.add("Against it: " + String.join(", ", bad) + ".");
    }
    return says;
  }
}
