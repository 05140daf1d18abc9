package slipday.garden.record;

import java.util.List;
import java.util.Optional;
import slipday.language.Value;
import slipday.measure.Unit;
import slipday.source.Span;

/**
 * What was weighed, measured and seen of a fruit or plant.
 *
 * @param kilograms net of the container
 * @param fruits how many were weighed together, 1 where nothing is said
 * @param mass as it was written, with the container where one is taken off
 * @param sweetness as it was written
 */
public record Figures(
    Optional<Double> kilograms,
    Optional<Double> brix,
    int fruits,
    List<String> faults,
    List<Trait> traits,
    Optional<Value.Amount> mass,
    Optional<Value.Amount> sweetness) {

  /**
   * A figure for a trait.
   *
   * @param value in the base unit where it has one
   * @param outOf how many points there were to be had, for a score
   */
  public record Trait(
      String name, double value, Optional<Unit> unit, Optional<Double> outOf, Span span) {}
}
