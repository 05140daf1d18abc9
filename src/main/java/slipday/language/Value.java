package slipday.language;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.measure.Unit;
import slipday.source.Span;

/** What a placeholder of a shape was filled with. */
public sealed interface Value {
  Span span();

  /** A number without a unit. */
  record Plain(double number, Span span) implements Value {}

  /** A number with its unit. */
  record Amount(Quantity quantity, Span span) implements Value {}

  /**
   * From a low to a high. {@code range} is in the base unit of the dimension; {@code unit} is the
   * one it was written in, empty for plain counts.
   */
  record Between(Range range, Optional<Unit> unit, Span span) implements Value {}

  /** A share; {@code of} is the number counted where it was given as counts, 0 otherwise. */
  record Share(double share, int hits, int of, Span span) implements Value {}

  /** Points, out of how many there are to be had. */
  record Score(double points, double of, Span span) implements Value {}

  /** A range of shares. */
  record Shares(Range range, Span span) implements Value {}

  /** A name: of a line, a lot, a bed, a crop … */
  record Name(String text, Span span) implements Value {
    /** A curly apostrophe, as telephones write it, is the plain one. */
    static Name of(String written, Span span) {
      return new Name(written.replace('\u2019', '\''), span);
    }
  }

  record Text(String text, Span span) implements Value {}

  /** A day of the year, with its year where one was written. */
  record Day(MonthDay day, Optional<LocalDate> date, Span span) implements Value {}

  /** One of the phrases a clause lets one choose from. */
  record Choice(String phrase, Span span) implements Value {}

  /** A season: {@code 2026}, or {@code 2026-27} in the south. */
  record SeasonName(int year, boolean acrossNewYear, Span span) implements Value {}
}
