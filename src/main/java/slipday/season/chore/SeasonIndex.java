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
import slipday.garden.record.FruitStory;
import slipday.garden.record.FruitStory.State;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.season.Event;
import slipday.season.Exposure;
import slipday.season.MarkedFruit;
import slipday.season.PlantingSeason;
import slipday.season.PollinationPlan;
import slipday.season.Season;

/** What the season says of each planting, by its name. */
final class SeasonIndex {
  static final String NEVER_SLIPS = "none";

  private final Season season;
  private final Map<String, PlantingSeason> plantings = new HashMap<>();
  private final Map<String, List<PollinationPlan>> pollinations;
  private final Map<String, List<Exposure>> bitterExposures;
  private final Set<String> pollenParents = new HashSet<>();
  private final Set<String> slipping;
  private final Map<String, List<MarkedFruit>> hanging;

  SeasonIndex(Season season) {
    this.season = season;
    season.plantings().forEach(p -> plantings.put(p.name(), p));
    pollinations =
        season.pollinations().stream().collect(Collectors.groupingBy(p -> p.seedParent().name()));
    season.pollinations().forEach(p -> pollenParents.add(p.pollenParent().name()));
    slipping =
        season.garden().crops().values().stream()
            .filter(c -> !c.facts().valueOr(CropFacts.SLIP, NEVER_SLIPS).equals(NEVER_SLIPS))
            .map(c -> c.species().name())
            .collect(Collectors.toUnmodifiableSet());
    hanging =
        season.fruits().stream()
            .filter(MarkedFruit::hangs)
            .collect(Collectors.groupingBy(f -> f.planting().name()));
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

  /** Whether some kind of its species slips from the vine, so that not slipping tells something. */
  boolean speciesSlips(Planting planting) {
    return slipping.contains(planting.species().name());
  }

  /** Marked fruit of it that hangs by the record. */
  List<MarkedFruit> hanging(Planting planting) {
    return hanging.getOrDefault(planting.name(), List.of());
  }

  /** Whether all the fruit that was wanted is set, picked and without its seed. */
  boolean isSeedTaken(PollinationPlan plan) {
    return plan.left() == 0
        && plan.pollinated().stream()
            .map(FruitStory::state)
            .allMatch(s -> s == State.SAVED || s == State.FAILED || s == State.LOST);
  }

  /** When the last fruit pollinated by hand is ripe, where that is later than another day. */
  LocalDate lastRipe(Planting planting, LocalDate otherwise) {
    return later(planting, ripeAfter(planting), otherwise);
  }

  /**
   * When the last fruit pollinated by hand holds full seed, where that is later than another day.
   */
  LocalDate lastSeed(Planting planting, LocalDate otherwise) {
    Optional<Range> full = seedLater(planting);
    return later(planting, full.or(() -> ripeAfter(planting)), otherwise);
  }

  /** Days from pollination to full seed, where the slowest fruit is ripe before that. */
  Optional<Range> seedLater(Planting planting) {
    double ripe = ripeAfter(planting).map(Range::high).orElse(0.0);
    return own(planting, Event.SEED_RIPE)
        .or(() -> planting.facts().get(CropFacts.SEED_RIPE).map(Reasoned::value))
        .filter(d -> d.high() > ripe);
  }

  /** Days from pollination to ripe; empty where that is told as a heat sum. */
  Optional<Range> ripeAfter(Planting planting) {
    return own(planting, Event.RIPE)
        .or(
            () ->
                planting
                    .facts()
                    .get(CropFacts.RIPE)
                    .map(Reasoned::value)
                    .filter(r -> !r.heat())
                    .map(CropFacts.RipeAfter::after));
  }

  /** Days out of the line's own record. */
  private Optional<Range> own(Planting planting, Event event) {
    return planting(planting.name()).map(p -> p.ownDays().get(event)).map(Reasoned::value);
  }

  private LocalDate later(Planting planting, Optional<Range> after, LocalDate otherwise) {
    Optional<LocalDate> last = mornings(planting).stream().max(LocalDate::compareTo);
    Stream<LocalDate> ready =
        last.flatMap(m -> after.map(d -> m.plusDays(Math.round(d.high())))).stream();
    Stream<LocalDate> marked =
        hanging(planting).stream().flatMap(f -> f.expected().value().late().stream());
    return Stream.of(Stream.of(otherwise), ready, marked)
        .flatMap(s -> s)
        .max(LocalDate::compareTo)
        .orElseThrow();
  }
}
