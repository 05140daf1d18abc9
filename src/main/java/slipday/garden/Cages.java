package slipday.garden;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.finding.Finding;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.PlanClauses;
import slipday.language.Value;

/** Which plantings stand in one cage: it is enough that one of two names the other. */
final class Cages {
  private static final String CAGED = FlowerCare.How.CAGED.words();

  private final Map<String, Set<String>> beside = new HashMap<>();

  /**
   * @param plantings the blocks of all plantings
   * @param findings takes what is wrong: a planting is said to share a cage and is not caged
   */
  Cages(List<Block> plantings, List<Finding> findings) {
    Map<String, Block> byName = new LinkedHashMap<>();
    plantings.forEach(b -> b.head().ifPresent(head -> byName.putIfAbsent(name(head), b)));
    byName.forEach(
        (name, block) -> {
          for (Value.Name mate : mates(block)) {
            Block other = byName.get(mate.text());
            if (other != null && care(other).filter(c -> how(c).startsWith(CAGED)).isEmpty()) {
              findings.add(notCaged(name, mate, other));
            }
            beside.computeIfAbsent(name, n -> new HashSet<>()).add(mate.text());
            beside.computeIfAbsent(mate.text(), n -> new HashSet<>()).add(name);
          }
        });
  }

  /** The name a planting goes by. */
  static String name(Bound head) {
    return head.name(head.has("as") ? "as" : "lot").text();
  }

  private static Optional<BoundClause> care(Block block) {
    return block.find(PlanClauses.FLOWERS);
  }

  private static String how(BoundClause care) {
    return care.bound().choice("how");
  }

  private static List<Value.Name> mates(Block block) {
    return care(block).map(c -> c.bound().names("planting")).orElse(List.of());
  }

  private static Finding notCaged(String name, Value.Name mate, Block other) {
    return Finding.error(
            "cage-left-open",
            mate.span(),
            "`" + name + "` shares a cage with `" + mate.text() + "`, which is not caged.")
        .also(care(other).map(BoundClause::span).orElseGet(other::span), "not caged here")
        .withHelp(
            "Write `flowers caged with "
                + name
                + "` in `"
                + mate.text()
                + "` as well, or take it out here.");
  }

  /** All others in the cage of a planting, those that only a third one names among them. */
  Set<String> with(String planting) {
    Set<String> found = new HashSet<>();
    Deque<String> open = new ArrayDeque<>(List.of(planting));
    while (!open.isEmpty()) {
      for (String next : beside.getOrDefault(open.pop(), Set.of())) {
        if (found.add(next)) {
          open.push(next);
        }
      }
    }
    found.remove(planting);
    return found;
  }
}
