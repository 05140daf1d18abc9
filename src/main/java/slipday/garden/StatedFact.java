package slipday.garden;

import slipday.language.BoundClause;
import slipday.measure.Basis;
import slipday.measure.Reason;
import slipday.source.Span;

/**
 * One fact as it stands in a file.
 *
 * @param owner who states it: {@code crop muskmelon}
 * @param source the publication, {@code common practice, no source}, or {@code the plan}
 * @param fromMemory whether the publication was cited from memory
 */
public record StatedFact(BoundClause clause, String owner, String source, boolean fromMemory) {
  /**
   * The fact in its own words, without its source: {@code ripe 35 to 45 days after pollination}.
   */
  public String words() {
    String text = clause.line().span().plainText();
    return clause.says().map(s -> text.substring(0, text.lastIndexOf(',')).strip()).orElse(text);
  }

  public Span span() {
    return clause.span();
  }

  public String cited() {
    return fromMemory ? source + " (from memory)" : source;
  }

  public Reason reason() {
    boolean builtIn = span().source().isBuiltIn();
    Basis basis = builtIn ? Basis.CROP_FACT : Basis.PLAN;
    return Reason.worded(
        () -> owner + ": " + words() + (builtIn ? " — " + cited() : ""), basis, span());
  }
}
