package slipday.choice;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Bed;
import slipday.garden.Garden;
import slipday.garden.record.Fact;
import slipday.garden.record.Plants;

/** Where each plant stood: its planting's bed, or the one it was moved to. */
final class Grounds {
  private final Map<Plants, Bed> moved = new HashMap<>();

  Grounds(Garden garden) {
    garden.record().every(Fact.Moved.class).forEach(m -> moved.put(m.plants(), m.to()));
  }

  /** Empty for plants of other seasons, whose beds nobody recorded. */
  Optional<String> bed(Plants plant) {
    Plants stand = new Plants(plant.stand(), Optional.empty());
    Optional<Bed> to =
        Optional.ofNullable(moved.get(plant)).or(() -> Optional.ofNullable(moved.get(stand)));
    return to.or(() -> plant.stand().planting().flatMap(p -> p.bed())).map(Bed::name);
  }

  /** Seasons in which plants are known to have stood in more than one bed. */
  Set<Integer> seasonsOfSeveralBeds(Iterable<Plants> plants) {
    Map<Integer, Set<String>> beds = new HashMap<>();
    for (Plants plant : plants) {
      bed(plant)
          .ifPresent(b -> beds.computeIfAbsent(plant.stand().year(), y -> new HashSet<>()).add(b));
    }
    beds.values().removeIf(names -> names.size() < 2);
    return beds.keySet();
  }
}
