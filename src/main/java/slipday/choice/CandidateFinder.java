package slipday.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slipday.descent.Relatives;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.garden.Line;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.KnownTraits;
import slipday.garden.record.Plants;
import slipday.genetics.Aim;
import slipday.genetics.mixed.BreedingValues;

/** Gathers a line's candidates and what is known of them. */
final class CandidateFinder {
  private final Garden garden;
  private final Line line;
  private final Optional<Goal> goal;
  private final Aims aims;
  private final Observations observations;
  private final Faults faults;
  private final int year;
  private final Set<Plants> candidates;
  private final List<Fruit> fruits;
  private final Relatives relatives;
  private final List<TraitValues> traits = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  CandidateFinder(Garden garden, Line line) {
    this.garden = garden;
    this.line = line;
    this.goal =
        garden.goals().stream().filter(g -> g.line().name().equals(line.name())).findFirst();
    this.aims = new Aims(goal);
    this.observations = Observations.of(garden, line.crop().species());
    this.faults = Faults.of(garden);
    List<Fruit> marked =
        garden.record().every(Fruit.class).filter(f -> isOfLine(f.seedParent())).toList();
    this.year = year(marked);
    this.fruits = marked.stream().filter(f -> f.year() == year).toList();
    this.candidates =
        Stream.concat(fruits.stream().map(Fruit::seedParent), measured())
            .filter(p -> p.stand().year() == year && p.plant().isPresent())
            .sorted(
                java.util.Comparator.comparing((Plants p) -> p.stand().name())
                    .thenComparing(p -> p.plant().orElse(0)))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    Set<Plants> all = new LinkedHashSet<>(candidates);
    observations.traits().forEach(t -> observations.of(t.name()).forEach(o -> all.add(o.plant())));
    this.relatives = Relatives.of(garden, all, fruits);
  }

  private boolean isOfLine(Plants plant) {
    return plant.stand().lot().line().name().equals(line.name());
  }

  private Stream<Plants> measured() {
    return observations.traits().stream()
        .flatMap(t -> observations.of(t.name()).stream())
        .map(Observed::plant)
        .filter(this::isOfLine);
  }

  private int year(List<Fruit> marked) {
    TreeSet<Integer> years = new TreeSet<>();
    marked.forEach(f -> years.add(f.year()));
    measured().forEach(p -> years.add(p.stand().year()));
    int planned = garden.season().year();
    return years.contains(planned) || years.isEmpty() ? planned : years.last();
  }

  Relatives relatives() {
    return relatives;
  }

  Aims aims() {
    return aims;
  }

  /** Those that {@link #find} valued. */
  List<TraitValues> traits() {
    return traits;
  }

  Candidates find() {
    Valuation valuation = new Valuation(garden, goal, observations, faults, relatives);
    List<Trait> measured =
        ordered().stream()
            .filter(t -> valuation.usable(t).stream().anyMatch(o -> candidates.contains(o.plant())))
            .toList();
    for (Together.Known each : valuation.of(measured)) {
      traits.add(new TraitValues(each, relatives, candidates));
    }
    if (aims.weighing() == Goal.Weighing.LACKING) {
      new Lacking(aims, new Correlations(goal)).weights(traits).match(this::weigh, notes::add);
    }
    Ranking ranking = new Ranking(garden, goal, aims, traits, relatives, faults, valuation.borne());
    List<Candidate> valued = ranking.candidates(candidates, fruits);
    notes(valuation.loads(), ranking, valued);
    return new Candidates(
        line,
        goal,
        year,
        traits.stream().map(this::study).toList(),
        valued,
        goal.flatMap(Goal::parents),
        notes);
  }

  private boolean weigh(Map<String, Double> perUnit) {
    aims.weigh(perUnit);
    return true;
  }

  /** Those aimed at first, in the plan's order; then others that were measured. */
  private List<Trait> ordered() {
    Map<String, Trait> known = new LinkedHashMap<>();
    observations.traits().forEach(t -> known.put(t.name(), t));
    List<Trait> ordered = new ArrayList<>();
    for (String name : aims.names()) {
      Optional.ofNullable(known.remove(name)).ifPresent(ordered::add);
    }
    ordered.addAll(known.values());
    return ordered;
  }

  private Candidates.Study study(TraitValues values) {
    Inheritance inheritance = values.inheritance();
    List<String> says = new ArrayList<>(inheritance.says());
    if (!values.model().givenUp().isEmpty()) {
      says.add(
          "There are too few figures to correct for "
              + values.model().givenUp().stream()
                  .map(Correction::words)
                  .collect(Collectors.joining(", "))
              + " as well.");
    }
    Optional<Aim> wanted = aims.aim(values.trait(), values.deviation());
    untold(values)
        .ifPresent(
            untold -> says.add("What is due to " + untold + " can't be told from the rest."));
    return new Candidates.Study(
        values.trait(),
        aims.of(values.trait()).map(Aims::words),
        wanted,
        wanted.map(Aim::weight).orElse(0.0),
        values.measured(),
        values.mean(),
        values.deviation(),
        inheritance.source(),
        inheritance.levels().stream().map(l -> l.heritability().ofFruit()).toList(),
        values.repeatability(),
        values.onParent(),
        values.model().corrected(),
        inheritance.main().stream()
            .flatMap(l -> l.values().corrections().stream())
            .filter(BreedingValues.Correction::told)
            .map(
                c ->
                    new Candidates.Effect(
                        c.factor(), c.level(), c.beside(), c.estimate(), c.error()))
            .toList(),
        values.isJoined() ? stated(values.trait()) : List.of(),
        says);
  }

  /** The goal's lines on how a trait goes together with others. */
  private List<Goal.Correlation> stated(Trait trait) {
    return goal.stream()
        .flatMap(g -> Stream.concat(g.correlations().stream(), g.environmental().stream()))
        .filter(
            c ->
                Set.of(KnownTraits.key(c.trait()), KnownTraits.key(c.other()))
                    .contains(trait.name()))
        .toList();
  }

  private static Optional<String> untold(TraitValues values) {
    String untold =
        Stream.concat(
                values.model().untold().stream().map(Correction::words),
                values.inheritance().main().stream()
                    .flatMap(l -> l.values().corrections().stream())
                    .filter(c -> !c.told() && !c.factor().equals(Correction.LINE.words()))
                    .map(BreedingValues.Correction::factor))
            .distinct()
            .collect(Collectors.joining(", "));
    return Optional.of(untold).filter(u -> !u.isEmpty());
  }

  private void notes(Map<Plants, Double> loads, Ranking ranking, List<Candidate> valued) {
    if (goal.isEmpty()) {
      notes.add(
          "No goal is declared for `"
              + line.name()
              + "`, so nothing is ranked: declare one, with lines such as `raise sweetness to 13"
              + " brix, matters 5`.");
    }
    if (candidates.isEmpty()) {
      return;
    }
    for (String name : aims.names()) {
      if (traits.stream().noneMatch(t -> t.trait().name().equals(name))) {
        notes.add("`" + name + "` is aimed at, and was measured on none of the candidates.");
      }
    }
    if (candidates.size() == 1) {
      notes.add("There is one candidate only, so there is nothing to choose between.");
    }
    ranking.changes(valued).ifPresent(notes::add);
    notes.addAll(ranking.refusals().limits(candidates));
    notes.addAll(new Cautions(goal, aims, traits).notes());
    if (traits.stream().anyMatch(t -> !t.trait().isOfPlant())) {
      notes.add(load(loads));
    }
    if (observations.ofNoPlant() > 0) {
      int lines = observations.ofNoPlant();
      notes.add(
          (lines == 1 ? "One line" : lines + " lines")
              + " of the record "
              + (lines == 1 ? "has" : "have")
              + " figures of fruit of no one plant, which can't be counted: name the plant.");
    }
    if (garden.record().every(Fact.Sowed.class).noneMatch(s -> s.stand().year() < year)) {
      notes.add("Plants of other seasons are not recorded, so no parent's own figures help.");
    }
    notes.addAll(relatives.assumed());
  }

  private String load(Map<Plants, Double> loads) {
    boolean corrected =
        traits.stream().anyMatch(t -> t.model().corrected().contains(Correction.LOAD));
    if (corrected) {
      return "Fruit load is corrected for: figures are as if every plant bore as many fruits.";
    }
    if (traits.stream().anyMatch(t -> t.model().untold().contains(Correction.LOAD))) {
      return "Fruit load is not corrected for: it differs between generations only.";
    }
    return aims.isAimedAt(Trait.FRUITS)
        ? "Fruits per plant are chosen for, so other figures are not corrected for fruit load."
        : "Fruit load is not corrected for: " + (loads.isEmpty() ? "no" : "too few") + " counts.";
  }
}
