package slipday.garden;

import java.util.List;
import java.util.Optional;
import slipday.garden.record.Bitterness;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.source.Span;

/**
 * Seed in hand.
 *
 * @param generation its label; empty where it has none
 * @param bitterLifted why seed of unknown father bears no bitter risk
 * @param diseases that were seen on the plants it is from
 * @param isolated what kept all other pollen from the open flowers it is of; empty where nothing
 *     did, or nobody knows
 * @param byDistance whether it, or seed that it comes of, was kept from bitter kin by distance
 *     alone as far as the plan told of any, or by what its label does not say
 * @param inbred of its plants where their ancestors are not recorded, 0 to 1; empty where unknown
 */
public record Lot(
    String name,
    Line line,
    Optional<Reasoned<String>> generation,
    Optional<Reasoned<Double>> inbred,
    Optional<Reasoned<Integer>> seeds,
    Optional<Reasoned<Integer>> harvested,
    Optional<Reasoned<GerminationTest>> tested,
    Identity identity,
    List<Reasoned<Crop>> exposedTo,
    Optional<Reasoned<String>> bitterLifted,
    List<Reasoned<String>> diseases,
    Optional<Reason> isolated,
    boolean byDistance,
    Optional<Reasoned<Integer>> keepBack,
    Places places)
    implements Named {

  /** Whether the seed is what its label says. */
  public enum Identity {
    KNOWN,
    DOUBTFUL,
    UNKNOWN
  }

  /** So many seedlings of so many seeds, and the year of the test. */
  public record GerminationTest(int seedlings, int of, Optional<Integer> year) {}

  @Override
  public Span span() {
    return places.block().span();
  }

  /**
   * Whether its seed may grow bitter, poisonous fruit: a parent of it tasted bitter, it was exposed
   * to bitter kin, or nobody knows its father, or knows it by distance alone, and its species has
   * bitter kin.
   */
  public boolean bitterRisk(Garden garden) {
    return !exposedTo.isEmpty()
        || bitterParent(garden).isPresent()
        || ((identity == Identity.UNKNOWN || byDistance)
            && bitterLifted.isEmpty()
            && garden.hasBitterKin(line.crop().species()));
  }

  /** What tasted bitter of those its seed comes of: it is to be destroyed. */
  public Optional<Bitterness.Told> bitterParent(Garden garden) {
    return Bitterness.of(garden.record()).ofSeed(this);
  }
}
