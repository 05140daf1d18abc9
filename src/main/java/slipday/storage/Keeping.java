package slipday.storage;

import java.util.Optional;
import slipday.garden.Line;

/**
 * How fruit of a line keeps, by all that was laid in store and looked at, of every season.
 *
 * @param fruits looked at
 * @param spoilt of them, that were soft, rotten or shrivelled
 * @param soundDays the longest that one was seen sound, in days from picking
 * @param spoiltDays the soonest that one was seen spoilt
 * @param best the days from picking at which its flavour was scored highest; empty unless it was
 *     scored at two ages or more
 * @param bestFlavour the mean of the scores then, a share of the points to be had
 * @param lostAMonth the mean share of its weight that it lost in 30 days, of fruits that grew no
 *     heavier
 * @param gained fruits weighed heavier later than first, which tell nothing of drying
 */
public record Keeping(
    Line line,
    int fruits,
    int spoilt,
    Optional<Integer> soundDays,
    Optional<Integer> spoiltDays,
    Optional<Integer> best,
    Optional<Double> bestFlavour,
    Optional<Double> lostAMonth,
    int gained) {}
