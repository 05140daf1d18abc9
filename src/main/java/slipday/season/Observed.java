package slipday.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import slipday.garden.Planting;
import slipday.garden.record.At;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.FruitStory;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Plants;
import slipday.garden.record.Stand;
import slipday.measure.Reasoned;

/**
 * What was recorded of a planting's own days this season. A first is the first of any of its
 * plants.
 *
 * @param by by when a flower of a kind had opened, for one was pollinated then; only where its
 *     first is not recorded
 * @param gone the day on which the last of its plants died or was taken out
 */
record Observed(
    Map<Event, Reasoned<LocalDate>> days,
    Map<Event, Reasoned<LocalDate>> by,
    Optional<Reasoned<LocalDate>> gone) {
  static final Observed NOTHING = new Observed(Map.of(), Map.of(), Optional.empty());

  /** What is recorded of the days of the plan's plantings, by their names. */
  static Map<String, List<Fact>> byPlanting(GardenRecord record) {
    Map<String, List<Fact>> facts = new HashMap<>();
    for (Fact fact : record.facts()) {
      stands(fact)
          .flatMap(s -> s.planting().stream())
          .distinct()
          .forEach(p -> facts.computeIfAbsent(p.name(), n -> new ArrayList<>()).add(fact));
    }
    return facts;
  }

  /**
   * @param facts those of the planting, by date
   */
  static Observed of(List<Fact> facts, Planting planting) {
    Map<Event, Reasoned<LocalDate>> days = new EnumMap<>(Event.class);
    Map<Event, Reasoned<LocalDate>> by = new EnumMap<>(Event.class);
    Standing standing = new Standing(planting);
    for (Fact fact : facts) {
      if (fact instanceof Fruit fruit) {
        opened(fruit, planting).forEach(e -> by.putIfAbsent(e, dated(fact.at())));
      }
      events(fact, planting).forEach(e -> days.putIfAbsent(e, dated(fact.at())));
      standing.count(fact);
    }
    Optional<Reasoned<LocalDate>> gone = standing.gone().map(l -> dated(l.at()));
    days.entrySet().removeIf(e -> isLater(e.getValue(), by.get(e.getKey())));
    by.keySet().removeAll(days.keySet());
    return days.isEmpty() && by.isEmpty() && gone.isEmpty()
        ? NOTHING
        : new Observed(days, by, gone);
  }

  /** The first flowers of one plant may be recorded, and another have been pollinated before. */
  private static boolean isLater(Reasoned<LocalDate> day, @Nullable Reasoned<LocalDate> by) {
    return by != null && day.value().isAfter(by.value());
  }

  /** The flowers of a planting that stood open when a fruit was pollinated. */
  private static Stream<Event> opened(Fruit fruit, Planting planting) {
    Stream<Event> borne =
        isOf(fruit.seedParent(), planting) ? Stream.of(Event.FIRST_FRUITING) : Stream.empty();
    boolean male = planting.line().sex().hasMaleFlowers();
    Stream<Event> shed =
        isOf(fruit.pollenParent(), planting)
            ? Stream.of(male ? Event.FIRST_MALE : Event.FIRST_FRUITING)
            : Stream.empty();
    return Stream.concat(borne, shed);
  }

  private static boolean isOf(Plants plants, Planting planting) {
    return plants.stand().planting().filter(p -> p.name().equals(planting.name())).isPresent();
  }

  private static Reasoned<LocalDate> dated(At at) {
    return new Reasoned<>(at.date(), at.reason());
  }

  private static Stream<Stand> stands(Fact fact) {
    return fact instanceof Fruit f
        ? Stream.of(f.seedParent().stand(), f.pollenParent().stand())
        : stand(fact).stream();
  }

  private static Optional<Stand> stand(Fact fact) {
    if (fact instanceof Fact.Raised raised) {
      return Optional.of(raised.stand());
    }
    if (fact instanceof Fact.FirstFlowers f) {
      return Optional.of(f.plants().stand());
    }
    if (fact instanceof Fact.Lost l) {
      return Optional.of(l.plants().stand());
    }
    return fact instanceof Fact.Picked p ? picked(p) : Optional.empty();
  }

  private static Optional<Stand> picked(Fact.Picked picked) {
    if (picked.isUnripe()) {
      return Optional.empty();
    }
    if (picked.subject() instanceof Fruit fruit) {
      return FruitStory.pickedTooSoon(fruit, picked)
          ? Optional.empty()
          : Optional.of(fruit.seedParent().stand());
    }
    return picked.subject() instanceof Plants p ? Optional.of(p.stand()) : Optional.empty();
  }

  private static List<Event> events(Fact fact, Planting planting) {
    if (fact instanceof Fact.Sowed) {
      return List.of(Event.SOW);
    }
    if (fact instanceof Fact.Emerged) {
      return List.of(Event.EMERGED);
    }
    if (fact instanceof Fact.PottedOn) {
      return List.of(Event.POT_ON);
    }
    if (fact instanceof Fact.PlantedOut) {
      return List.of(Event.PLANT_OUT);
    }
    if (fact instanceof Fact.FirstFlowers f) {
      return List.of(f.male() ? Event.FIRST_MALE : Event.FIRST_FRUITING);
    }
    return fact instanceof Fact.Picked p ? ripe(p, planting) : List.of();
  }

  /** Where seed fills after the eating stage, marked fruit hangs till then, the rest is eaten. */
  private static List<Event> ripe(Fact.Picked picked, Planting planting) {
    if (MarkedFruits.ripens(planting.facts()) == Event.RIPE) {
      return List.of(Event.RIPE, Event.SEED_RIPE);
    }
    return List.of(picked.subject() instanceof Fruit ? Event.SEED_RIPE : Event.RIPE);
  }

  /** How many plants there are, fact by fact. */
  private static final class Standing {
    private final int meant;
    private int planted;
    private int lost;
    private Optional<Fact.Lost> last = Optional.empty();

    Standing(Planting planting) {
      this.meant = planting.plants().map(Reasoned::value).orElse(Integer.MAX_VALUE);
    }

    void count(Fact fact) {
      if (fact instanceof Fact.PlantedOut out) {
        planted += out.plants().orElse(meant);
      } else if (fact instanceof Fact.Lost gone) {
        lost += gone.count();
        last = Optional.of(gone);
      }
    }

    Optional<Fact.Lost> gone() {
      return last.filter(l -> lost >= (planted > 0 ? planted : meant));
    }
  }

  Optional<Reasoned<LocalDate>> day(Event event) {
    return Optional.ofNullable(days.get(event));
  }

  /** The day by which a first flower had opened, where its own is not recorded. */
  Optional<Reasoned<LocalDate>> openedBy(Event event) {
    return Optional.ofNullable(by.get(event));
  }

  Optional<LocalDate> date(Event event) {
    return day(event).map(Reasoned::value);
  }

  /** The day that the season is reckoned from: planted out, or sown in place. */
  Optional<Reasoned<LocalDate>> start(boolean indoors) {
    return day(indoors ? Event.PLANT_OUT : Event.SOW);
  }
}
