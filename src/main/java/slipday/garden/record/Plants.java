package slipday.garden.record;

import java.util.Optional;

/**
 * One plant of a stand, or the stand as a whole.
 *
 * @param plant its number, from 1
 */
public record Plants(Stand stand, Optional<Integer> plant) implements Subject {
  @Override
  public String name() {
    return toString();
  }

  @Override
  public String toString() {
    return stand.name() + plant.map(n -> " plant " + n).orElse("");
  }
}
