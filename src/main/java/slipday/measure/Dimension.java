package slipday.measure;

import java.util.List;

/** What a unit measures. Quantities of different dimensions never mix. */
public enum Dimension {
  LENGTH("a length", "m", "cm", "ft", "inch"),
  AREA("an area", "sqm", "sqft"),
  MASS("a weight", "kg", "g", "lb", "oz"),
  TEMPERATURE("a temperature", "C", "F"),
  TIME("a time", "days", "weeks"),
  DEGREE_DAYS("a heat sum", "C-days", "F-days"),
  SHARE("a share", "%", "`1 in 10`", "`44 of 50`"),
  SWEETNESS("a sweetness", "brix");

  private final String name;
  private final List<String> fitting;

  Dimension(String name, String... fitting) {
    this.name = name;
    this.fitting = List.of(fitting);
  }

  /** With its article: "a length". */
  public String withArticle() {
    return name;
  }

  /** The units that fit, as a message lists them. */
  public String fittingUnits() {
    return Listed.either(fitting);
  }

  /** The words of the usual units; a share has none, for a figure alone does not say of what. */
  public List<String> usualUnits() {
    return fitting.stream().filter(word -> Unit.named(word).isPresent()).toList();
  }
}
