package slipday.season;

import java.util.Optional;
import slipday.garden.Cross;
import slipday.measure.Reason;

/**
 * How well the parents of a cross bloom together: mornings on which the pollen parent sheds and the
 * seed parent has flowers that still ripen.
 *
 * @param chance that there is at least one such morning
 * @param moved days a parent was put off so that they meet; 0 where none was
 * @param movedPlanting which one was put off
 */
public record Nicking(
    Cross cross,
    double chance,
    Exposure.Mornings mornings,
    int moved,
    Optional<String> movedPlanting,
    Reason reason) {}
