package slipday.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import slipday.garden.Bed;
import slipday.garden.Facts;
import slipday.garden.Planting;
import slipday.measure.Reasoned;

/** Plantings of one kind differ in nothing that moves their dates; a big plan has many alike. */
record PlantingKind(Facts facts, List<Object> more) {
  /**
   * @param lessons whose record its figures are out of; empty where they are the usual ones
   */
  static PlantingKind of(Planting p, Observed observed, String lessons) {
    return new PlantingKind(
        p.facts(),
        List.of(
            p.start(),
            p.soilWarmer().map(Reasoned::value),
            p.cover().map(Reasoned::value),
            p.seedSaved(),
            p.bed().map(Bed::colder).orElse(0.0),
            observed.days(),
            observed.by(),
            ages(p, observed),
            observed.gone().map(Reasoned::value),
            lessons));
  }

  /** The fixed days that the age of its seedlings hangs on; where the sowing is free none does. */
  private static List<Optional<LocalDate>> ages(Planting p, Observed observed) {
    boolean sown = p.sowOn().isPresent() || observed.date(Event.SOW).isPresent();
    return sown
        ? List.of(p.sowOn().map(Reasoned::value), p.plantOutOn().map(Reasoned::value))
        : List.of();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PlantingKind kind && facts.equals(kind.facts) && more.equals(kind.more);
  }

  @Override
  public int hashCode() {
    return facts.hashCode();
  }

  /** A kind set out on a slot. */
  record At(PlantingKind kind, int start) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof At at && start == at.start && kind.equals(at.kind);
    }

    @Override
    public int hashCode() {
      return 31 * kind.hashCode() + start;
    }
  }
}
