package slipday.nextseason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Goal;
import slipday.garden.Line;
import slipday.garden.record.Fact;
import slipday.garden.record.Figures;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Plants;
import slipday.garden.record.Subject;

/**
 * Plants of one line put in order by the plain means of what was recorded of them, in standard
 * deviations and by the weights of the line's goal. It weighs no plant by how many fruits it bore
 * and corrects for nothing.
 */
final class PlantMeans {
  private static final String OFF_TYPE = "off-type";

  private final GardenRecord record;
  private final Optional<Goal> goal;
  private final Map<Plants, Map<String, List<Double>>> figures = new LinkedHashMap<>();
  private final Map<Subject, Set<String>> faults = new HashMap<>();
  private final Set<Plants> offTypes = new HashSet<>();

  PlantMeans(GardenRecord record, Line line, Optional<Goal> goal) {
    this.record = record;
    this.goal = goal;
    record.every(Fact.Picked.class).forEach(p -> picked(p, line));
    record.every(Fact.Measured.class).forEach(m -> figures(m.subject(), m.figures(), line));
    record.every(Fact.OffType.class).forEach(o -> offTypes.add(o.plants()));
    record.every(Fact.Lost.class).filter(Fact.Lost::rogued).forEach(l -> offTypes.add(l.plants()));
    record
        .every(Fact.Tasted.class)
        .filter(Fact.Tasted::bitter)
        .forEach(t -> plants(t.subject()).ifPresent(offTypes::add));
  }

  private static Optional<Plants> plants(Subject subject) {
    return subject instanceof Fruit fruit
        ? Optional.of(fruit.seedParent())
        : subject instanceof Plants plants ? Optional.of(plants) : Optional.empty();
  }

  private void picked(Fact.Picked picked, Line line) {
    figures(picked.subject(), picked.figures(), line);
    Optional<Plants> plant = plants(picked.subject()).filter(p -> isOf(p, line));
    plant.ifPresent(p -> add(p, "fruits per plant", picked.figures().fruits()));
    if (plant.isPresent() && picked.subject() instanceof Fruit fruit) {
      long days = fruit.date().until(picked.date(), java.time.temporal.ChronoUnit.DAYS);
      add(plant.get(), "days to ripe", days);
    }
  }

  private boolean isOf(Plants plants, Line line) {
    return plants.plant().isPresent()
        && plants.stand().year() == record.season()
        && plants.stand().lot().line().name().equals(line.name());
  }

  private void figures(Subject subject, Figures of, Line line) {
    faults.computeIfAbsent(subject, s -> new HashSet<>()).addAll(of.faults());
    plants(subject)
        .filter(p -> isOf(p, line))
        .ifPresent(
            p -> {
              of.kilograms().ifPresent(kg -> add(p, "fruit weight", kg / of.fruits()));
              of.brix().ifPresent(b -> add(p, "sweetness", b));
              of.traits().forEach(t -> add(p, t.name(), t.value()));
            });
  }

  private void add(Plants plant, String trait, double value) {
    figures
        .computeIfAbsent(plant, p -> new HashMap<>())
        .computeIfAbsent(trait.toLowerCase(Locale.ROOT), t -> new ArrayList<>())
        .add(value);
  }

  /** Why a fruit's seed is not to go on; empty where nothing speaks against it. */
  Optional<String> refused(Fact.Saved taking) {
    Plants mother = Offspring.mother(taking);
    if (offTypes.contains(mother)) {
      return Optional.of("`" + mother + "` was not what its line should be");
    }
    Set<String> found = new HashSet<>(faults.getOrDefault(taking.from(), Set.of()));
    found.addAll(faults.getOrDefault(mother, Set.of()));
    return goal.stream()
        .flatMap(g -> g.refuse().stream())
        .filter(r -> !r.equals(OFF_TYPE) && found.contains(r))
        .findFirst()
        .map(r -> "its fruit was " + r + ", which the goal refuses");
  }

  /** The plants, the one that serves the goal best first; ties by name. */
  List<Plants> inOrder(Set<Plants> plants) {
    Map<Plants, Double> worth = new HashMap<>();
    plants.forEach(p -> worth.put(p, 0.0));
    goal.ifPresent(g -> g.aims().forEach(a -> weigh(a, worth)));
    return plants.stream()
        .sorted(
            Comparator.<Plants>comparingDouble(p -> -worth.getOrDefault(p, 0.0))
                .thenComparing(p -> p.stand().name())
                .thenComparing(p -> p.plant().orElse(0)))
        .toList();
  }

  private void weigh(Goal.Aim aim, Map<Plants, Double> worth) {
    Map<Plants, Double> means = new HashMap<>();
    worth.keySet().forEach(p -> mean(p, aim.trait()).ifPresent(m -> means.put(p, m)));
    double mean = means.values().stream().mapToDouble(d -> d).average().orElse(0);
    double spread =
        Math.sqrt(
            means.values().stream().mapToDouble(d -> (d - mean) * (d - mean)).average().orElse(0));
    if (spread > 0) {
      means.forEach(
          (p, m) -> worth.merge(p, aim.weight() * served(aim, m, mean) / spread, Double::sum));
    }
  }

  /** How far a mean serves the aim, in the trait's own unit. */
  private static double served(Goal.Aim aim, double value, double mean) {
    return switch (aim.way()) {
      case RAISE -> value - mean;
      case LOWER -> mean - value;
      case KEEP -> -outside(aim, value);
    };
  }

  private static double outside(Goal.Aim aim, double value) {
    double low = base(aim.at());
    double high = aim.orMore() ? Double.MAX_VALUE : aim.to().map(PlantMeans::base).orElse(low);
    return Math.max(0, Math.max(low - value, value - high));
  }

  private static double base(Goal.Figure figure) {
    return figure.quantity().map(q -> q.base()).orElse(figure.number());
  }

  private Optional<Double> mean(Plants plant, String trait) {
    String key = trait.toLowerCase(Locale.ROOT);
    List<Double> values = figures.getOrDefault(plant, Map.of()).getOrDefault(key, List.of());
    if (values.isEmpty()) {
      return Optional.empty();
    }
    double sum = values.stream().mapToDouble(d -> d).sum();
    return Optional.of(key.equals("fruits per plant") ? sum : sum / values.size());
  }

  /** What was found of a plant, for the aims of its goal: {@code sweetness 13.4}. */
  List<String> words(Plants plant) {
    return goal.stream()
        .flatMap(g -> g.aims().stream())
        .flatMap(a -> mean(plant, a.trait()).map(m -> a.trait() + " " + shown(m, a)).stream())
        .toList();
  }

  private static String shown(double value, Goal.Aim aim) {
    String unit =
        aim.at()
            .quantity()
            .map(
                q ->
                    switch (q.unit().dimension()) {
                      case MASS -> " kg";
                      case LENGTH -> " m";
                      case TIME -> " days";
                      case SWEETNESS -> " brix";
                      default -> "";
                    })
            .orElse("");
    return String.format(Locale.ROOT, value < 10 ? "%.2f" : "%.1f", value)
            .replaceFirst("\\.?0+$", "")
        + unit;
  }
}
