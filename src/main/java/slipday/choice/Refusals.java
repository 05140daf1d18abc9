package slipday.choice;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.garden.record.Plants;

/** Which plants may be no parent, and why. */
final class Refusals {
  private final Garden garden;
  private final Set<String> refuse;
  private final Faults faults;

  Refusals(Garden garden, Optional<Goal> goal, Faults faults) {
    this.garden = garden;
    this.faults = faults;
    this.refuse =
        goal.stream()
            .flatMap(g -> g.refuse().stream())
            .map(f -> f.toLowerCase(Locale.ROOT))
            .collect(Collectors.toSet());
  }

  Optional<String> of(Plants plant) {
    Optional<Boolean> bitter = faults.bitter(plant);
    if (bitter.orElse(false)) {
      return Optional.of("bitter: destroy it, never eat of it, never seed from it");
    }
    if (bitter.isEmpty() && plant.stand().lot().bitterRisk(garden)) {
      return Optional.of("may be bitter and was not tasted: taste it first, raw, and spit it out");
    }
    List<String> found =
        faults.of(plant).stream()
            .filter(f -> refuse.contains(f.what()))
            .map(f -> f.what() + f.fruit().map(t -> " (" + t.tag() + ")").orElse(""))
            .distinct()
            .toList();
    return found.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", found));
  }

  /** Faults that are no ground for refusal. */
  List<String> minor(Plants plant) {
    return faults.of(plant).stream()
        .filter(f -> !refuse.contains(f.what()))
        .map(f -> f.what() + f.fruit().map(t -> " (" + t.tag() + ")").orElse(""))
        .distinct()
        .toList();
  }

  Optional<String> death(Plants plant) {
    return faults
        .lost(plant)
        .filter(l -> !l.rogued())
        .map(l -> "it died on " + l.date() + l.why().map(w -> " of " + w).orElse(""));
  }
}
