package slipday.climate;

import slipday.measure.Quantity;

/**
 * What a heat sum is of. Sums of two kinds are different things, like metres and kilograms.
 *
 * @param base °C
 * @param limit °C; +∞ where there is none
 */
public record DegreeDayKind<S extends HeatSpan>(
    S span, DegreeDayMethod method, double base, double limit) {
  public DegreeDayKind {
    if (!(base < limit)) {
      throw new IllegalArgumentException("base " + base + " is not below limit " + limit);
    }
  }

  public DegreeDayTotal<S> total(double celsiusDays) {
    return new DegreeDayTotal<>(celsiusDays, this);
  }

  /** The sum over some slots of a season, as a total of this kind. */
  public DegreeDayTotal<S> over(double[] lows, double[] highs, int from, int to) {
    return total(DegreeDays.sum(method, lows, highs, from, to, base, limit));
  }

  /** {@code base 10 °C, limit 30 °C, daily average, from emergence to first flower}. */
  public String describe() {
    String cap = Double.isInfinite(limit) ? "" : ", limit " + Quantity.plain(limit) + " °C";
    return "base "
        + Quantity.plain(base)
        + " °C"
        + cap
        + ", "
        + method.words()
        + ", from "
        + span.start()
        + " to "
        + span.end();
  }
}
