package slipday.garden.record;

import java.util.Map;
import java.util.function.Predicate;
import slipday.garden.Bed;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Planting;

/**
 * What a record may name, by name.
 *
 * @param spoilt names whose own declarations are mistaken, which nobody is blamed for using
 * @param spoiltLots those of them that are lots: what grew in other years is known by its lot
 */
record Ground(
    Map<String, Planting> plantings,
    Map<String, Lot> lots,
    Map<String, Line> lines,
    Map<String, Bed> beds,
    Predicate<String> spoilt,
    Predicate<String> spoiltLots) {}
