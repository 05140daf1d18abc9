package slipday.measure;

/**
 * The units a gardener is answered in. Figures are reckoned in m, kg and °C throughout, and read
 * out in these.
 *
 * @param fahrenheit or else Celsius
 * @param feet with inches, or else m and cm
 * @param pounds with ounces, or else kg and g
 */
public record Units(boolean fahrenheit, boolean feet, boolean pounds) {
  public static final Units METRIC = new Units(false, false, false);

  private static final double SMALL_LENGTH = 2;
  private static final double OUNCES = 16;

  /** A temperature: {@code 12.5 °C}, {@code 54.5 °F}. */
  public String temperature(double celsius) {
    return degrees(celsius) + " " + degree();
  }

  /** The same without its unit, to a tenth. */
  public String degrees(double celsius) {
    return tenth(fahrenheit ? Unit.FAHRENHEIT.fromBase(celsius) : celsius);
  }

  /** A temperature as a plan would have it: {@code 12.5 C}, {@code 54.5 F}. */
  public String written(double celsius) {
    return degrees(celsius) + (fahrenheit ? " F" : " C");
  }

  /** To whole degrees, without the unit. */
  public long wholeDegrees(double celsius) {
    return Math.round(fahrenheit ? Unit.FAHRENHEIT.fromBase(celsius) : celsius);
  }

  /** How much warmer or colder, as a plan would have it: {@code 3 C}, {@code 5.4 F}. */
  public String writtenDifference(double celsius) {
    return tenth(inDegrees(celsius)) + (fahrenheit ? " F" : " C");
  }

  /** A temperature in both scales, the gardener's own first: {@code 20 °C (68 °F)}. */
  public String inBothScales(double celsius) {
    String metric = tenth(celsius) + " °C";
    String other = Math.round(Unit.FAHRENHEIT.fromBase(celsius)) + " °F";
    return fahrenheit ? other + " (" + metric + ")" : metric + " (" + other + ")";
  }

  /** How much warmer or colder: {@code 1.5 °C}, {@code 2.7 °F}. */
  public String difference(double celsius) {
    return tenth(inDegrees(celsius)) + " " + degree();
  }

  /** A difference in the degrees of the scale. */
  public double inDegrees(double celsius) {
    return fahrenheit ? celsius / Unit.FAHRENHEIT.difference(1) : celsius;
  }

  /** {@code °C} or {@code °F}. */
  public String degree() {
    return fahrenheit ? "°F" : "°C";
  }

  /** A heat sum in the unit of {@link #heatUnit}. */
  public double heat(double celsiusDays) {
    return (fahrenheit ? Unit.FAHRENHEIT_DAY : Unit.CELSIUS_DAY).fromBase(celsiusDays);
  }

  /** {@code C-days} or {@code F-days}. */
  public String heatUnit() {
    return (fahrenheit ? Unit.FAHRENHEIT_DAY : Unit.CELSIUS_DAY).word();
  }

  /** A distance, whole from ten up: {@code 140 m}, {@code 5.5 ft}. */
  public String distance(double metres) {
    double figure = feet ? Unit.FOOT.fromBase(metres) : metres;
    return (figure >= 10 ? Quantity.plain(Math.rint(figure)) : tenth(figure))
        + (feet ? " ft" : " m");
  }

  /** A length to be measured out: cm below two metres, inches below two feet. */
  public String length(double metres) {
    double figure = feet ? Unit.FOOT.fromBase(metres) : metres;
    if (figure >= SMALL_LENGTH) {
      return Quantity.plain(Math.rint(figure * 100) / 100) + (feet ? " ft" : " m");
    }
    return feet
        ? tenth(Unit.INCH.fromBase(metres)) + " inch"
        : Math.round(Unit.CENTIMETRE.fromBase(metres)) + " cm";
  }

  /** A distance in a drawing, to a tenth: {@code 0.6 m}. */
  public String gap(double metres) {
    return tenth(feet ? Unit.FOOT.fromBase(metres) : metres) + (feet ? " ft" : " m");
  }

  /** A distance to whole metres or feet. */
  public String wholeDistance(double metres) {
    return Math.round(feet ? Unit.FOOT.fromBase(metres) : metres) + (feet ? " ft" : " m");
  }

  /** An area, as a plan would have it: {@code 2.3 sqm}, {@code 24.8 sqft}. */
  public String area(double squareMetres) {
    return feet
        ? tenth(Unit.SQUARE_FOOT.fromBase(squareMetres)) + " sqft"
        : tenth(squareMetres) + " sqm";
  }

  /** A weight: {@code 1.45 kg}, {@code 250 g}, {@code 3 lb 3 oz}. */
  public String mass(double kilograms) {
    if (pounds) {
      return poundsAndOunces(kilograms);
    }
    return kilograms < 1
        ? tenth(Unit.GRAM.fromBase(kilograms)) + " g"
        : Quantity.plain(Math.rint(kilograms * 100) / 100) + " kg";
  }

  private static String poundsAndOunces(double kilograms) {
    double ounces = Unit.OUNCE.fromBase(kilograms);
    if (ounces < OUNCES) {
      return tenth(ounces) + " oz";
    }
    long whole = Math.round(ounces);
    long rest = whole % (long) OUNCES;
    return whole / (long) OUNCES + " lb" + (rest == 0 ? "" : " " + rest + " oz");
  }

  /** From a low to a high in the one unit, as {@code 1 kg to 3 kg}. */
  public String masses(Range kilograms) {
    return kilograms.isSingle()
        ? mass(kilograms.low())
        : mass(kilograms.low()) + " to " + mass(kilograms.high());
  }

  private static String tenth(double figure) {
    return Quantity.plain(Math.rint(figure * 10) / 10);
  }
}
