package slipday.genetics.mixed;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Whether measurements can tell breeding values from what else plants have of their own. */
final class Families {
  /** Fewer tell next to nothing. Common practice, no source. */
  private static final int FEWEST = 5;

  private final BreedingModel model;

  Families(BreedingModel model) {
    this.model = model;
  }

  /** Why they can't, in a gardener's words; empty where they may. */
  Optional<String> obstacle() {
    if (model.spread() == 0) {
      return Optional.of("The plants measured are all of one genotype.");
    }
    Map<Map<Integer, Double>, Set<Integer>> families = new HashMap<>();
    boolean related = false;
    for (Measurement each : model.measurements) {
      related |= !model.pedigree.parents(each.plant()).isEmpty();
      families.computeIfAbsent(family(each.plant()), k -> new HashSet<>()).add(each.plant());
    }
    if (!related) {
      return Optional.of(
          "Nothing is recorded of the plants' parents, so what they inherit can't be told from"
              + " what else is their own.");
    }
    // A family of one plant says nothing of what plants of a family have in common.
    families.values().removeIf(plants -> plants.size() < 2);
    if (families.size() < 2) {
      return Optional.of(
          "All plants measured are of one family, or sibs of none, so what they inherit can't be"
              + " told from what else is their own.");
    }
    if (model.measurements.size() == model.plants.size()) {
      return Optional.of(
          "No plant has two figures, so what stays with a plant can't be told from luck.");
    }
    int between = between(families);
    if (between == 0) {
      return Optional.of(
          "No two families were grown side by side, and none in two seasons or beds: what they"
              + " inherit can't be told from where and when they grew.");
    }
    return between + 1 < FEWEST
        ? Optional.of(
            "Only "
                + (between + 1)
                + " families can be compared with each other, and "
                + FEWEST
                + " is the least for an estimate.")
        : Optional.empty();
  }

  /** A founder is a family of its own. */
  private Map<Integer, Double> family(int plant) {
    Map<Integer, Double> parents = model.pedigree.parents(plant);
    return parents.isEmpty() ? Map.of(plant, 1.0) : parents;
  }

  /** How many differences between families are left once fixed effects are taken out. */
  private int between(Map<Map<Integer, Double>, Set<Integer>> families) {
    List<Map<Integer, Double>> names = List.copyOf(families.keySet());
    List<Measurement> among =
        model.measurements.stream().filter(m -> names.contains(family(m.plant()))).toList();
    Design fixed = new FixedEffects(among).design();
    int[] levels = among.stream().mapToInt(m -> names.indexOf(family(m.plant()))).toArray();
    Design both = FixedEffects.with(fixed, levels, names.size());
    return rank(both) - rank(fixed);
  }

  private static int rank(Design fixed) {
    double[] ones = new double[fixed.rows()];
    Arrays.fill(ones, 1);
    return new MixedModel(ones, ones, fixed, List.of()).rank();
  }
}
