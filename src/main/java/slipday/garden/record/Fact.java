package slipday.garden.record;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Bed;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.source.Span;

/** One line of the record, understood. */
public sealed interface Fact
    permits Fruit,
        Fact.Raised,
        Fact.Moved,
        Fact.Staked,
        Fact.Lost,
        Fact.OffType,
        Fact.Diseased,
        Fact.FirstFlowers,
        Fact.Covered,
        Fact.Emasculated,
        Fact.SetChecked,
        Fact.FruitLost,
        Fact.Picked,
        Fact.Measured,
        Fact.Tasted,
        Fact.Saved,
        Fact.Dried,
        Fact.Counted,
        Fact.Germinated,
        Fact.GivenAway,
        Fact.GrownOut,
        Fact.Lifted,
        Fact.Stored,
        Fact.LookedAt,
        Fact.Dropped,
        Fact.Note,
        Fact.Photo {
  At at();

  default LocalDate date() {
    return at().date();
  }

  default Span span() {
    return at().span();
  }

  /** What was done with all plants of a stand together, on their way into the bed. */
  sealed interface Raised extends Fact permits Sowed, Emerged, PottedOn, PlantedOut {
    Stand stand();
  }

  /**
   * Seed that was sown.
   *
   * @param lotTold whether the line names the lot, and not only a planting of the plan
   */
  record Sowed(At at, Stand stand, Optional<Integer> seeds, boolean lotTold) implements Raised {}

  record Emerged(At at, Stand stand, int seedlings) implements Raised {}

  record PottedOn(At at, Stand stand, Optional<Integer> plants) implements Raised {}

  record PlantedOut(At at, Stand stand, Optional<Integer> plants) implements Raised {}

  record Moved(At at, Plants plants, Bed to) implements Fact {}

  record Staked(At at, Plants plant, String stake) implements Fact {}

  /** Plants that died or were rogued. */
  record Lost(At at, Plants plants, int count, boolean rogued, Optional<String> why)
      implements Fact {}

  record OffType(At at, Plants plants, int count, Optional<String> why) implements Fact {}

  /** A disease that seed can carry. */
  record Diseased(At at, Plants plants, String what) implements Fact {}

  record FirstFlowers(At at, Plants plants, boolean male) implements Fact {}

  record Covered(At at, Plants plants, Optional<Integer> flowers) implements Fact {}

  record Emasculated(At at, Plants plants, Optional<Integer> flowers) implements Fact {}

  record SetChecked(At at, Fruit fruit, boolean took) implements Fact {}

  /** A tagged fruit that had taken, and was eaten, rotted or broken off. */
  record FruitLost(At at, Fruit fruit, Optional<String> why) implements Fact {}

  /** A tagged fruit, or fruit of a stand for the kitchen. */
  record Picked(At at, Subject subject, Optional<String> state, Figures figures) implements Fact {
    private static final Set<String> UNRIPE = Set.of("before ripe", "forced");

    /** Whether it is told that the fruit was not ripe; its day says nothing of ripening then. */
    public boolean isUnripe() {
      return state.filter(UNRIPE::contains).isPresent();
    }
  }

  record Measured(At at, Subject subject, Figures figures) implements Fact {}

  record Tasted(At at, Subject subject, boolean bitter) implements Fact {}

  /**
   * Seed of a tagged fruit, or of unmarked fruit of a stand.
   *
   * @param counted where the number of seeds stands
   */
  record Saved(At at, Subject from, Optional<Integer> seeds, Optional<Span> counted, Lot lot)
      implements Fact {}

  record Dried(At at, Lot lot) implements Fact {}

  record Counted(At at, Lot lot, int seeds) implements Fact {}

  record Germinated(At at, Lot lot, int seedlings, int of) implements Fact {}

  record GivenAway(At at, Lot lot, int seeds, Optional<String> to) implements Fact {}

  record GrownOut(At at, Lot lot, Verdict verdict) implements Fact {}

  /**
   * A note that holds no more.
   *
   * @param bitter that of bitter risk, else that of disease
   */
  record Lifted(At at, Lot lot, boolean bitter, String why) implements Fact {}

  record Stored(At at, Subject subject, String where) implements Fact {}

  record LookedAt(At at, Subject subject, String state, Figures figures) implements Fact {}

  record Dropped(At at, Line line, String why) implements Fact {}

  record Note(At at, Optional<Subject> subject, String text) implements Fact {}

  record Photo(At at, Optional<Subject> subject, String path) implements Fact {}

  /** What plants of a doubtful lot proved to be. */
  enum Verdict {
    TRUE_TO_NAME,
    A_CROSS,
    A_SELF,
    MIXED
  }
}
