package slipday.climate;

/** Which half of the earth a garden is on: it says when its season begins. */
public enum Hemisphere {
  NORTH,
  SOUTH;

  /** The equator counts as north. */
  public static Hemisphere of(double latitude) {
    return latitude < 0 ? SOUTH : NORTH;
  }
}
