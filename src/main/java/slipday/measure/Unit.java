package slipday.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A unit a gardener may write. The first word is the canonical one.
 *
 * <p>Factors to the SI-based unit of the dimension: international foot and avoirdupois pound (exact
 * by definition, 1959).
 */
public enum Unit {
  METRE(Dimension.LENGTH, 1, "m", "metre", "metres", "meter", "meters"),
  CENTIMETRE(Dimension.LENGTH, 0.01, "cm"),
  KILOMETRE(Dimension.LENGTH, 1000, "km"),
  FOOT(Dimension.LENGTH, 0.3048, "ft", "foot", "feet"),
  INCH(Dimension.LENGTH, 0.0254, "inch", "inches"),
  MILE(Dimension.LENGTH, 1609.344, "mile", "miles"),
  SQUARE_METRE(Dimension.AREA, 1, "sqm"),
  SQUARE_FOOT(Dimension.AREA, 0.09290304, "sqft"),
  KILOGRAM(Dimension.MASS, 1, "kg"),
  GRAM(Dimension.MASS, 0.001, "g"),
  POUND(Dimension.MASS, 0.45359237, "lb", "lbs"),
  OUNCE(Dimension.MASS, 0.028349523125, "oz"),
  CELSIUS(Dimension.TEMPERATURE, 1, "C", "°C"),
  FAHRENHEIT(Dimension.TEMPERATURE, 5.0 / 9, "F", "°F"),
  DAY(Dimension.TIME, 1, "days", "day"),
  WEEK(Dimension.TIME, 7, "weeks", "week"),
  CELSIUS_DAY(Dimension.DEGREE_DAYS, 1, "C-days"),
  FAHRENHEIT_DAY(Dimension.DEGREE_DAYS, 5.0 / 9, "F-days"),
  BRIX(Dimension.SWEETNESS, 1, "brix");

  private static final Map<String, Unit> BY_WORD =
      Arrays.stream(values())
          .flatMap(u -> u.words.stream().map(w -> Map.entry(w, u)))
          .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));

  private final Dimension dimension;
  private final double factor;
  private final List<String> words;

  Unit(Dimension dimension, double factor, String... words) {
    this.dimension = dimension;
    this.factor = factor;
    this.words = List.of(words);
  }

  /** The unit a word names. Units keep their case: C and F are not c and f. */
  public static Optional<Unit> named(String word) {
    return Optional.ofNullable(BY_WORD.get(word));
  }

  /** Every word of every unit of a dimension. */
  public static List<String> words(Dimension dimension) {
    return Arrays.stream(values())
        .filter(u -> u.dimension == dimension)
        .map((Function<Unit, List<String>>) u -> u.words)
        .flatMap(List::stream)
        .toList();
  }

  public static Stream<String> allWords() {
    return BY_WORD.keySet().stream();
  }

  public Dimension dimension() {
    return dimension;
  }

  public String word() {
    return words.get(0);
  }

  /**
   * A value in this unit, in the base unit of its dimension (m, m², kg, °C, days, °C-days). A
   * temperature is a point on the scale; for a difference use {@link #difference}.
   */
  public double toBase(double value) {
    return this == FAHRENHEIT ? (value - 32) * factor : value * factor;
  }

  /** A difference of temperatures, or any other quantity, in the base unit. */
  public double difference(double value) {
    return value * factor;
  }

  /** The inverse of {@link #toBase}. */
  public double fromBase(double base) {
    return this == FAHRENHEIT ? base / factor + 32 : base / factor;
  }
}
