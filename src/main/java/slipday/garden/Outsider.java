package slipday.garden;

import java.util.List;
import java.util.Optional;
import slipday.measure.Reasoned;
import slipday.source.Span;

/**
 * Pollen the gardener does not grow: a neighbour's plants or a volunteer. When it flowers nobody
 * knows.
 *
 * @param distance m from the garden; empty where it is not told
 */
public record Outsider(
    String name,
    String title,
    boolean volunteer,
    List<Reasoned<Crop>> crops,
    Optional<Reasoned<Double>> distance,
    Places places)
    implements Named {
  @Override
  public Span span() {
    return places.block().span();
  }
}
