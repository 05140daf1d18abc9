package slipday.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.garden.record.Plants;

/** Which seed is kept besides what is sown: a year may fail, and a choice may prove wrong. */
final class Remnants {
  /** Families kept in all by a line that is being fixed. */
  private static final int FAMILIES = 5;

  private Remnants() {}

  /**
   * The rest of what is chosen; of a line being fixed also the next best families, up to five in
   * all.
   *
   * @param eligible the best first
   */
  static List<Chosen.Remnant> of(
      List<Chooser.Eligible> eligible, List<Integer> parts, FruitSeed seed, boolean beingFixed) {
    List<Chosen.Remnant> remnants = new ArrayList<>();
    Map<Plants, Integer> families = new LinkedHashMap<>();
    for (int i = 0; i < eligible.size(); i++) {
      if (parts.get(i) > 0) {
        families.merge(eligible.get(i).plant().plant(), parts.get(i), Integer::sum);
        int sown = seed.toSow(eligible.get(i).fruit(), parts.get(i));
        Optional<Integer> left = eligible.get(i).fruit().seeds().map(s -> s - sown);
        if (left.filter(l -> l <= 0).isEmpty()) {
          remnants.add(remnant(eligible.get(i), left, true));
        }
      }
    }
    for (int i = 0; i < eligible.size() && beingFixed && families.size() < FAMILIES; i++) {
      Plants plant = eligible.get(i).plant().plant();
      if (!families.containsKey(plant)) {
        families.put(plant, 0);
        remnants.add(remnant(eligible.get(i), eligible.get(i).fruit().seeds(), false));
      }
    }
    return remnants;
  }

  private static Chosen.Remnant remnant(
      Chooser.Eligible eligible, Optional<Integer> seeds, boolean chosen) {
    return new Chosen.Remnant(eligible.plant(), eligible.fruit(), seeds, chosen);
  }
}
