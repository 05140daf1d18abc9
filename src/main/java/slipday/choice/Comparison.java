package slipday.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import slipday.choice.Progress.Gain;
import slipday.choice.Progress.Step;
import slipday.descent.Relatives;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.record.Grounds;
import slipday.garden.record.Plants;
import slipday.genetics.Answer;
import slipday.genetics.mixed.BreedingValues;
import slipday.genetics.mixed.Measurement;
import slipday.genetics.mixed.PopulationMeans;

/**
 * Generations of a line apart from season and bed: by remnant seed of an older one grown beside a
 * newer, or by a check that was grown beside both.
 */
final class Comparison {
  /**
   * A realised heritability wants so many plants of each generation. Common practice, no source.
   */
  private static final int ENOUGH_PLANTS = 5;

  /** And parents so many standard deviations above the rest. Common practice, no source. */
  private static final double ENOUGH_CHOSEN = 0.2;

  /** A realised heritability with a greater error says nothing. */
  private static final double TOO_UNSURE = 0.5;

  private static final String APART = "gain and weather can't be told apart";

  private final Garden garden;
  private final Line line;
  private final List<Observed> observed;
  private final Relatives relatives;
  private final Function<Plants, String> generation;
  private final Optional<BreedingValues> together;

  /**
   * @param together breeding values of a trait that was valued together with others
   */
  Comparison(
      Garden garden,
      Line line,
      List<Observed> observed,
      Relatives relatives,
      Function<Plants, String> generation,
      Optional<BreedingValues> together) {
    this.garden = garden;
    this.line = line;
    this.observed = observed;
    this.relatives = relatives;
    this.generation = generation;
    this.together = together;
  }

  /**
   * @param before the older generation's stands; none where no heritability is to be told
   * @param after the newer one's
   */
  Step step(String from, String to, List<Stood> before, List<Stood> after) {
    Found found = found(from, to);
    Optional<Gain> gain = found.answer.value().map(d -> new Gain(d.value(), d.error()));
    return new Step(
        from,
        to,
        gain,
        found.by,
        gain.flatMap(g -> predicted(from, to)),
        gain.flatMap(g -> realised(g, before, after)));
  }

  /** By breeding values, where several traits tell of this one. */
  private Optional<Gain> predicted(String from, String to) {
    return together.map(
        values -> {
          Map<Integer, Double> difference = mean(to);
          mean(from).forEach((plant, share) -> difference.merge(plant, -share, Double::sum));
          return new Gain(
              values.value(difference), Math.sqrt(Math.max(0, values.errorVariance(difference))));
        });
  }

  /** In equal parts of the plants of a generation that were measured. */
  private Map<Integer, Double> mean(String of) {
    Set<Integer> plants = new TreeSet<>();
    for (Observed each : observed) {
      Plants plant = each.plant();
      if (isOwn(plant) && generation.apply(plant).equals(of)) {
        plants.add(relatives.plant(plant));
      }
    }
    Map<Integer, Double> mean = new TreeMap<>();
    plants.forEach(plant -> mean.put(plant, 1.0 / plants.size()));
    return mean;
  }

  private boolean isOwn(Plants plant) {
    return plant.stand().lot().line().name().equals(line.name());
  }

  private record Found(Answer<PopulationMeans.Difference> answer, String by) {}

  /**
   * What is left aside so that a comparison can be made.
   *
   * @param caution what may then be part of the difference
   */
  private record Aside(Set<Correction> left, String caution) {}

  /** From the surest comparison to the least sure. */
  private static final List<Aside> ASIDES =
      List.of(
          new Aside(Set.of(), ""),
          new Aside(Set.of(Correction.MARKED), ", though one was marked and one for the kitchen"),
          new Aside(Set.of(Correction.BED), ", though they stood in different beds"),
          new Aside(
              Set.of(Correction.BED, Correction.MARKED),
              ", though they stood in different beds, and one was marked and one for the kitchen"));

  /** The first comparison that can be made: within the line before with checks. */
  private Found found(String from, String to) {
    for (Aside aside : ASIDES) {
      for (boolean checks : new boolean[] {false, true}) {
        Answer<PopulationMeans.Difference> answer = difference(from, to, checks, aside);
        if (answer.value().isPresent()) {
          String by = checks ? "a check grown beside both" : from + " and " + to + " side by side";
          return new Found(answer, "told by " + by + aside.caution);
        }
      }
    }
    Answer<PopulationMeans.Difference> none =
        difference(from, to, true, ASIDES.get(ASIDES.size() - 1));
    return new Found(none, why(from, to, none.refusal().orElse("")));
  }

  private static String why(String from, String to, String refusal) {
    if (refusal.contains("not grown beside")) {
      return APART
          + ": "
          + from
          + " and "
          + to
          + " were not grown side by side, nor both beside a check";
    }
    return "no error can be told: " + refusal.replaceFirst("\\.$", "");
  }

  private Answer<PopulationMeans.Difference> difference(
      String from, String to, boolean checks, Aside aside) {
    Grounds grounds = new Grounds(garden);
    Set<Integer> several =
        grounds.seasonsOfSeveralBeds(observed.stream().map(Observed::plant).toList());
    List<Measurement> measurements = new ArrayList<>();
    List<String> populations = new ArrayList<>();
    for (Observed each : observed) {
      Plants plant = each.plant();
      boolean own = isOwn(plant);
      if (own || checks) {
        int year = plant.stand().year();
        boolean known = !aside.left.contains(Correction.BED) && several.contains(year);
        String where = known ? grounds.bed(plant).orElse("") + " in " + year : "" + year;
        Map<String, String> factors = new HashMap<>(Map.of(Correction.BED.words(), where));
        if (!each.trait().isOfPlant() && !aside.left.contains(Correction.MARKED)) {
          factors.put(Correction.MARKED.words(), each.fruit().isPresent() ? "marked" : "kitchen");
        }
        measurements.add(
            new Measurement(
                relatives.plant(plant), each.value(), each.fruits(), factors, Map.of()));
        populations.add(own ? generation.apply(plant) : check(plant));
      }
    }
    return PopulationMeans.of(measurements, populations).difference(to, from);
  }

  /** A line that is kept is the same from year to year; of others, a lot is. */
  static String check(Plants plant) {
    Line other = plant.stand().lot().line();
    return other.purpose() == Line.Purpose.KEEP
        ? "line " + other.name()
        : "lot " + plant.stand().lot().name();
  }

  static boolean isUntold(Step step) {
    return step.by().startsWith(APART);
  }

  private static Optional<Gain> realised(Gain gain, List<Stood> before, List<Stood> after) {
    Optional<Stood> chosen = before.stream().filter(s -> s.differential().isPresent()).findFirst();
    if (chosen.isEmpty() || after.stream().noneMatch(s -> s.plants() >= ENOUGH_PLANTS)) {
      return Optional.empty();
    }
    double differential = chosen.get().differential().orElse(0.0);
    double deviation = chosen.get().deviation().orElse(Double.POSITIVE_INFINITY);
    boolean enough =
        chosen.get().plants() >= ENOUGH_PLANTS
            && Math.abs(differential) >= ENOUGH_CHOSEN * deviation
            && differential != 0;
    return Optional.of(new Gain(gain.value() / differential, gain.error() / Math.abs(differential)))
        .filter(realised -> enough && realised.error() <= TOO_UNSURE);
  }
}
