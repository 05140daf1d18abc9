package slipday.season;

import slipday.garden.Planting;
import slipday.measure.Reason;
import slipday.source.Span;

/**
 * What became of a wish that two plantings bloom apart.
 *
 * @param honoured whether they are apart in all but the accepted share of years
 * @param chance that they are in bloom together all the same, 0 to 1
 * @param togetherMornings the usual number of mornings together that remain
 * @param moved days the asking planting was put off
 * @param lasting whether one of them flowers for weeks, so that days put off are no promise
 * @param span where it is asked
 */
public record Apart(
    Planting asking,
    Planting other,
    boolean honoured,
    double chance,
    int togetherMornings,
    int moved,
    boolean lasting,
    Span span,
    Reason reason) {}
