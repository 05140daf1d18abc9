package slipday.choice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Garden;
import slipday.garden.record.Fact;
import slipday.garden.record.Figures;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.garden.record.Subject;

/** What is wrong with plants and their fruits, and which were tasted for bitterness. */
final class Faults {
  static final String OFF_TYPE = "off-type";

  private final Map<Plants, List<Fault>> byPlant = new LinkedHashMap<>();
  private final Map<Plants, Boolean> bitter = new LinkedHashMap<>();
  private final Map<Plants, Fact.Lost> lost = new LinkedHashMap<>();

  /**
   * @param fruit the marked fruit it was seen on; empty for the plant or fruit for the kitchen
   * @param fruits how many fruits it was seen on; 0 for what is told of the plant as a whole
   */
  record Fault(String what, Optional<Fruit> fruit, int fruits) {}

  private Faults() {}

  static Faults of(Garden garden) {
    Faults made = new Faults();
    garden.record().facts().forEach(made::read);
    return made;
  }

  List<Fault> of(Plants plant) {
    return byPlant.getOrDefault(plant, List.of());
  }

  /** On how many of a plant's fruits a fault was seen; a marked one counts once. */
  int fruits(Plants plant, String what) {
    int kitchen = 0;
    Set<Fruit.Key> marked = new HashSet<>();
    for (Fault fault : of(plant)) {
      if (fault.what().equals(what)) {
        fault.fruit().ifPresent(f -> marked.add(f.key()));
        kitchen += fault.fruit().isPresent() ? 0 : fault.fruits();
      }
    }
    return marked.size() + kitchen;
  }

  /** Whether it was found bitter or clean; empty where it was not tasted. */
  Optional<Boolean> bitter(Plants plant) {
    return Optional.ofNullable(bitter.get(plant));
  }

  /** How it died or was rogued, if it was. */
  Optional<Fact.Lost> lost(Plants plant) {
    return Optional.ofNullable(lost.get(plant));
  }

  private void read(Fact fact) {
    if (fact instanceof Fact.Picked picked) {
      add(picked.subject(), picked.figures(), picked.figures().fruits());
    } else if (fact instanceof Fact.Measured measured) {
      // No fruit is at hand here but a marked one: else it is told of the plant.
      add(measured.subject(), measured.figures(), 0);
    } else if (fact instanceof Fact.LookedAt looked) {
      add(looked.subject(), looked.figures(), 1);
      if (!looked.state().equals("sound")) {
        add(looked.subject(), looked.state(), 1);
      }
    } else if (fact instanceof Fact.OffType off) {
      add(off.plants(), OFF_TYPE, 0);
    } else if (fact instanceof Fact.Lost gone) {
      lost.put(gone.plants(), gone);
      if (gone.rogued()) {
        add(gone.plants(), OFF_TYPE, 0);
      }
    } else if (fact instanceof Fact.Tasted tasted) {
      // One bitter fruit condemns a plant, whatever another told.
      plant(tasted.subject()).ifPresent(p -> bitter.merge(p, tasted.bitter(), Boolean::logicalOr));
    }
  }

  /** A fault that one line names twice is one. */
  private void add(Subject subject, Figures figures, int fruits) {
    figures.faults().stream()
        .map(fault -> fault.toLowerCase(Locale.ROOT))
        .distinct()
        .forEach(fault -> add(subject, fault, fruits));
  }

  private void add(Subject subject, String what, int fruits) {
    Optional<Fruit> fruit = subject instanceof Fruit f ? Optional.of(f) : Optional.empty();
    plant(subject)
        .ifPresent(
            p ->
                byPlant
                    .computeIfAbsent(p, x -> new ArrayList<>())
                    .add(new Fault(what, fruit, fruit.isPresent() ? 1 : fruits)));
  }

  private static Optional<Plants> plant(Subject subject) {
    if (subject instanceof Fruit fruit) {
      return Optional.of(fruit.seedParent());
    }
    return subject instanceof Plants plants ? Optional.of(plants) : Optional.empty();
  }
}
