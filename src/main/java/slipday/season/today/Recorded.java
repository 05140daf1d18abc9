package slipday.season.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Garden;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Plants;
import slipday.garden.record.Stand;
import slipday.season.Event;
import slipday.season.Season;

/** What is recorded of this season's plantings, by planting. */
final class Recorded {
  /** Where no last day to begin is known. */
  private static final int LATE_DAYS = 35;

  private final int season;
  private final Map<String, Set<Event>> done = new HashMap<>();
  private final Set<String> named = new HashSet<>();
  private final Map<String, List<Fact.Covered>> covered = new HashMap<>();
  private final Map<String, List<Fruit>> pollinated = new HashMap<>();
  private final Map<String, Map<Integer, Fact.Tasted>> tasted = new HashMap<>();
  private final Map<String, Set<Integer>> numbersGone = new HashMap<>();
  private final Map<String, Integer> gone = new HashMap<>();
  private final Map<Plants, String> stakes = new HashMap<>();

  Recorded(Garden garden) {
    GardenRecord record = garden.record();
    this.season = garden.season().year();
    record.facts().forEach(this::file);
  }

  private void file(Fact fact) {
    if (fact instanceof Fact.Sowed s) {
      done(s.stand(), Event.SOW);
    } else if (fact instanceof Fact.Emerged e) {
      done(e.stand(), Event.EMERGED);
    } else if (fact instanceof Fact.PottedOn p) {
      done(p.stand(), Event.POT_ON);
    } else if (fact instanceof Fact.PlantedOut p) {
      done(p.stand(), Event.PLANT_OUT);
    } else if (fact instanceof Fact.FirstFlowers f) {
      done(f.plants().stand(), f.male() ? Event.FIRST_MALE : Event.FIRST_FRUITING);
    } else if (fact instanceof Fact.Covered c) {
      done(c.plants().stand(), Event.FIRST_MALE);
      list(covered, c.plants().stand()).add(c);
    } else if (fact instanceof Fruit f) {
      done(f.seedParent().stand(), Event.FIRST_FRUITING);
      list(pollinated, f.seedParent().stand()).add(f);
    } else if (fact instanceof Fact.Picked p) {
      stand(p.subject()).ifPresent(s -> done(s, Event.RIPE));
    } else if (fact instanceof Fact.Tasted t) {
      plants(t.subject()).ifPresent(p -> tasted(p, t));
    } else if (fact instanceof Fact.Lost l && isOfSeason(l.plants().stand())) {
      String planting = l.plants().stand().name();
      gone.merge(planting, l.count(), Integer::sum);
      l.plants()
          .plant()
          .ifPresent(n -> numbersGone.computeIfAbsent(planting, k -> new HashSet<>()).add(n));
    } else if (fact instanceof Fact.Staked s && isOfSeason(s.plant().stand())) {
      stakes.put(s.plant(), s.stake());
    }
  }

  private boolean isOfSeason(Stand stand) {
    return stand.year() == season;
  }

  private <T> List<T> list(Map<String, List<T>> map, Stand stand) {
    return isOfSeason(stand)
        ? map.computeIfAbsent(stand.name(), n -> new ArrayList<>())
        : new ArrayList<>();
  }

  private void done(Stand stand, Event event) {
    if (isOfSeason(stand)) {
      named.add(stand.name());
      done.computeIfAbsent(stand.name(), n -> new HashSet<>()).add(event);
    }
  }

  private void tasted(Plants plants, Fact.Tasted taste) {
    if (isOfSeason(plants.stand()) && plants.plant().isPresent()) {
      tasted
          .computeIfAbsent(plants.stand().name(), n -> new HashMap<>())
          .merge(plants.plant().get(), taste, (a, b) -> a.bitter() ? a : b);
    }
  }

  static Optional<Plants> plants(slipday.garden.record.Subject subject) {
    if (subject instanceof Fruit fruit) {
      return Optional.of(fruit.seedParent());
    }
    return subject instanceof Plants plants ? Optional.of(plants) : Optional.empty();
  }

  private static Optional<Stand> stand(slipday.garden.record.Subject subject) {
    return plants(subject).map(Plants::stand);
  }

  /** Whether a step of a planting is on record, or one that can only come after it. */
  boolean isDone(String planting, Event event) {
    return done.getOrDefault(planting, Set.of()).stream().anyMatch(e -> e.compareTo(event) >= 0);
  }

  boolean has(String planting, Event event) {
    return done.getOrDefault(planting, Set.of()).contains(event);
  }

  /** Whether anything at all is recorded of any planting this season. */
  boolean isKept() {
    return !named.isEmpty();
  }

  /** Nothing of it is recorded, though of others there is, and it is too late to begin. */
  boolean isNeverSown(Season whole, String planting, LocalDate date) {
    return isKept()
        && !named.contains(planting)
        && whole
            .planting(planting)
            .map(p -> p.choice().latest().orElse(p.choice().date().plusDays(LATE_DAYS)))
            .filter(date::isAfter)
            .isPresent();
  }

  /** Flowers of a planting covered on an evening; a line without a count tells of one. */
  int covered(String planting, LocalDate evening) {
    return covered.getOrDefault(planting, List.of()).stream()
        .filter(c -> c.date().equals(evening))
        .mapToInt(c -> c.flowers().orElse(1))
        .sum();
  }

  int pollinated(String planting, LocalDate morning) {
    return (int)
        pollinated.getOrDefault(planting, List.of()).stream()
            .filter(f -> f.date().equals(morning))
            .count();
  }

  /** Flowers covered on an evening and not pollinated on the morning after. */
  int idle(String planting, LocalDate evening) {
    return Math.max(0, covered(planting, evening) - pollinated(planting, evening.plusDays(1)));
  }

  /** How many plants of a planting died or were taken out. */
  int gone(String planting) {
    return gone.getOrDefault(planting, 0);
  }

  /** Plants of a planting that tasted as asked and stand by the record, by number. */
  List<Integer> tasted(String planting, boolean bitter) {
    Set<Integer> lost = numbersGone.getOrDefault(planting, Set.of());
    return tasted.getOrDefault(planting, Map.of()).entrySet().stream()
        .filter(e -> e.getValue().bitter() == bitter && !lost.contains(e.getKey()))
        .map(Map.Entry::getKey)
        .sorted()
        .toList();
  }

  Optional<String> stake(Plants plant) {
    return Optional.ofNullable(stakes.get(plant));
  }
}
