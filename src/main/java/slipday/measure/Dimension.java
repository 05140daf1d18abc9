package slipday.measure;

/** What a unit measures. Quantities of different dimensions never mix. */
public enum Dimension {
  LENGTH("a length", "m, cm, ft or inch"),
  AREA("an area", "sqm or sqft"),
  MASS("a weight", "kg, g, lb or oz"),
  TEMPERATURE("a temperature", "C or F"),
  TIME("a time", "days or weeks"),
  DEGREE_DAYS("a heat sum", "C-days or F-days"),
  SHARE("a share", "%, `1 in 10` or `44 of 50`"),
  SWEETNESS("a sweetness", "brix");

  private final String name;
  private final String fitting;

  Dimension(String name, String fitting) {
    this.name = name;
    this.fitting = fitting;
  }

  /** With its article: "a length". */
  public String withArticle() {
    return name;
  }

  /** The units that fit, as a message lists them. */
  public String fittingUnits() {
    return fitting;
  }
}
