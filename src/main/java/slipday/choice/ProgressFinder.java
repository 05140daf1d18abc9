package slipday.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import slipday.descent.Relatives;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.garden.Line;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.genetics.Generation;
import slipday.genetics.mixed.BreedingValues;

/** Gathers a line's generations, season by season. */
final class ProgressFinder {
  private final Garden garden;
  private final Line line;
  private final Optional<Goal> goal;
  private final Aims aims;
  private final Observations observations;
  private final List<Fruit> used;
  private final Relatives relatives;

  ProgressFinder(Garden garden, Line line) {
    this.garden = garden;
    this.line = line;
    this.goal =
        garden.goals().stream().filter(g -> g.line().name().equals(line.name())).findFirst();
    this.aims = new Aims(goal);
    this.observations = Observations.of(garden, line.crop().species());
    this.used =
        garden
            .record()
            .every(Fact.Saved.class)
            .filter(s -> s.lot().line().name().equals(line.name()) && s.from() instanceof Fruit)
            .map(s -> (Fruit) s.from())
            .distinct()
            .toList();
    Set<Plants> all = new LinkedHashSet<>();
    observations.traits().forEach(t -> observations.of(t.name()).forEach(o -> all.add(o.plant())));
    this.relatives = Relatives.of(garden, all, used);
  }

  Progress find() {
    List<Progress.Trend> trends = new ArrayList<>();
    Map<String, Trait> known = new LinkedHashMap<>();
    observations.traits().forEach(t -> known.put(t.name(), t));
    List<Trait> ordered = new ArrayList<>();
    for (String name : aims.names()) {
      Optional.ofNullable(known.remove(name)).ifPresent(ordered::add);
    }
    ordered.addAll(known.values());
    List<Trait> measured = new ArrayList<>();
    for (Trait trait : ordered) {
      List<Observed> observed = observations.of(trait.name());
      if (observed.stream().anyMatch(o -> isOfLine(o.plant()))) {
        measured.add(trait);
      }
    }
    Map<String, BreedingValues> together = together(measured);
    for (Trait trait : measured) {
      trends.add(
          trend(
              trait,
              observations.of(trait.name()),
              Optional.ofNullable(together.get(trait.name()))));
    }
    return new Progress(line, trends, notes(trends));
  }

  private boolean isOfLine(Plants plant) {
    return plant.stand().lot().line().name().equals(line.name());
  }

  /** Breeding values of traits that the goal's correlations bind together. */
  private Map<String, BreedingValues> together(List<Trait> measured) {
    Map<String, BreedingValues> together = new TreeMap<>();
    if (goal.filter(g -> !g.correlations().isEmpty() || !g.environmental().isEmpty()).isPresent()) {
      Valuation valuation = new Valuation(garden, goal, observations, Faults.of(garden), relatives);
      List<Trait> usable = measured.stream().filter(t -> !valuation.usable(t).isEmpty()).toList();
      for (Together.Known each : valuation.of(usable)) {
        each.inheritance()
            .main()
            .filter(l -> each.alone().isPresent())
            .ifPresent(l -> together.put(each.trait().name(), l.values()));
      }
    }
    return together;
  }

  private Progress.Trend trend(
      Trait trait, List<Observed> observed, Optional<BreedingValues> together) {
    Map<String, List<Stood>> generations = generations(observed);
    List<Progress.Grown> stands = new ArrayList<>();
    generations.values().forEach(all -> all.forEach(s -> stands.add(s.told(aims, trait))));
    Comparison comparison =
        new Comparison(garden, line, observed, relatives, this::generation, together);
    List<Progress.Step> steps = new ArrayList<>();
    List<String> names = List.copyOf(generations.keySet());
    for (int i = 1; i < names.size(); i++) {
      List<Stood> before = generations.getOrDefault(names.get(i - 1), List.of());
      List<Stood> after = generations.getOrDefault(names.get(i), List.of());
      steps.add(comparison.step(names.get(i - 1), names.get(i), before, after));
    }
    Optional<Progress.Step> whole =
        names.size() > 2
            ? Optional.of(
                comparison.step(names.get(0), names.get(names.size() - 1), List.of(), List.of()))
            : Optional.empty();
    return new Progress.Trend(
        trait,
        aims.of(trait).map(Aims::words),
        aims.aim(trait, 1),
        stands,
        checks(trait, observed),
        steps,
        whole);
  }

  /** What was measured beside the line in more than one of its seasons. */
  private List<Progress.Grown> checks(Trait trait, List<Observed> observed) {
    Set<Integer> own = new LinkedHashSet<>();
    observed.stream()
        .filter(o -> isOfLine(o.plant()))
        .forEach(o -> own.add(o.plant().stand().year()));
    Map<String, Map<Integer, Stood>> checks = new TreeMap<>();
    for (Observed each : observed) {
      int year = each.plant().stand().year();
      if (!isOfLine(each.plant()) && own.contains(year)) {
        String name = Comparison.check(each.plant());
        checks
            .computeIfAbsent(name, n -> new TreeMap<>())
            .computeIfAbsent(year, y -> new Stood(name, y, relatives, used))
            .add(each);
      }
    }
    return checks.values().stream()
        .filter(years -> years.size() > 1)
        .flatMap(years -> years.values().stream())
        .map(s -> s.told(aims, trait))
        .toList();
  }

  /** The line's plants by generation, the least inbred first, then by season. */
  private Map<String, List<Stood>> generations(List<Observed> observed) {
    Map<List<Object>, Stood> stood = new LinkedHashMap<>();
    for (Observed each : observed) {
      if (isOfLine(each.plant())) {
        String generation = generation(each.plant());
        int year = each.plant().stand().year();
        stood
            .computeIfAbsent(
                List.of(generation, year), k -> new Stood(generation, year, relatives, used))
            .add(each);
      }
    }
    List<Stood> sorted = new ArrayList<>(stood.values());
    Map<String, Double> inbreeding = new LinkedHashMap<>();
    Map<String, Integer> first = new LinkedHashMap<>();
    sorted.forEach(s -> inbreeding.merge(s.generation(), s.inbreeding(), Math::min));
    sorted.forEach(s -> first.merge(s.generation(), s.year(), Math::min));
    sorted.sort(
        Comparator.comparingLong(
                (Stood s) -> Math.round(1e6 * inbreeding.getOrDefault(s.generation(), 0.0)))
            .thenComparing(s -> first.getOrDefault(s.generation(), 0))
            .thenComparing(Stood::generation)
            .thenComparing(Stood::year));
    Map<String, List<Stood>> generations = new LinkedHashMap<>();
    sorted.forEach(s -> generations.computeIfAbsent(s.generation(), g -> new ArrayList<>()).add(s));
    return generations;
  }

  private String generation(Plants plant) {
    return relatives
        .generation(plant)
        .map(Generation::print)
        .filter(g -> !g.equals("unknown"))
        .orElse(plant.stand().lot().name());
  }

  private List<String> notes(List<Progress.Trend> trends) {
    List<String> notes = new ArrayList<>();
    boolean aimed = trends.stream().anyMatch(t -> t.aim().isPresent());
    boolean untold =
        trends.stream()
            .filter(t -> !aimed || t.aim().isPresent())
            .flatMap(t -> t.steps().stream())
            .anyMatch(Comparison::isUntold);
    if (untold) {
      notes.add(
          "Beside the next generation grow a few plants of an older one from remnant seed, or of a"
              + " line that is kept as it is: then gain and weather can be told apart.");
    }
    boolean inbred =
        trends.stream()
            .filter(t -> t.steps().stream().anyMatch(s -> s.gain().isPresent()))
            .anyMatch(
                t -> t.stands().stream().map(Progress.Grown::inbreeding).distinct().count() > 1);
    if (inbred) {
      notes.add(
          "Generations differ in inbreeding (F) too: vigour that fades with it is part of what is"
              + " gained or lost.");
    }
    if (!trends.isEmpty() && trends.stream().allMatch(t -> t.steps().isEmpty())) {
      notes.add(
          "One generation of `" + line.name() + "` was measured, so there is no progress yet.");
    }
    return notes;
  }
}
