package slipday.choice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Goal;
import slipday.garden.record.KnownTraits;

/** How far traits go together, as the plan states it; 0 where it does not. */
final class Correlations {
  private final Map<String, Double> genetic;
  private final Map<String, Double> environmental;

  Correlations(Optional<Goal> goal) {
    genetic = byPair(goal.map(Goal::correlations).orElse(List.of()));
    environmental = byPair(goal.map(Goal::environmental).orElse(List.of()));
  }

  private static Map<String, Double> byPair(List<Goal.Correlation> stated) {
    Map<String, Double> byPair = new HashMap<>();
    for (Goal.Correlation each : stated) {
      byPair.put(KnownTraits.pair(each.trait(), each.other()), each.value());
    }
    return byPair;
  }

  /** Of breeding values. */
  double genetic(Trait one, Trait other) {
    return of(genetic, one, other);
  }

  /** Of what is not inherited. */
  double environmental(Trait one, Trait other) {
    return of(environmental, one, other);
  }

  /** Whether one tells of the other. */
  boolean tell(Trait one, Trait other) {
    return genetic(one, other) != 0 || environmental(one, other) != 0;
  }

  private static double of(Map<String, Double> byPair, Trait one, Trait other) {
    return one.name().equals(other.name())
        ? 1
        : byPair.getOrDefault(KnownTraits.pair(one.name(), other.name()), 0.0);
  }
}
