package slipday.season;

/** What the dates of a planting were worked out with. */
public enum Model {
  /** Walked through each year of a weather record. */
  WEATHER_YEARS("weather years"),
  /** Calendar days from crop facts and the gardener's own frost dates. */
  CALENDAR_DAYS("calendar days");

  private final String words;

  Model(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
