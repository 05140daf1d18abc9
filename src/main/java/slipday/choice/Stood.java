package slipday.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slipday.descent.Relatives;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.genetics.Aim;
import slipday.source.Span;

/** Plants of one generation in one season, as measured for one trait. */
final class Stood {
  private final String generation;
  private final int year;
  private final Relatives relatives;
  private final List<Fruit> used;
  private final Map<Plants, double[]> sums = new LinkedHashMap<>();
  private final Map<Plants, List<Span>> figures = new HashMap<>();

  /**
   * @param used fruits whose seed was taken for the line
   */
  Stood(String generation, int year, Relatives relatives, List<Fruit> used) {
    this.generation = generation;
    this.year = year;
    this.relatives = relatives;
    this.used = used;
  }

  void add(Observed each) {
    double[] sum = sums.computeIfAbsent(each.plant(), p -> new double[2]);
    sum[0] += each.fruits();
    sum[1] += each.fruits() * each.value();
    figures.computeIfAbsent(each.plant(), p -> new ArrayList<>()).add(each.span());
  }

  String generation() {
    return generation;
  }

  int year() {
    return year;
  }

  int plants() {
    return sums.size();
  }

  double inbreeding() {
    return sums.keySet().stream()
        .mapToDouble(p -> relatives.pedigree().inbreeding(relatives.plant(p)))
        .average()
        .orElse(0);
  }

  private Map<Plants, Double> means() {
    Map<Plants, Double> means = new LinkedHashMap<>();
    sums.forEach((plant, sum) -> means.put(plant, sum[1] / sum[0]));
    return means;
  }

  private double mean() {
    return means().values().stream().mapToDouble(m -> m).average().orElse(0);
  }

  Optional<Double> deviation() {
    if (sums.size() < 2) {
      return Optional.empty();
    }
    double mean = mean();
    double squares = means().values().stream().mapToDouble(m -> (m - mean) * (m - mean)).sum();
    return Optional.of(Math.sqrt(squares / (sums.size() - 1)));
  }

  /** How often each plant of this stand is a parent of fruits whose seed was taken. */
  private Map<Integer, Double> uses() {
    Map<Integer, Double> uses = new TreeMap<>();
    for (Fruit fruit : used) {
      relatives
          .seed(fruit)
          .parents()
          .forEach((parent, share) -> uses.merge(parent, share, Double::sum));
    }
    return uses;
  }

  Optional<Double> differential() {
    Map<Integer, Double> uses = uses();
    double sum = 0;
    double weights = 0;
    for (Map.Entry<Plants, Double> each : means().entrySet()) {
      double weight = uses.getOrDefault(relatives.plant(each.getKey()), 0.0);
      sum += weight * each.getValue();
      weights += weight;
    }
    return weights > 0 ? Optional.of(sum / weights - mean()) : Optional.empty();
  }

  private int parents() {
    Map<Integer, Double> uses = uses();
    return (int) sums.keySet().stream().filter(p -> uses.containsKey(relatives.plant(p))).count();
  }

  Progress.Grown told(Aims aims, Trait trait) {
    Optional<Aim> aim = aims.aim(trait, 1);
    boolean lower =
        aims.of(trait).filter(a -> a.way() == slipday.garden.Goal.Way.LOWER).isPresent();
    Comparator<Map.Entry<Plants, Double>> better =
        Comparator.comparingDouble(
            e -> {
              double beyond = lower ? -e.getValue() : e.getValue();
              return aim.filter(a -> a.high().isPresent() && a.low().isPresent())
                  .map(a -> a.worth(e.getValue()))
                  .orElse(beyond);
            });
    Map.Entry<Plants, Double> best = means().entrySet().stream().max(better).orElseThrow();
    return new Progress.Grown(
        generation,
        year,
        sums.size(),
        (int) sums.values().stream().mapToDouble(s -> s[0]).sum(),
        mean(),
        deviation(),
        best.getKey().toString(),
        best.getValue(),
        inbreeding(),
        parents(),
        differential(),
        each());
  }

  private List<Progress.Each> each() {
    Map<Integer, Double> uses = uses();
    return means().entrySet().stream()
        .sorted(Map.Entry.comparingByValue())
        .map(
            e ->
                new Progress.Each(
                    e.getKey().toString(),
                    e.getValue(),
                    uses.containsKey(relatives.plant(e.getKey())),
                    e.getKey().stand().lot(),
                    figures.getOrDefault(e.getKey(), List.of())))
        .toList();
  }
}
