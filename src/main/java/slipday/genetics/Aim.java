package slipday.genetics;

import java.util.Optional;
import slipday.measure.Range;

/**
 * Where the figures of one trait are wanted, and what it matters that they are not there yet.
 *
 * <p>What is wanted is a stretch: from {@code low} up where the trait is to be raised, to {@code
 * high} where it is to be lowered, between the two where it is to be kept. A figure in it is worth
 * 0; outside it is worth less by its distance, so that nothing is gained by going beyond an aim
 * that other traits have to pay for. A figure on a scale of points is held on the scale.
 *
 * @param low the least that is wanted; empty where less is no fault
 * @param high the most that is wanted; empty where more is no fault
 * @param weight what one unit of distance matters, 0 or more
 * @param unit that unit: a standard deviation of the trait, or 1 for its own unit; above 0
 * @param scale the ends of a scale of points; empty for a figure that is measured
 */
public record Aim(
    Optional<Double> low,
    Optional<Double> high,
    double weight,
    double unit,
    Optional<Range> scale) {
  public Aim {
    boolean backwards = low.isPresent() && high.isPresent() && low.get() > high.get();
    if (backwards || !(weight >= 0) || !(unit > 0) || Double.isInfinite(unit)) {
      throw new IllegalArgumentException(
          low + " to " + high + ", weight " + weight + ", unit " + unit);
    }
  }

  /** What a figure is worth: 0 where it is wanted, below 0 elsewhere. */
  public double worth(double figure) {
    return -weight * distance(figure) / unit;
  }

  /** How far a figure is from where it is wanted, in its own unit; never negative. */
  public double distance(double figure) {
    double held = held(figure);
    double under = low.map(l -> l - held).orElse(0.0);
    double over = high.map(h -> held - h).orElse(0.0);
    return Math.max(0, Math.max(under, over));
  }

  public boolean isMetBy(double figure) {
    return distance(figure) == 0;
  }

  /** The figure, or the end of its scale where it lies beyond. */
  public double held(double figure) {
    return scale.map(s -> Math.max(s.low(), Math.min(s.high(), figure))).orElse(figure);
  }

  /** Whether the scale reaches into what is wanted; an aim off its scale is never met. */
  public boolean isOnScale() {
    return scale
        .map(
            s ->
                low.map(l -> l <= s.high()).orElse(true)
                    && high.map(h -> h >= s.low()).orElse(true))
        .orElse(true);
  }

  /**
   * Whether a scale has run out: so many of the figures stand on its wanted end that it can't tell
   * the best apart any more.
   *
   * @param onTheEnd how many stand there
   * @param of how many there are
   */
  public boolean isWornOut(int onTheEnd, int of) {
    return scale.isPresent() && of > 0 && onTheEnd * 2 >= of;
  }
}
