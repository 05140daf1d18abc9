package slipday.climate;

/** The unit a weather file's temperatures are written in. */
public enum TemperatureUnit {
  CELSIUS("C"),
  FAHRENHEIT("F"),
  /** Whole tenths of a degree Celsius, as GHCN-Daily has them. */
  TENTHS_OF_CELSIUS("tenths C");

  private final String word;

  TemperatureUnit(String word) {
    this.word = word;
  }

  /** As a column name states it. */
  public String word() {
    return word;
  }

  public double toCelsius(double value) {
    return switch (this) {
      case CELSIUS -> value;
      case FAHRENHEIT -> (value - 32) * 5 / 9;
      case TENTHS_OF_CELSIUS -> value / 10;
    };
  }
}
