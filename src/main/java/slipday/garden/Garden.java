package slipday.garden;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.garden.record.Fact;
import slipday.garden.record.GardenRecord;
import slipday.measure.Units;

/** A garden in a season, resolved: every name found, every unit fitting. */
public record Garden(
    SeasonYear season,
    Site site,
    Map<String, Species> species,
    Map<String, Crop> crops,
    List<Bed> beds,
    List<Outsider> outsiders,
    List<Line> lines,
    List<Lot> lots,
    List<Planting> plantings,
    List<Cross> crosses,
    List<Goal> goals,
    List<Allowance> allowances,
    GardenRecord record) {

  /** The units its gardener is answered in. */
  public Units units() {
    return site.units();
  }

  public Optional<Planting> planting(String name) {
    return plantings.stream().filter(p -> p.name().equals(name)).findFirst();
  }

  /** The garden as it was known at the end of a day: itself where nothing is recorded later. */
  public Garden asOf(LocalDate date) {
    GardenRecord known = record.until(date);
    return known.facts().size() == record.facts().size()
        ? this
        : new Garden(
            season,
            site,
            species,
            crops,
            beds,
            outsiders,
            lines,
            born(known),
            plantings,
            crosses,
            goals,
            allowances,
            known);
  }

  /** The lots without those whose seed was yet to be taken, unless a planting is of them. */
  private List<Lot> born(GardenRecord known) {
    Set<String> later = new HashSet<>();
    record.every(Fact.Saved.class).forEach(s -> later.add(s.lot().name()));
    known.every(Fact.Saved.class).forEach(s -> later.remove(s.lot().name()));
    plantings.forEach(p -> later.remove(p.lot().name()));
    return lots.stream().filter(l -> !later.contains(l.name())).toList();
  }

  /** Whether some crop of the species is bitter and poisonous. */
  public boolean hasBitterKin(Species kind) {
    return crops.values().stream().anyMatch(c -> c.species().equals(kind) && c.isBitter());
  }

  /** Names of species that have bitter kin. */
  public Set<String> speciesWithBitterKin() {
    Set<String> names = new HashSet<>();
    crops.values().stream().filter(Crop::isBitter).forEach(c -> names.add(c.species().name()));
    return names;
  }
}
