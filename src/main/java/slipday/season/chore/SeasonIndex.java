package slipday.season.chore;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slipday.garden.CropFacts;
import slipday.garden.Garden;
import slipday.garden.Planting;
import slipday.measure.Reasoned;
import slipday.season.Exposure;
import slipday.season.PlantingSeason;
import slipday.season.PollinationPlan;
import slipday.season.Season;

/** What the season says of each planting, by its name. */
final class SeasonIndex {
  private final Season season;
  private final Map<String, PlantingSeason> plantings = new HashMap<>();
  private final Map<String, List<PollinationPlan>> pollinations;
  private final Map<String, List<Exposure>> bitterExposures;
  private final Set<String> pollenParents = new HashSet<>();

  SeasonIndex(Season season) {
    this.season = season;
    season.plantings().forEach(p -> plantings.put(p.name(), p));
    pollinations =
        season.pollinations().stream().collect(Collectors.groupingBy(p -> p.seedParent().name()));
    season.pollinations().forEach(p -> pollenParents.add(p.pollenParent().name()));
    bitterExposures =
        season.exposures().stream()
            .filter(e -> e.intoSeed() && e.source().isBitter())
            .collect(Collectors.groupingBy(e -> e.receiver().name()));
  }

  Season season() {
    return season;
  }

  Garden garden() {
    return season.garden();
  }

  Optional<PlantingSeason> planting(String name) {
    return Optional.ofNullable(plantings.get(name));
  }

  /** The hand pollinations done on flowers of it. */
  List<PollinationPlan> on(Planting planting) {
    return pollinations.getOrDefault(planting.name(), List.of());
  }

  /** Whether flowers of it are pollinated by hand, for itself or for a cross. */
  boolean pollinated(Planting planting) {
    return pollinations.containsKey(planting.name());
  }

  /** Whether it is selfed or sibbed by hand. */
  boolean pollinatedWithin(Planting planting) {
    return on(planting).stream().anyMatch(p -> p.cross().isEmpty());
  }

  boolean givesPollen(Planting planting) {
    return pollenParents.contains(planting.name());
  }

  /** Who sheds bitter kin's pollen on flowers of it whose seed is kept. */
  List<String> bitterSources(Planting planting) {
    return bitterExposures.getOrDefault(planting.name(), List.of()).stream()
        .map(e -> e.source().name())
        .distinct()
        .toList();
  }

  /** The mornings of a pollination by hand. */
  List<LocalDate> mornings(PollinationPlan plan) {
    return Mornings.of(plan, garden().site().morningsAWeek().map(Reasoned::value));
  }

  /** The mornings of every pollination by hand on it, in their order. */
  List<LocalDate> mornings(Planting planting) {
    return on(planting).stream().flatMap(p -> mornings(p).stream()).sorted().toList();
  }

  /**
   * When the fruit of the last hand pollination is ripe, where that is later than another day.
   * Where ripening is told as a heat sum the other day stands.
   */
  LocalDate lastFruit(Planting planting, LocalDate otherwise) {
    Optional<Long> days =
        planting
            .facts()
            .get(CropFacts.RIPE)
            .map(Reasoned::value)
            .filter(r -> !r.heat())
            .map(r -> Math.round(r.after().high()));
    Optional<LocalDate> last = mornings(planting).stream().max(LocalDate::compareTo);
    Stream<LocalDate> ripe = last.flatMap(m -> days.map(m::plusDays)).stream();
    return Stream.concat(Stream.of(otherwise), ripe).max(LocalDate::compareTo).orElseThrow();
  }
}
