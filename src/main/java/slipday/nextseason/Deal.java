package slipday.nextseason;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;

/** Plants dealt out by weight. */
final class Deal {
  private Deal() {}

  /**
   * @param weights of whatever is to share, what comes first of like weight going before
   * @param least plants of each that has any: those of least weight get none where there are too
   *     few
   * @param most plants that each can have
   * @return those that have any, the heaviest first; fewer plants in all where all have their most
   */
  static <T> Map<T, Integer> out(
      int plants, Map<T, Integer> weights, int least, ToIntFunction<T> most) {
    List<T> order = new ArrayList<>();
    weights.keySet().stream().filter(t -> most.applyAsInt(t) > 0).forEach(order::add);
    order.sort((a, b) -> Integer.compare(weight(weights, b), weight(weights, a)));
    if (order.stream().anyMatch(t -> most.applyAsInt(t) >= least)) {
      order.removeIf(t -> most.applyAsInt(t) < least);
    }
    List<T> some = order.subList(0, Math.min(order.size(), Math.max(1, plants / least)));
    double sum = some.stream().mapToInt(t -> weight(weights, t)).sum();
    Map<T, Integer> dealt = new LinkedHashMap<>();
    int left = plants;
    for (T each : some) {
      int first = Math.min(left, Math.min(least, most.applyAsInt(each)));
      dealt.put(each, first);
      left -= first;
    }
    while (left > 0) {
      T next = null;
      double largest = Double.NEGATIVE_INFINITY;
      for (T each : some) {
        int has = dealt.getOrDefault(each, 0);
        double lack = weight(weights, each) * plants / sum - has;
        if (has < most.applyAsInt(each) && lack > largest) {
          next = each;
          largest = lack;
        }
      }
      if (next == null) {
        break;
      }
      dealt.merge(next, 1, Integer::sum);
      left--;
    }
    return dealt;
  }

  private static <T> int weight(Map<T, Integer> weights, T of) {
    return Math.max(1, weights.getOrDefault(of, 1));
  }
}
