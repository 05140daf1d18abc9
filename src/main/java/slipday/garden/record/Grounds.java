package slipday.garden.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Bed;
import slipday.garden.Crop;
import slipday.garden.Garden;
import slipday.garden.Planting;
import slipday.measure.Reasoned;

/**
 * Where each plant stood last: in the bed that the plan gives its planting, or the one it was moved
 * to, alone or with its whole planting, whichever came later.
 */
public final class Grounds {
  private final List<Planting> plantings;
  private final int season;
  private final Map<Plants, Fact.Moved> moved = new LinkedHashMap<>();

  /** The plants that moved alone, by their stand. */
  private final Map<Stand, Set<Plants>> alone = new HashMap<>();

  public Grounds(Garden garden) {
    this.plantings = garden.plantings();
    this.season = garden.record().season();
    garden.record().every(Fact.Moved.class).forEach(this::move);
  }

  /**
   * Plants of one planting in one bed.
   *
   * @param plants how many of those planned; empty where the plan tells no number
   * @param move what brought them there; empty for the bed of the plan
   */
  public record Part(
      Planting planting, Bed bed, Optional<Integer> plants, Optional<Fact.Moved> move) {}

  private void move(Fact.Moved move) {
    Stand stand = move.plants().stand();
    if (move.plants().plant().isEmpty()) {
      Set<Plants> before = alone.remove(stand);
      if (before != null) {
        moved.keySet().removeAll(before);
      }
    } else {
      alone.computeIfAbsent(stand, s -> new LinkedHashSet<>()).add(move.plants());
    }
    moved.put(move.plants(), move);
  }

  /** The name of a plant's bed; empty for plants of other seasons, whose beds nobody recorded. */
  public Optional<String> bed(Plants plant) {
    return Optional.ofNullable(moved.get(plant))
        .map(Fact.Moved::to)
        .or(() -> whole(plant.stand()))
        .map(Bed::name);
  }

  private Optional<Bed> whole(Stand stand) {
    return Optional.ofNullable(moved.get(new Plants(stand, Optional.empty())))
        .map(Fact.Moved::to)
        .or(() -> stand.planting().flatMap(Planting::bed));
  }

  /** The bed where a planting of the plan stood, but for plants that were moved alone. */
  public Optional<Bed> bed(Planting planting) {
    return whole(stand(planting));
  }

  private Stand stand(Planting planting) {
    return new Stand(season, planting.name(), planting.lot(), Optional.of(planting));
  }

  /** What stood in each bed, by the plan's plantings; beds where nothing stood are not in it. */
  public Map<String, List<Part>> byBed() {
    Map<String, List<Part>> beds = new LinkedHashMap<>();
    for (Planting planting : plantings) {
      for (Part part : parts(planting)) {
        beds.computeIfAbsent(part.bed().name(), b -> new ArrayList<>()).add(part);
      }
    }
    return beds;
  }

  /** The crops that stood in each bed. */
  public Map<String, Set<Crop>> cropsByBed() {
    Map<String, Set<Crop>> crops = new HashMap<>();
    byBed()
        .forEach(
            (bed, parts) -> {
              Set<Crop> here = crops.computeIfAbsent(bed, b -> new LinkedHashSet<>());
              parts.forEach(p -> here.add(p.planting().crop()));
            });
    return crops;
  }

  /** Those that were not moved alone first. */
  private List<Part> parts(Planting planting) {
    Stand stand = stand(planting);
    Optional<Integer> planned = planting.plants().map(Reasoned::value);
    Map<String, Part> parts = new LinkedHashMap<>();
    Optional<Fact.Moved> all = Optional.ofNullable(moved.get(new Plants(stand, Optional.empty())));
    Set<Plants> singles = alone.getOrDefault(stand, Set.of());
    int left = planned.orElse(Integer.MAX_VALUE) - singles.size();
    whole(stand)
        .filter(b -> left > 0)
        .ifPresent(b -> parts.put(b.name(), new Part(planting, b, planned.map(n -> left), all)));
    for (Plants single : singles) {
      Fact.Moved move = Objects.requireNonNull(moved.get(single));
      parts.merge(
          move.to().name(),
          new Part(planting, move.to(), planned.map(n -> 1), Optional.of(move)),
          (before, one) ->
              new Part(planting, before.bed(), before.plants().map(n -> n + 1), before.move()));
    }
    return List.copyOf(parts.values());
  }

  /** Seasons in which plants are known to have stood in more than one bed. */
  public Set<Integer> seasonsOfSeveralBeds(Iterable<Plants> plants) {
    Map<Integer, Set<String>> beds = new HashMap<>();
    for (Plants plant : plants) {
      bed(plant)
          .ifPresent(b -> beds.computeIfAbsent(plant.stand().year(), y -> new HashSet<>()).add(b));
    }
    beds.values().removeIf(names -> names.size() < 2);
    return beds.keySet();
  }
}
