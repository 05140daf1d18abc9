package slipday.garden;

import java.util.List;
import java.util.Optional;
import slipday.language.Value;
import slipday.source.Span;

/**
 * A finding accepted at one place, with the reason.
 *
 * @param stated the id of the rule, as it is written
 */
public record Allowance(
    Value.Name stated, List<Value.Name> subjects, Optional<String> because, Places places)
    implements Named {
  /** The id of the rule. */
  public String rule() {
    return stated.text();
  }

  @Override
  public String name() {
    return rule();
  }

  @Override
  public Span span() {
    return places.block().span();
  }
}
