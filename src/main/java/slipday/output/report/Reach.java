package slipday.output.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipday.season.Exposure;

/**
 * The pollen that reaches each planting, the worst first. In a large garden nearly every planting
 * of a species reaches every other: told pair by pair, that would be most of the page.
 */
final class Reach {
  /** Sources told one by one; the others are counted. */
  static final int MOST = 6;

  private static final Comparator<Exposure> WORST_FIRST =
      Comparator.comparing((Exposure e) -> !e.intoSeed())
          .thenComparing(e -> !e.source().isBitter())
          .thenComparingDouble(e -> e.distance().orElse(0.0))
          .thenComparingInt(e -> -e.mornings().map(Exposure.Mornings::usual).orElse(0));

  private final Map<String, List<Exposure>> byReceiver = new HashMap<>();

  Reach(List<Exposure> exposures) {
    for (Exposure e : exposures) {
      byReceiver.computeIfAbsent(e.receiver().name(), n -> new ArrayList<>()).add(e);
    }
    byReceiver.values().forEach(each -> each.sort(WORST_FIRST));
  }

  /** The worst first. */
  List<Exposure> of(String receiver) {
    return byReceiver.getOrDefault(receiver, List.of());
  }

  /** The names of the worst. */
  Set<String> worst(String receiver) {
    Set<String> names = new HashSet<>();
    for (Exposure e : of(receiver)) {
      if (names.size() < MOST) {
        names.add(e.source().name());
      }
    }
    return names;
  }

  /** How many sources reach it. */
  int sources(String receiver) {
    return (int) of(receiver).stream().map(e -> e.source().name()).distinct().count();
  }
}
