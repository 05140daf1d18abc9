package slipday.garden.record;

import java.time.LocalDate;
import slipday.measure.Basis;
import slipday.measure.Reason;
import slipday.source.Span;

/** The day of a fact, and its line. */
public record At(LocalDate date, Span span) {
  /** A reason that quotes the line. */
  public Reason reason() {
    String line = span.text().strip().replaceAll("\\s+", " ");
    return new Reason(line, Basis.RECORD, java.util.Optional.of(span), java.util.List.of());
  }
}
