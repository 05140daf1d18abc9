package slipday.choice;

import java.util.List;
import java.util.Optional;

/**
 * What a choice of parents is to keep to, beside the goal.
 *
 * @param parents the fewest seed parents; empty for the goal's, or what the line's purpose asks
 * @param effectiveSize the least effective size, by the shares of all parents
 * @param coancestry the most mean coancestry among them
 * @param plants how many plants the next generation will have; empty for as many as were planned
 * @param keep tags of fruits whose seed goes on whatever else does
 * @param drop tags of fruits whose seed does not
 */
public record Wish(
    Optional<Integer> parents,
    Optional<Double> effectiveSize,
    Optional<Double> coancestry,
    Optional<Integer> plants,
    List<String> keep,
    List<String> drop) {
  public Wish {
    keep = List.copyOf(keep);
    drop = List.copyOf(drop);
  }

  /** Nothing but the goal. */
  public static Wish none() {
    return of(Optional.empty());
  }

  /** The goal, for so many plants of the next generation. */
  public static Wish ofPlants(int plants) {
    return of(Optional.of(plants));
  }

  private static Wish of(Optional<Integer> plants) {
    return new Wish(
        Optional.empty(), Optional.empty(), Optional.empty(), plants, List.of(), List.of());
  }
}
