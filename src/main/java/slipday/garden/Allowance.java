package slipday.garden;

import java.util.List;
import java.util.Optional;
import slipday.language.Value;
import slipday.source.Span;

/** A finding accepted at one place, with the reason. */
public record Allowance(
    String rule, List<Value.Name> subjects, Optional<String> because, Places places)
    implements Named {
  @Override
  public String name() {
    return rule;
  }

  @Override
  public Span span() {
    return places.block().span();
  }
}
