package slipday.measure;

/**
 * From a low to a high, both in the base unit of what they measure, low ≤ high. A single figure is
 * a range of no width.
 */
public record Range(double low, double high) {
  public Range {
    if (!(low <= high)) {
      throw new IllegalArgumentException(low + " to " + high + " runs backwards");
    }
  }

  public static Range of(double figure) {
    return new Range(figure, figure);
  }

  public double middle() {
    return (low + high) / 2;
  }

  public boolean isSingle() {
    return low == high;
  }

  /** The point a share of the way from low (0) to high (1). */
  public double at(double share) {
    return low + (high - low) * share;
  }

  public Range times(double factor) {
    return factor >= 0
        ? new Range(low * factor, high * factor)
        : new Range(high * factor, low * factor);
  }

  @Override
  public String toString() {
    return isSingle() ? Quantity.plain(low) : Quantity.plain(low) + " to " + Quantity.plain(high);
  }
}
