package slipday.season;

import java.time.LocalDate;
import java.util.Optional;
import slipday.garden.Cross;
import slipday.garden.Planting;
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
 * @param set fruits of them that took, by the record
 * @param fromPlants the least number of plants they should come from, where told
 * @param take the share that takes, mean of what is known
 * @param flowersLikely flowers after which the fruits still wanted are as likely there as not
 * @param flowersSure flowers after which they are there in 19 of 20 cases; empty where more than
 *     9,999
 * @param flowersThere flowers that open in the window on all plants, usual figure
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
    int set,
    Optional<Integer> fromPlants,
    Reasoned<Double> take,
    int flowersLikely,
    Optional<Integer> flowersSure,
    int flowersThere,
    int canCarry,
    double chance,
    Optional<LocalDate> from,
    Optional<LocalDate> until,
    int mornings,
    int aMorning,
    String stop,
    Reason reason) {

  /** Fruits still wanted. */
  public int left() {
    return Math.max(0, wanted - set);
  }
}
