package slipday.garden.record;

import java.time.LocalDate;
import org.apache.commons.lang3.StringUtils;
import slipday.measure.Basis;
import slipday.measure.Reason;
import slipday.source.Span;

/** The day of a fact, and its line. */
public record At(LocalDate date, Span span) {
  /** A reason that quotes the line. */
  public Reason reason() {
    String line = StringUtils.normalizeSpace(span.text());
    return new Reason(line, Basis.RECORD, java.util.Optional.of(span), java.util.List.of());
  }
}
