package slipday.season;

import java.util.Optional;
import slipday.garden.Crop;
import slipday.garden.Outsider;
import slipday.garden.Planting;
import slipday.source.Span;

/** Where pollen comes from: a planting of the garden, or a neighbour or volunteer. */
public record PollenSource(
    String name, Crop crop, Optional<Planting> planting, Optional<Outsider> outsider) {
  static PollenSource of(Planting planting) {
    return new PollenSource(
        planting.name(), planting.crop(), Optional.of(planting), Optional.empty());
  }

  static PollenSource of(Outsider outsider, Crop crop) {
    return new PollenSource(outsider.name(), crop, Optional.empty(), Optional.of(outsider));
  }

  /** The line that declares it. */
  public Span span() {
    return planting.map(Planting::span).orElseGet(() -> outsider.orElseThrow().span());
  }

  public boolean isBitter() {
    return crop.isBitter();
  }
}
