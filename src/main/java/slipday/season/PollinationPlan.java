package slipday.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import slipday.garden.Cross;
import slipday.garden.Planting;
import slipday.garden.record.FruitStory;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * The hand pollination of one planting, or of one cross (on its seed parent).
 *
 * @param subject the planting or the cross, by name
 * @param seedParent whose flowers are pollinated
 * @param pollenParent whose males are used; the same planting for selfs and sibs
 * @param emasculate whether the flower's own anthers must come off the evening before
 * @param wanted fruits wanted
 * @param pollinated what was pollinated of it this season by the record
 * @param fromPlants the least number of plants they should come from, where told
 * @param take the share that takes, mean of what is known
 * @param flowersLikely more flowers after which the fruits still wanted are as likely there as not;
 *     {@link #MOST_FLOWERS} where so many do not do
 * @param flowersSure more flowers after which they are there in 19 of 20 cases; empty where more
 *     than 9,999
 * @param flowersOpen flowers that open in the window on all plants, usual figure
 * @param flowersThere those of them that the hands there are can pollinate
 * @param canCarry fruits that the plants can carry
 * @param chance that the flowers and mornings there are give the fruits wanted
 * @param from the usual first morning
 * @param until the usual last morning that still ripens
 * @param aMorning flowers to do on a morning to be sure in the window
 * @param stop the stop rule, a sentence
 */
public record PollinationPlan(
    String subject,
    Planting seedParent,
    Planting pollenParent,
    Optional<Cross> cross,
    boolean selfing,
    boolean emasculate,
    int wanted,
    List<FruitStory> pollinated,
    Optional<Integer> fromPlants,
    Reasoned<Double> take,
    int flowersLikely,
    Optional<Integer> flowersSure,
    int flowersOpen,
    int flowersThere,
    int canCarry,
    double chance,
    Optional<LocalDate> from,
    Optional<LocalDate> until,
    int mornings,
    int aMorning,
    String stop,
    Reason reason) {

  /** No more flowers than these are reckoned with. */
  public static final int MOST_FLOWERS = 9_999;

  private static final double NEXT_TO_NOTHING = 0.05;

  /** Whether even so many flowers as nobody pollinates leave the fruits unlikely. */
  public boolean isHopeless() {
    return flowersLikely >= MOST_FLOWERS;
  }

  /** Whether more flowers open than there are hands for. */
  public boolean handsAreShort() {
    return flowersThere < flowersOpen;
  }

  public PollinationPlan {
    pollinated = List.copyOf(pollinated);
  }

  /** Fruits of it that set, by the record. */
  public int set() {
    return set(pollinated);
  }

  /** Flowers of it of which nobody knows yet whether they took. */
  public int waiting() {
    return waiting(pollinated);
  }

  /** Fruits still wanted of flowers that are not known to have set. */
  public int left() {
    return left(wanted, fromPlants, pollinated);
  }

  /** Fruits still wanted when those flowers that wait take as often as is usual. */
  public double stillWanted() {
    return Math.max(0, left() - waiting() * take.value());
  }

  /** The same in whole fruits. */
  public int stillWantedWhole() {
    return (int) Math.ceil(stillWanted() - NEXT_TO_NOTHING);
  }

  /**
   * Flowers to do on a morning, to be sure of the fruits still wanted with those that are left; 0
   * outside the window, and where enough are set or wait.
   */
  public int flowersOn(LocalDate morning) {
    if (from.isEmpty() || until.isEmpty() || left() == 0 || canCarry == 0) {
      return 0;
    }
    if (morning.isBefore(from.get()) || morning.isAfter(until.get())) {
      return 0;
    }
    double whole = ChronoUnit.DAYS.between(from.get(), until.get()) + 1;
    double share = (ChronoUnit.DAYS.between(morning, until.get()) + 1) / whole;
    double morningsLeft = Math.max(1, mornings * share);
    double goal =
        Math.min(flowersSure.orElse(Integer.MAX_VALUE), Math.max(1, flowersThere * share));
    return (int) Math.ceil(goal / morningsLeft - 1e-9);
  }

  static int set(List<FruitStory> pollinated) {
    return (int) pollinated.stream().filter(FruitStory::counts).count();
  }

  static int waiting(List<FruitStory> pollinated) {
    return (int) pollinated.stream().filter(s -> s.state() == FruitStory.State.PENDING).count();
  }

  /** As many as are wanted, and from as many plants. */
  static int left(int wanted, Optional<Integer> fromPlants, List<FruitStory> pollinated) {
    long plants =
        pollinated.stream()
            .filter(FruitStory::counts)
            .map(s -> s.fruit().seedParent().plant().map(String::valueOf).orElse(s.fruit().tag()))
            .distinct()
            .count();
    int fruits = Math.max(0, wanted - set(pollinated));
    return fromPlants.map(n -> Math.max(fruits, n - (int) plants)).orElse(fruits);
  }
}
