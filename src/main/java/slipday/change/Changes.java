package slipday.change;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.measure.Reason;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.chore.ChoreKind;
import slipday.source.Span;

/**
 * What a change of plan or record changes in the season.
 *
 * @param things plantings, crosses and lots that came or went
 * @param dates that moved, in the order of plantings and events
 * @param figures counts that changed
 * @param pairs whose pollen newly reaches whose kept seed, or no longer does, or more or less often
 * @param chores by kind and subject, where their number or days changed
 * @param generations of lots, where they changed
 * @param recorded lines of the record that came or went
 * @param came findings that were not there before
 * @param gone findings that are there no more
 */
public record Changes(
    Side before,
    Side after,
    List<Thing> things,
    List<Moved> dates,
    List<Figure> figures,
    List<Pair> pairs,
    List<Chores> chores,
    List<Generation> generations,
    List<Recorded> recorded,
    List<Finding> came,
    List<Finding> gone) {

  /** What came or went. */
  public enum ThingKind {
    PLANTING("planting"),
    CROSS("cross"),
    LOT("lot");

    private final String words;

    ThingKind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * @param came true if it is new, false if it is there no more
   */
  public record Thing(ThingKind kind, String name, boolean came) {}

  /**
   * A date that moved.
   *
   * @param days by which its usual day moved, later positive; empty where one of the two has none
   * @param was facts under the date before that are not under it now
   * @param is facts under the date now that were not under it before
   */
  public record Moved(
      String planting,
      Event event,
      Optional<DateSpread> before,
      Optional<DateSpread> after,
      Optional<Integer> days,
      List<Reason> was,
      List<Reason> is) {}

  /** What is counted. */
  public enum Count {
    PLANTS("plants"),
    FRUITS_WANTED("fruits wanted"),
    FRUITS_SET("fruits set"),
    FLOWERS_TO_POLLINATE("flowers to pollinate"),
    SEEDS_LEFT("seeds left"),
    SEEDS_TO_SOW("seeds to sow");

    private final String words;

    Count(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * @param subject the planting, cross or lot
   * @param before empty where it was not known
   */
  public record Figure(
      String subject, Count count, Optional<Integer> before, Optional<Integer> after) {}

  /**
   * Pollen that reaches flowers whose seed is kept.
   *
   * @param before chance of being in flower together, 0 to 1; empty where it did not reach them or
   *     nobody knows
   */
  public record Pair(
      String receiver,
      String source,
      boolean reached,
      boolean reaches,
      Optional<Double> before,
      Optional<Double> after) {}

  /**
   * Chores of one kind about one subject.
   *
   * @param added how many are new
   * @param withdrawn how many fell away
   * @param first the first day of them before; empty where there were none
   */
  public record Chores(
      ChoreKind kind,
      String subject,
      int before,
      int after,
      int added,
      int withdrawn,
      int moved,
      Optional<LocalDate> first,
      Optional<LocalDate> last,
      Optional<LocalDate> newFirst,
      Optional<LocalDate> newLast) {}

  /**
   * A line of the record.
   *
   * @param says its words, with single spaces
   * @param came true if it is new, false if it is there no more
   */
  public record Recorded(String says, Span span, boolean came) {}

  /** A lot's generation. */
  public record Generation(String lot, Optional<String> before, Optional<String> after) {}

  /** Whether anything differs. */
  public boolean isEmpty() {
    return things.isEmpty()
        && dates.isEmpty()
        && figures.isEmpty()
        && pairs.isEmpty()
        && chores.isEmpty()
        && generations.isEmpty()
        && recorded.isEmpty()
        && came.isEmpty()
        && gone.isEmpty();
  }

  /** Whether a finding of this level or worse came. */
  public boolean worse(Level atLeast) {
    return came.stream().anyMatch(f -> f.level().compareTo(atLeast) >= 0);
  }
}
