package slipday.choice;

import java.util.Optional;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.source.Span;

/**
 * A figure of the record for one trait of one plant.
 *
 * @param plant one plant
 * @param fruit the marked fruit it is of; empty for fruit for the kitchen and for the whole plant
 * @param value in the trait's unit; the mean where several were weighed together
 * @param fruits how many it is of
 */
public record Observed(
    Trait trait, Plants plant, Optional<Fruit> fruit, double value, int fruits, Span span) {}
