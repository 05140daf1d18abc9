package slipday.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.descent.Relatives;
import slipday.garden.record.Plants;
import slipday.genetics.Pedigree;
import slipday.genetics.Regression;
import slipday.genetics.mixed.BreedingModel.Repeatability;
import slipday.genetics.mixed.BreedingValues;
import slipday.genetics.mixed.Measurement;

/** One trait of the candidates: what was measured, what it is once corrected, what it promises. */
final class TraitValues {
  /** 9 in 10 of a normal distribution lie below so many deviations. */
  private static final double NINE_IN_TEN = 1.2815515655446004;

  private final TraitModel model;
  private final Inheritance inheritance;
  private final Optional<Inheritance> alone;
  private final Relatives relatives;
  private final Map<Plants, Double> raw = new LinkedHashMap<>();
  private final Map<Plants, Double> corrected = new LinkedHashMap<>();
  private final Map<Plants, Integer> fruits = new LinkedHashMap<>();
  private final Map<Integer, Double> everyone = new HashMap<>();

  /** What each plant promises, once it was asked for: every candidate is compared with all. */
  private final Map<Plants, Optional<Predicted>> promised = new HashMap<>();

  private final double mean;

  TraitValues(Together.Known known, Relatives relatives, Set<Plants> candidates) {
    this.model = known.model();
    this.inheritance = known.inheritance();
    this.alone = known.alone();
    this.relatives = relatives;
    Map<Plants, double[]> sums = new LinkedHashMap<>();
    for (int i = 0; i < model.observed().size(); i++) {
      Observed each = model.observed().get(i);
      if (candidates.contains(each.plant())) {
        double[] sum = sums.computeIfAbsent(each.plant(), p -> new double[3]);
        sum[0] += each.fruits();
        sum[1] += each.fruits() * each.value();
        sum[2] += each.fruits() * corrected(i);
      }
    }
    // Corrections change how candidates stand to each other, not what they are like on the whole.
    double shift =
        sums.values().stream().mapToDouble(s -> (s[1] - s[2]) / s[0]).average().orElse(0);
    sums.forEach(
        (plant, sum) -> {
          fruits.put(plant, (int) sum[0]);
          raw.put(plant, sum[1] / sum[0]);
          corrected.put(plant, sum[2] / sum[0] + shift);
          everyone.put(relatives.plant(plant), 1.0 / sums.size());
        });
    mean = corrected.values().stream().mapToDouble(c -> c).average().orElse(0);
  }

  private double corrected(int observed) {
    return values()
        .map(v -> v.corrected(observed))
        .orElseGet(() -> model.observed().get(observed).value());
  }

  private Optional<BreedingValues> values() {
    return inheritance.main().map(Inheritance.Level::values);
  }

  Trait trait() {
    return model.trait();
  }

  TraitModel model() {
    return model;
  }

  Inheritance inheritance() {
    return inheritance;
  }

  /** How many candidates were measured. */
  int measured() {
    return raw.size();
  }

  /** The candidates' means, as measured. */
  List<Double> figures() {
    return List.copyOf(raw.values());
  }

  Optional<Double> raw(Plants plant) {
    return Optional.ofNullable(raw.get(plant));
  }

  Optional<Double> corrected(Plants plant) {
    return Optional.ofNullable(corrected.get(plant));
  }

  int fruits(Plants plant) {
    return fruits.getOrDefault(plant, 0);
  }

  double mean() {
    return mean;
  }

  /** Standard deviation among the candidates' corrected means; 0 for fewer than two. */
  double deviation() {
    double sum = 0;
    for (double each : corrected.values()) {
      sum += (each - mean) * (each - mean);
    }
    return corrected.size() < 2 ? 0 : Math.sqrt(sum / (corrected.size() - 1));
  }

  /** Whether it was valued together with other traits. */
  boolean isJoined() {
    return alone.isPresent();
  }

  /**
   * The value of plants or seed on the trait's scale; empty where none can be told, or where there
   * is no other candidate to differ from.
   *
   * @param shares of individuals of the pedigree, summing to 1
   * @param level one of the inheritance's
   */
  Optional<Predicted> predicted(Map<Integer, Double> shares, int level) {
    return predicted(inheritance, shares, level);
  }

  private Optional<Predicted> predicted(
      Inheritance inherited, Map<Integer, Double> shares, int level) {
    Optional<Map<Integer, Double>> told = beside(shares);
    if (told.isEmpty() || level >= inherited.levels().size()) {
      return Optional.empty();
    }
    Map<Integer, Double> beside = told.get();
    BreedingValues values = inherited.levels().get(level).values();
    double value = mean + values.value(beside);
    double reach = NINE_IN_TEN * Math.sqrt(Math.max(0, values.errorVariance(beside)));
    return Optional.of(new Predicted(value, value - reach, value + reach, values.accuracy(beside)));
  }

  /** The same without how sure it is, which takes far longer to tell. */
  Optional<Double> value(Map<Integer, Double> shares, int level) {
    return level >= inheritance.levels().size()
        ? Optional.empty()
        : beside(shares)
            .map(beside -> mean + inheritance.levels().get(level).values().value(beside));
  }

  /** Shares less those of all candidates; empty where nothing is left to differ by. */
  private Optional<Map<Integer, Double>> beside(Map<Integer, Double> shares) {
    if (raw.isEmpty()) {
      return Optional.empty();
    }
    Map<Integer, Double> beside = new HashMap<>(shares);
    everyone.forEach((plant, share) -> beside.merge(plant, -share, Double::sum));
    beside.values().removeIf(share -> Math.abs(share) < 1e-12);
    return beside.isEmpty() ? Optional.empty() : Optional.of(beside);
  }

  Optional<Predicted> predicted(Plants plant) {
    Optional<Predicted> known = promised.get(plant);
    if (known == null) {
      known = predicted(inheritance, plant);
      promised.put(plant, known);
    }
    return known;
  }

  /** The same by the trait alone; empty where that is how it was valued. */
  Optional<Predicted> alone(Plants plant) {
    return alone.flatMap(a -> predicted(a, plant));
  }

  private Optional<Predicted> predicted(Inheritance inherited, Plants plant) {
    Map<Integer, Double> whole = Map.of(relatives.plant(plant), 1.0);
    return predicted(inherited, whole, inherited.levels().size() / 2);
  }

  private static final double[] NONE = {1, 0};

  private static double[] pair(double[] parent, double[] offspring) {
    return new double[] {parent[1] / parent[0], offspring[1] / offspring[0]};
  }

  /** How alike fruits of a plant are; empty where no plant has two. */
  Optional<Repeatability> repeatability() {
    return trait().isOfPlant() ? Optional.empty() : model.model().repeatability().value();
  }

  /** Of selfed plants' corrected means on their parent's: a plain check of the heritability. */
  Optional<Regression> onParent() {
    if (values().isEmpty()) {
      return Optional.empty();
    }
    Map<Integer, double[]> sums = new LinkedHashMap<>();
    List<Measurement> measured = model.model().measurements();
    for (int i = 0; i < measured.size(); i++) {
      double[] sum = sums.computeIfAbsent(measured.get(i).plant(), p -> new double[2]);
      sum[0] += measured.get(i).weight();
      sum[1] += measured.get(i).weight() * corrected(i);
    }
    Pedigree pedigree = relatives.pedigree();
    List<double[]> pairs = new ArrayList<>();
    for (Map.Entry<Integer, double[]> each : sums.entrySet()) {
      Map<Integer, Double> parents = pedigree.parents(each.getKey());
      boolean selfed = parents.size() == 1 && parents.containsValue(1.0);
      parents.keySet().stream()
          .filter(parent -> selfed && sums.containsKey(parent))
          .forEach(parent -> pairs.add(pair(sums.getOrDefault(parent, NONE), each.getValue())));
    }
    return Regression.of(
            pairs.stream().mapToDouble(p -> p[0]).toArray(),
            pairs.stream().mapToDouble(p -> p[1]).toArray())
        .value();
  }
}
