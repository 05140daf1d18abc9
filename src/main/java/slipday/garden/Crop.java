package slipday.garden;

import java.util.List;
import slipday.source.Span;

/** A crop or market type of a species. */
public record Crop(String name, List<OtherName> otherNames, Species species, Facts facts, Span span)
    implements Named {
  public Crop {
    otherNames = List.copyOf(otherNames);
  }

  /** Whether its fruit, or fruit out of its pollen, is a danger. */
  public boolean isBitter() {
    return facts.valueOr(CropFacts.BITTER, false);
  }

  @Override
  public String toString() {
    return name;
  }
}
