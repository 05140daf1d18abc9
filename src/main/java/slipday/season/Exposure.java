package slipday.season;

import java.util.Optional;
import java.util.function.Supplier;
import slipday.garden.Planting;
import slipday.measure.Range;
import slipday.measure.Reason;

/**
 * Pollen of a source can reach the fruiting flowers of a planting: they can cross, bloom together
 * in some years, and stand nearer than the strict isolation distance (or nobody knows how near).
 *
 * @param degree 3 within a species; between species 0 to 3 as the table of the squash species has
 *     it
 * @param chance over the weather years, that they are in flower together on at least one morning;
 *     empty for a neighbour or volunteer, whose calendar nobody knows
 * @param mornings early, usual and late (10, 50, 90 %) number of mornings together; empty as above
 * @param distance m; empty where it is not told
 * @param isolation the home and the strict isolation distance of the receiver's species, m
 * @param intoSeed whether seed is kept from flowers that stand open to it: then it is a danger,
 *     else only a thing to know
 * @param because what it rests on, put together when it is read: there can be very many exposures
 *     of which nobody asks
 */
public record Exposure(
    PollenSource source,
    Planting receiver,
    Range degree,
    boolean sameSpecies,
    Optional<Double> chance,
    Optional<Mornings> mornings,
    Optional<Double> distance,
    Range isolation,
    boolean intoSeed,
    Supplier<Reason> because) {

  /** Mornings on which both are in flower. */
  public record Mornings(int few, int usual, int many) {}

  public Reason reason() {
    return because.get();
  }

  /** Nearer than even a home garden's isolation distance, or nobody knows how near. */
  public boolean near() {
    return distance.map(d -> d < isolation.low()).orElse(true);
  }
}
