package slipday.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.garden.record.Plants;

/** Which plants may be no parent, and why. */
final class Refusals {
  private final Garden garden;
  private final Map<String, Goal.Refusal> refuse = new TreeMap<>();
  private final Faults faults;
  private final Map<Plants, Double> fruits;

  /**
   * @param fruits how many each plant bore, as far as they were counted
   */
  Refusals(Garden garden, Optional<Goal> goal, Faults faults, Map<Plants, Double> fruits) {
    this.garden = garden;
    this.faults = faults;
    this.fruits = fruits;
    goal.stream()
        .flatMap(g -> g.refuse().stream())
        .forEach(r -> refuse.put(r.fault().toLowerCase(Locale.ROOT), r));
  }

  Optional<String> of(Plants plant) {
    Optional<Boolean> bitter = faults.bitter(plant);
    if (bitter.orElse(false)) {
      return Optional.of("bitter: destroy it, never eat of it, never seed from it");
    }
    if (bitter.isEmpty() && plant.stand().lot().bitterRisk(garden)) {
      return Optional.of("may be bitter and was not tasted: taste it first, raw, and spit it out");
    }
    List<String> found = found(plant, true);
    return found.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", found));
  }

  /** Faults that are no ground for refusal. */
  List<String> minor(Plants plant) {
    return found(plant, false);
  }

  private List<String> found(Plants plant, boolean refused) {
    List<String> found = new ArrayList<>();
    for (Faults.Fault fault : faults.of(plant)) {
      if (isRefused(plant, fault.what()) == refused) {
        String words =
            isLimited(fault.what()) && !isOfPlant(plant, fault.what())
                ? counted(plant, fault.what())
                : fault.what() + fault.fruit().map(t -> " (" + t.tag() + ")").orElse("");
        if (!found.contains(words)) {
          found.add(words);
        }
      }
    }
    return found;
  }

  private boolean isLimited(String what) {
    Goal.Refusal refusal = refuse.get(what);
    return refusal != null && (refusal.share().isPresent() || refusal.count().isPresent());
  }

  /** What is told of the plant as a whole is no matter of some of its fruits. */
  private boolean isOfPlant(Plants plant, String what) {
    return faults.of(plant).stream().anyMatch(f -> f.what().equals(what) && f.fruits() == 0);
  }

  private boolean isRefused(Plants plant, String what) {
    Goal.Refusal refusal = refuse.get(what);
    if (refusal == null) {
      return false;
    }
    if (!isLimited(what) || isOfPlant(plant, what)) {
      return true;
    }
    int faulty = faults.fruits(plant, what);
    return refusal.count().filter(most -> faulty <= most).isEmpty()
        && refusal.share().filter(most -> faulty <= most * fruits(plant, what) + 1e-9).isEmpty();
  }

  private int fruits(Plants plant, String what) {
    int counted = (int) Math.round(fruits.getOrDefault(plant, 0.0));
    return Math.max(counted, faults.fruits(plant, what));
  }

  /** A fault with the fruits it was seen on, and where the limit lies. */
  private String counted(Plants plant, String what) {
    TreeSet<String> tags = new TreeSet<>();
    for (Faults.Fault fault : faults.of(plant)) {
      if (fault.what().equals(what)) {
        fault.fruit().ifPresent(f -> tags.add(f.tag()));
      }
    }
    return what
        + " in "
        + faults.fruits(plant, what)
        + " of "
        + Chooser.count(fruits(plant, what), "fruit")
        + (tags.isEmpty() ? "" : " (" + String.join(", ", tags) + ")");
  }

  /** What the goal's limits are, and whom they let pass, a sentence each. */
  List<String> limits(Iterable<Plants> plants) {
    List<String> says = new ArrayList<>();
    for (Goal.Refusal each : refuse.values()) {
      String what = each.fault().toLowerCase(Locale.ROOT);
      if (isLimited(what)) {
        int passed = 0;
        int refused = 0;
        for (Plants plant : plants) {
          boolean has = faults.of(plant).stream().anyMatch(f -> f.what().equals(what));
          passed += has && !isRefused(plant, what) ? 1 : 0;
          refused += has && isRefused(plant, what) ? 1 : 0;
        }
        says.add(
            "By `"
                + each.span().plainText()
                + "`, "
                + Chooser.count(refused, "plant")
                + (refused == 1 ? " is" : " are")
                + " refused and "
                + passed
                + " with fewer such fruits let pass; of each the sound fruits come first for"
                + " seed.");
      }
    }
    return says;
  }

  Optional<String> death(Plants plant) {
    return faults
        .lost(plant)
        .filter(l -> !l.rogued())
        .map(l -> "it died on " + l.date() + l.why().map(w -> " of " + w).orElse(""));
  }
}
