package slipday.garden;

import java.util.Optional;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/** How readily kinds take each other's pollen, and how far apart that keeps them clean. */
public final class PollenReach {
  private static final Range WITHIN_SPECIES = Range.of(3);

  private PollenReach() {}

  /** How readily plants of one species take each other's pollen. */
  public static Reasoned<Range> within(Species species) {
    return new Reasoned<>(
        WITHIN_SPECIES,
        Reason.fact(
            "Both are " + species.latin() + ": within a species everything crosses",
            species.span()));
  }

  /** How readily the receiver takes the donor's pollen, 0 to 3; empty where they do not cross. */
  public static Optional<Reasoned<Range>> degree(Species donor, Species receiver) {
    if (donor.name().equals(receiver.name())) {
      return Optional.of(within(receiver));
    }
    return receiver.facts().all(CropFacts.CROSSES_WITH).stream()
        .filter(d -> d.value().species().equals(donor.name()))
        .findFirst()
        .filter(d -> d.value().degree().high() > 0)
        .map(d -> d.map(CropFacts.CrossDegree::degree));
  }
}
