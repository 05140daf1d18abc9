package slipday.genetics.mixed;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Whether measurements can tell breeding values from what else plants have of their own. */
final class Families {
  /** Fewer tell next to nothing. Common practice, no source. */
  private static final int FEWEST = 5;

  private final BreedingModel model;
  private final Map<Map<Integer, Double>, Integer> families = new HashMap<>();

  Families(BreedingModel model) {
    this.model = model;
  }

  /** Why they can't, in a gardener's words; empty where they may. */
  Optional<String> obstacle() {
    if (model.spread() == 0) {
      return Optional.of("The plants measured are all of one genotype.");
    }
    int[] family = new int[model.measurements.size()];
    boolean related = false;
    for (int i = 0; i < family.length; i++) {
      int plant = model.measurements.get(i).plant();
      Map<Integer, Double> parents = model.pedigree.parents(plant);
      related |= !parents.isEmpty();
      // A founder is a family of its own.
      Map<Integer, Double> key = parents.isEmpty() ? Map.of(plant, 1.0) : parents;
      family[i] = families.computeIfAbsent(key, k -> families.size());
    }
    if (!related) {
      return Optional.of(
          "Nothing is recorded of the plants' parents, so what they inherit can't be told from"
              + " what else is their own.");
    }
    if (families.size() < 2) {
      return Optional.of(
          "All plants measured are of one family, so what they inherit can't be told from what"
              + " else is their own.");
    }
    if (model.measurements.size() == model.plants.size()) {
      return Optional.of(
          "No plant has two fruits measured, so the luck of a fruit can't be told from its plant.");
    }
    int between = model.rankWith(family, families.size()) - model.model.rank();
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
}
