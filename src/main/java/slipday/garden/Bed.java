package slipday.garden;

import java.util.List;
import java.util.Optional;
import slipday.measure.Reasoned;
import slipday.source.Span;

/** A bed. Lengths in m; the corner is its south-west one, from the site's. */
public record Bed(
    String name,
    String title,
    Optional<Size> size,
    Optional<Corner> corner,
    double trail,
    double colder,
    List<Reasoned<Grew>> grew,
    Places places)
    implements Named {

  /** West to east, south to north; m. */
  public record Size(double length, double width) {
    public double area() {
      return length * width;
    }
  }

  /** East and north of the site's south-west corner; m. */
  public record Corner(double east, double north) {}

  /** What stood here in an earlier year. */
  public record Grew(Crop crop, int year) {}

  @Override
  public Span span() {
    return places.block().span();
  }

  /**
   * The distance in m between the nearest edges of two beds; empty where either's size or corner is
   * not told.
   */
  public Optional<Double> distanceTo(Bed other) {
    if (name.equals(other.name)) {
      return Optional.of(0.0);
    }
    if (size.isEmpty() || corner.isEmpty() || other.size.isEmpty() || other.corner.isEmpty()) {
      return Optional.empty();
    }
    double east =
        gap(
            corner.get().east(),
            size.get().length(),
            other.corner.get().east(),
            other.size.get().length());
    double north =
        gap(
            corner.get().north(),
            size.get().width(),
            other.corner.get().north(),
            other.size.get().width());
    return Optional.of(Math.hypot(east, north));
  }

  /** How far apart two stretches lie; 0 where they touch or overlap. */
  private static double gap(double a, double lengthA, double b, double lengthB) {
    return Math.max(0, Math.max(b - (a + lengthA), a - (b + lengthB)));
  }

  /** Whether the two beds lie on the same ground. */
  public boolean overlaps(Bed other) {
    if (size.isEmpty() || corner.isEmpty() || other.size.isEmpty() || other.corner.isEmpty()) {
      return false;
    }
    return meets(
            corner.get().east(),
            size.get().length(),
            other.corner.get().east(),
            other.size.get().length())
        && meets(
            corner.get().north(),
            size.get().width(),
            other.corner.get().north(),
            other.size.get().width());
  }

  private static boolean meets(double a, double lengthA, double b, double lengthB) {
    double hair = 1e-9;
    return a + lengthA > b + hair && b + lengthB > a + hair;
  }
}
