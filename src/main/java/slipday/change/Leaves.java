package slipday.change;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import slipday.measure.Basis;
import slipday.measure.Reason;

/** The facts at the bottom of a reason: what the gardener wrote, crops and weather. */
final class Leaves {
  private Leaves() {}

  static Set<Reason> of(Reason reason) {
    Set<Reason> leaves = new LinkedHashSet<>();
    Deque<Reason> open = new ArrayDeque<>(List.of(reason));
    while (!open.isEmpty()) {
      Reason next = open.removeLast();
      if (next.from().isEmpty() && next.basis() != Basis.METHOD) {
        leaves.add(next);
      }
      for (int i = next.from().size() - 1; i >= 0; i--) {
        open.addLast(next.from().get(i));
      }
    }
    return leaves;
  }

  /** Those of {@code leaves} that say what none of {@code others} says, wherever they stand. */
  static List<Reason> missingFrom(Set<Reason> others, Set<Reason> leaves) {
    Set<String> said = new HashSet<>();
    others.forEach(o -> said.add(o.says()));
    List<Reason> missing = new ArrayList<>();
    for (Reason leaf : leaves) {
      if (said.add(leaf.says())) {
        missing.add(leaf);
      }
    }
    missing.sort(Comparator.comparing(Leaves::isOwn).reversed());
    return missing;
  }

  /** Whether it is a line of the gardener's: that tells more than what follows from it. */
  private static boolean isOwn(Reason leaf) {
    return leaf.place().filter(p -> !p.source().isBuiltIn()).isPresent();
  }
}
