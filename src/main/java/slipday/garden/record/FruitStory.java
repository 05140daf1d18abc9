package slipday.garden.record;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.garden.CropFacts;
import slipday.measure.Range;
import slipday.measure.Reasoned;

/**
 * What is recorded of one tagged fruit, from its pollination on.
 *
 * @param checked the last that was seen of its set
 * @param picked the first picking
 * @param saved the first taking of its seed
 * @param spoilt what put it out of the seed: it was lost, its plant is gone, its plant or the one
 *     that gave the pollen is off-type or bitter, or it is bitter itself
 */
public record FruitStory(
    Fruit fruit,
    Optional<Fact.SetChecked> checked,
    Optional<Fact.Picked> picked,
    Optional<Fact.Saved> saved,
    Optional<Fact> spoilt) {
  private static final double LONG_BEFORE = 0.75;

  /** What was seen of a fruit stands against the days, but not against half of them. */
  private static final double FAR_TOO_LONG_BEFORE = 0.5;

  /** How far a tagged flower has come. */
  public enum State {
    /** Pollinated, and not yet seen to have taken. */
    PENDING,
    SET,
    FAILED,
    /** Out of the seed before any was taken. */
    LOST,
    PICKED,
    SAVED
  }

  public State state() {
    if (saved.isPresent()) {
      return State.SAVED;
    }
    if (spoilt.isPresent()) {
      return State.LOST;
    }
    if (picked.isPresent()) {
      return State.PICKED;
    }
    return checked.map(c -> c.took() ? State.SET : State.FAILED).orElse(State.PENDING);
  }

  /** Whether it is one of the fruits wanted: set, and none the worse since. */
  public boolean counts() {
    return switch (state()) {
      case SET, PICKED -> true;
      case SAVED -> spoilt.isEmpty();
      default -> false;
    };
  }

  /**
   * Whether it took at first, whatever became of it; empty while nobody knows. One that was off too
   * soon proves nothing.
   */
  public Optional<Boolean> took() {
    boolean grown = picked.isPresent() && !pickedTooSoon();
    return grown || saved.isPresent() || lost().isPresent()
        ? Optional.of(true)
        : checked.map(Fact.SetChecked::took);
  }

  /**
   * Whether it was picked long before fruit of its kind is ripe, and nothing says in which state;
   * or so early that it can't have been ripe, though that is told of it.
   *
   * @see #isLongBefore
   */
  public boolean pickedTooSoon() {
    return picked.filter(p -> pickedTooSoon(fruit, p)).isPresent();
  }

  /** The same of any fruit and its picking. */
  public static boolean pickedTooSoon(Fruit fruit, Fact.Picked picked) {
    long hung = ChronoUnit.DAYS.between(fruit.date(), picked.date());
    double share = picked.state().isEmpty() ? LONG_BEFORE : FAR_TOO_LONG_BEFORE;
    return !picked.isUnripe()
        && ripeAfter(fruit).filter(r -> hung < share * r.value().low()).isPresent();
  }

  /** Days from pollination to ripe; a heat sum has no days of its own. */
  public static Optional<Reasoned<Range>> ripeAfter(Fruit fruit) {
    return fruit
        .facts()
        .get(CropFacts.RIPE)
        .filter(r -> !r.value().heat())
        .map(r -> r.map(CropFacts.RipeAfter::after));
  }

  /** Under three quarters of the fewest days is long before; common practice, no source. */
  public static boolean isLongBefore(long hung, Range days) {
    return hung < LONG_BEFORE * days.low();
  }

  /** Where it took, and was lost after. */
  private Optional<Fact> lost() {
    return spoilt.filter(Fact.FruitLost.class::isInstance);
  }

  /** The line that says whether it took; its own where none does. */
  public Fact proof() {
    return checked
        .map(Fact.class::cast)
        .or(() -> picked.map(Fact.class::cast))
        .or(() -> saved.map(Fact.class::cast))
        .or(this::lost)
        .orElse(fruit);
  }

  /** The stories of all tagged fruits, by date of their pollination. */
  public static List<FruitStory> all(GardenRecord record) {
    return new Teller(record).all();
  }

  /** Gathers what is recorded by fruit and by plant, in one go. */
  private static final class Teller {
    private final Map<Fruit.Key, Fruit> fruits = new LinkedHashMap<>();
    private final Map<Fruit.Key, Fact.SetChecked> checked = new HashMap<>();
    private final Map<Fruit.Key, Fact.Picked> picked = new HashMap<>();
    private final Map<Fruit.Key, Fact.Saved> saved = new HashMap<>();
    private final Map<Fruit.Key, Fact> lost = new HashMap<>();
    private final Bitterness bitterness;
    private final Map<Plants, Fact> unfit = new HashMap<>();
    private final Map<Plants, Fact.Lost> gone = new HashMap<>();

    Teller(GardenRecord record) {
      bitterness = Bitterness.of(record);
      record.every(Fruit.class).forEach(f -> fruits.putIfAbsent(f.key(), f));
      record.facts().forEach(this::file);
    }

    List<FruitStory> all() {
      return fruits.values().stream().map(this::story).toList();
    }

    private void file(Fact fact) {
      if (fact instanceof Fact.SetChecked set) {
        checked.put(set.fruit().key(), set);
      } else if (fact instanceof Fact.Picked p && p.subject() instanceof Fruit fruit) {
        picked.putIfAbsent(fruit.key(), p);
      } else if (fact instanceof Fact.Saved s && s.from() instanceof Fruit fruit) {
        saved.putIfAbsent(fruit.key(), s);
      } else if (fact instanceof Fact.FruitLost l) {
        lost.putIfAbsent(l.fruit().key(), l);
      } else if (fact instanceof Fact.OffType off) {
        unfit.putIfAbsent(off.plants(), off);
      } else if (fact instanceof Fact.Lost l) {
        gone.putIfAbsent(l.plants(), l);
      }
    }

    private FruitStory story(Fruit fruit) {
      Fruit.Key key = fruit.key();
      return new FruitStory(
          fruit,
          Optional.ofNullable(checked.get(key)),
          Optional.ofNullable(picked.get(key)),
          Optional.ofNullable(saved.get(key)),
          spoilt(fruit));
    }

    private Optional<Fact> spoilt(Fruit fruit) {
      return Stream.of(
              Optional.ofNullable(lost.get(fruit.key())),
              bitterness.of(fruit).map(t -> (Fact) t.tasted()),
              Optional.ofNullable(unfit.get(fruit.seedParent()))
                  .filter(f -> fruit.seedParent().plant().isPresent()),
              Optional.ofNullable(unfit.get(fruit.pollenParent()))
                  .filter(f -> fruit.pollenParent().plant().isPresent()),
              gone(fruit))
          .flatMap(Optional::stream)
          .findFirst();
    }

    /** A rogued plant's fruit is no seed at all; a dead one's is, if it was picked before. */
    private Optional<Fact> gone(Fruit fruit) {
      Fact.Lost end = gone.get(fruit.seedParent());
      if (end == null || fruit.seedParent().plant().isEmpty()) {
        return Optional.empty();
      }
      Optional<LocalDate> off = Optional.ofNullable(picked.get(fruit.key())).map(Fact.Picked::date);
      boolean inTime = !end.rogued() && off.isPresent() && !off.get().isAfter(end.date());
      return inTime ? Optional.empty() : Optional.of(end);
    }
  }
}
