package slipday.garden;

import java.util.Optional;
import slipday.measure.Reasoned;
import slipday.source.Span;

/** A cross to be made by hand: the seed parent bears the fruit. */
public record Cross(
    String name,
    Planting seedParent,
    Planting pollenParent,
    Optional<Reasoned<Integer>> fruits,
    Places places)
    implements Named {
  @Override
  public Span span() {
    return places.block().span();
  }

  /** Whether the seed parent's own anthers must come off: a perfect flower and other pollen. */
  public boolean needsEmasculation() {
    return seedParent.line().sex().fruitingFlowersArePerfect();
  }
}
