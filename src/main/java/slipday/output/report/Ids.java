package slipday.output.report;

import java.util.HashMap;
import java.util.Map;
import slipday.garden.Named;

/** Short ids of the garden's things on a page; names may be anything and are never ids. */
final class Ids {
  private final Map<String, String> known = new HashMap<>();

  /** The same for a thing of the same kind and name. */
  String of(Named thing) {
    String kind =
        thing.getClass().getSimpleName().substring(0, 2).toLowerCase(java.util.Locale.ROOT);
    return known.computeIfAbsent(kind + " " + thing.name(), k -> kind + known.size());
  }
}
