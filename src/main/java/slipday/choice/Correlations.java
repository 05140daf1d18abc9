package slipday.choice;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Goal;

/**
 * How far the breeding values of traits go together, as the plan states it; 0 where it does not.
 */
final class Correlations {
  private final Map<String, Double> byPair = new HashMap<>();

  Correlations(Optional<Goal> goal) {
    for (Goal.Correlation each : goal.map(Goal::correlations).orElse(java.util.List.of())) {
      byPair.put(pair(Trait.key(each.trait()), Trait.key(each.other())), each.value());
    }
  }

  double of(Trait one, Trait other) {
    return one.name().equals(other.name())
        ? 1
        : byPair.getOrDefault(pair(one.name(), other.name()), 0.0);
  }

  private static String pair(String one, String other) {
    return one.compareTo(other) < 0 ? one + "\n" + other : other + "\n" + one;
  }
}
