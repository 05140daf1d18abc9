package slipday.garden;

import java.util.List;
import java.util.Optional;
import slipday.genetics.Generation;
import slipday.measure.Quantity;
import slipday.source.Span;

/**
 * What a line is bred for.
 *
 * @param refuse faults no parent may have
 * @param correlations of breeding values
 * @param environmental correlations of what is not inherited
 * @param parents the fewest plants the next generation comes from
 */
public record Goal(
    Line line,
    List<Aim> aims,
    List<Refusal> refuse,
    Optional<Integer> parents,
    List<Inheritance> heritabilities,
    List<Correlation> correlations,
    List<Correlation> environmental,
    Weighing weighing,
    Places places)
    implements Named {

  /** What the weights of the aims are told for. */
  public enum Weighing {
    /** A standard deviation among the plants. */
    DEVIATION,
    /** A unit of the trait. */
    UNIT,
    /** Nothing: each trait is to gain in proportion to what it lacks. */
    LACKING
  }

  /**
   * A fault no parent may have.
   *
   * @param share of its fruits up to which a plant is let pass, 0 to 1; empty without such a limit
   * @param count of its fruits up to which it is; empty likewise
   */
  public record Refusal(String fault, Optional<Double> share, Optional<Integer> count, Span span) {}

  /** Of what a heritability was found. */
  public enum Unit {
    FRUIT,
    PLANT,
    PLOT
  }

  /**
   * A heritability the gardener states.
   *
   * @param share above 0 and below 1
   * @param plants how many a plot's mean is of; empty where nobody says
   * @param fruits how many a plant's mean is of; empty where nobody says
   * @param among the generation it was found in
   */
  public record Inheritance(
      String trait,
      double share,
      Unit unit,
      Optional<Integer> plants,
      Optional<Integer> fruits,
      Generation among,
      Span span) {}

  /**
   * @param value above −1 and below 1
   */
  public record Correlation(String trait, String other, double value, Span span) {}

  /** Which way a trait is wanted. */
  public enum Way {
    RAISE,
    LOWER,
    KEEP
  }

  /**
   * @param at the figure aimed at, in the unit it was written in; a bare number has no unit
   * @param to the upper end where a range is kept
   * @param weight how much it matters beside the others
   */
  public record Aim(
      String trait,
      Way way,
      Figure at,
      Optional<Figure> to,
      boolean orMore,
      double weight,
      Span span) {}

  /** A number with its unit, or without one where the trait is counted or scored. */
  public record Figure(double number, Optional<Quantity> quantity) {}

  @Override
  public String name() {
    return line.name();
  }

  @Override
  public Span span() {
    return places.block().span();
  }
}
