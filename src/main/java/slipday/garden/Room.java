package slipday.garden;

import java.util.Optional;
import slipday.measure.Reasoned;

/** How much ground there is, and how much plants cover; m². */
public final class Room {
  private Room() {}

  /** A plant's area where one is known, or else its narrowest spacing. */
  public static Optional<Reasoned<Double>> ofPlant(Facts facts) {
    return facts
        .get(CropFacts.AREA)
        .or(
            () ->
                facts
                    .get(CropFacts.SPACING)
                    .map(s -> s.map(g -> g.inRow().low() * g.betweenRows().low())));
  }

  /** A bed with what vines may trail beyond it on every side. */
  public static double of(Bed bed, Bed.Size size) {
    double trail = 2 * bed.trail();
    return (size.length() + trail) * (size.width() + trail);
  }
}
