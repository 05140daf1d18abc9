package slipday.choice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slipday.descent.Relatives;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.garden.record.Asides;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.genetics.Aim;
import slipday.genetics.Generation;

/** Weighs a line's traits as one, ranks its candidates, and tells what speaks for each. */
final class Ranking {
  private static final double ALIKE = 1e-9;
  private static final int LEVELS = 3;
  private static final int CHOSEN = 4;

  private final Optional<Goal> goal;
  private final Aims aims;
  private final List<TraitValues> traits;
  private final Relatives relatives;
  private final Refusals refusals;
  private final SeedFruits seedFruits;
  private final Asides asides;

  /** By level: every plant is compared with all. */
  private final Map<Integer, Map<Plants, Optional<Double>>> indices = new HashMap<>();

  Ranking(
      Garden garden,
      Optional<Goal> goal,
      Aims aims,
      List<TraitValues> traits,
      Relatives relatives,
      Faults faults,
      Map<Plants, Double> borne) {
    this.goal = goal;
    this.aims = aims;
    this.traits = traits;
    this.relatives = relatives;
    this.refusals = new Refusals(garden, goal, faults, borne);
    this.asides = new Asides(garden.record());
    this.seedFruits = new SeedFruits(garden, relatives, faults, traits, this, refusals);
  }

  Refusals refusals() {
    return refusals;
  }

  List<Candidate> candidates(Collection<Plants> plants, List<Fruit> fruits) {
    Set<Plants> parents = parents(plants, fruits);
    List<Candidate> all = new ArrayList<>();
    for (Plants plant : plants) {
      all.add(
          new Candidate(
              plant,
              relatives.generation(plant).map(Generation::print),
              relatives.pedigree().inbreeding(relatives.plant(plant)),
              figures(plant, plants),
              index(plant, LEVELS / 2),
              parents.contains(plant) ? rank(plant, parents) : Optional.empty(),
              refusals.of(plant),
              List.of(),
              List.of(),
              seedFruits.of(fruits.stream().filter(f -> f.seedParent().equals(plant)).toList()),
              asides.ofPlant(plant)));
    }
    all.sort(
        Comparator.comparing((Candidate c) -> c.refused().isPresent())
            .thenComparing(c -> c.rank().orElse(Integer.MAX_VALUE)));
    Words words = new Words(all, aims, traits, relatives, refusals);
    return all.stream().map(words::spoken).toList();
  }

  /** Plants not refused that have seed of the line; all that are not refused if none has. */
  private Set<Plants> parents(Collection<Plants> plants, List<Fruit> fruits) {
    List<Plants> sound = plants.stream().filter(p -> refusals.of(p).isEmpty()).toList();
    Set<Plants> bearing = seedFruits.bearing(fruits);
    Set<Plants> parents = new LinkedHashSet<>(sound);
    parents.retainAll(bearing);
    return parents.isEmpty() ? new LinkedHashSet<>(sound) : parents;
  }

  private List<Candidate.Figure> figures(Plants plant, Collection<Plants> plants) {
    return traits.stream()
        .map(
            t ->
                new Candidate.Figure(
                    t.trait(),
                    t.fruits(plant),
                    t.raw(plant),
                    t.corrected(plant),
                    t.predicted(plant),
                    t.alone(plant),
                    rank(t, plant, plants)))
        .toList();
  }

  /** By how near the breeding value is to the aim; an aim met counts by how well it is met. */
  private Optional<Integer> rank(TraitValues trait, Plants plant, Collection<Plants> plants) {
    Optional<Goal.Aim> aim = aims.of(trait.trait());
    Optional<Double> own = standing(trait, aim, plant);
    if (own.isEmpty() || trait.raw(plant).isEmpty()) {
      return Optional.empty();
    }
    long better =
        plants.stream()
            .filter(p -> trait.raw(p).isPresent())
            .flatMap(p -> standing(trait, aim, p).stream())
            .filter(other -> other > own.get() + ALIKE)
            .count();
    return Optional.of((int) better + 1);
  }

  private Optional<Double> standing(TraitValues trait, Optional<Goal.Aim> aim, Plants plant) {
    Optional<Double> value = trait.predicted(plant).map(Predicted::value);
    if (aim.isEmpty()) {
      return Optional.empty();
    }
    return value.map(
        v ->
            switch (aim.get().way()) {
              case RAISE -> v;
              case LOWER -> -v;
              case KEEP -> aims.aim(trait.trait(), trait.deviation()).orElseThrow().worth(v);
            });
  }

  private Optional<Double> index(Plants plant, int level) {
    Map<Plants, Optional<Double>> known = indices.computeIfAbsent(level, l -> new HashMap<>());
    return known.computeIfAbsent(plant, p -> index(Map.of(relatives.plant(p), 1.0), level));
  }

  /**
   * The worth of plants or seed: of each trait's breeding value, the distance from its aim in
   * standard deviations, times what it matters.
   *
   * @param shares of individuals of the pedigree, summing to 1
   */
  Optional<Double> index(Map<Integer, Double> shares, int level) {
    double sum = 0;
    boolean any = false;
    for (TraitValues trait : traits) {
      Optional<Aim> aim = aims.aim(trait.trait(), trait.deviation());
      int levels = trait.inheritance().levels().size();
      Optional<Double> value = trait.value(shares, levels == LEVELS ? level : 0);
      if (aim.isPresent() && value.isPresent()) {
        any = true;
        sum += aim.get().worth(value.get());
      }
    }
    return any ? Optional.of(sum == 0 ? 0.0 : sum) : Optional.empty();
  }

  private Optional<Integer> rank(Plants plant, Collection<Plants> parents) {
    Optional<Double> own = index(plant, LEVELS / 2);
    if (own.isEmpty()) {
      return Optional.empty();
    }
    long better =
        parents.stream()
            .flatMap(p -> index(p, LEVELS / 2).stream())
            .filter(other -> other > own.get() + ALIKE)
            .count();
    return Optional.of((int) better + 1);
  }

  /** Whether the heritabilities that are taken for granted make another choice. */
  Optional<String> changes(List<Candidate> all) {
    boolean assumed =
        traits.stream()
            .anyMatch(
                t ->
                    aims.isAimedAt(t.trait())
                        && t.inheritance().source() == Source.ASSUMED
                        && t.measured() > 1);
    List<Plants> eligible =
        all.stream().filter(c -> c.rank().isPresent()).map(Candidate::plant).toList();
    int chosen =
        Math.min(goal.flatMap(Goal::parents).orElse(CHOSEN), Math.max(1, eligible.size() - 1));
    if (!assumed || eligible.size() < 2) {
      return Optional.empty();
    }
    List<String> best = new ArrayList<>();
    for (int level = 0; level < LEVELS; level++) {
      best.add(best(eligible, level, chosen));
    }
    String these = chosen == 1 ? "the best plant is" : "the best " + chosen + " plants are";
    if (best.stream().distinct().count() == 1) {
      return Optional.of(
          "At a heritability of 0.1, 0.3 or 0.5 " + these + " the same: " + best.get(0) + ".");
    }
    return Optional.of(
        "The choice depends on the heritability: at 0.1 "
            + these
            + " "
            + best.get(0)
            + "; at 0.3 "
            + best.get(1)
            + "; at 0.5 "
            + best.get(2)
            + ".");
  }

  private String best(List<Plants> eligible, int level, int chosen) {
    return eligible.stream()
        .sorted(Comparator.comparingDouble((Plants p) -> -index(p, level).orElse(0.0)))
        .limit(chosen)
        .map(Plants::toString)
        .sorted()
        .collect(Collectors.joining(", "));
  }
}
