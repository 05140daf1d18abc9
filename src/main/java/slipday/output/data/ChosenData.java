package slipday.output.data;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.season.Condition;
import slipday.season.DateChoice;

/**
 * The day of planting out (or of sowing in place), and what bounds it.
 *
 * @param event {@code plant-out}, or {@code sow} for what is sown in place
 * @param fixed whether the plan or the record fixes it
 * @param recorded whether the record does: the day itself, or the sowing it follows from
 * @param possible whether some day meets every condition
 * @param chances at {@code date}, for each condition
 * @param mends what would make it possible, a sentence each
 */
public record ChosenData(
    String event,
    LocalDate date,
    boolean fixed,
    boolean recorded,
    boolean possible,
    Optional<LocalDate> earliest,
    Bound earlyBound,
    Optional<LocalDate> latest,
    Bound lateBound,
    List<Chance> chances,
    List<String> mends) {
  /** A condition that keeps the date from being earlier, or later. */
  public record Bound(String condition, String words) {
    static Bound of(Condition condition) {
      return new Bound(Ids.of(condition), condition.words());
    }
  }

  /** The share of years, 0 to 1, in which a condition is met. */
  public record Chance(String condition, String words, double met) {}

  static ChosenData of(DateChoice choice, boolean indoors) {
    return new ChosenData(
        indoors ? "plant-out" : "sow",
        choice.date(),
        choice.fixed(),
        choice.recorded(),
        choice.possible(),
        choice.earliest(),
        Bound.of(choice.earlyBound()),
        choice.latest(),
        Bound.of(choice.lateBound()),
        choice.chances().entrySet().stream()
            .map(e -> new Chance(Ids.of(e.getKey()), e.getKey().words(), e.getValue()))
            .toList(),
        choice.mends());
  }
}
