package slipday.garden;

import java.util.List;
import java.util.Optional;
import slipday.measure.Quantity;
import slipday.source.Span;

/** What a line is bred for. */
public record Goal(
    Line line, List<Aim> aims, List<String> refuse, Optional<Integer> parents, Places places)
    implements Named {

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
