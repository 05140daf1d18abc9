package slipday.climate;

import slipday.measure.Quantity;

/**
 * A heat sum in °C-days together with what it is of. Two sums of one span but of different base,
 * limit or method are refused when the program runs; of different spans, when it is compiled.
 */
public record DegreeDayTotal<S extends HeatSpan>(double celsiusDays, DegreeDayKind<S> kind)
    implements Comparable<DegreeDayTotal<S>> {

  public DegreeDayTotal<S> plus(DegreeDayTotal<S> other) {
    requireSameKind(other);
    return new DegreeDayTotal<>(celsiusDays + other.celsiusDays, kind);
  }

  public DegreeDayTotal<S> minus(DegreeDayTotal<S> other) {
    requireSameKind(other);
    return new DegreeDayTotal<>(celsiusDays - other.celsiusDays, kind);
  }

  public DegreeDayTotal<S> times(double factor) {
    return new DegreeDayTotal<>(celsiusDays * factor, kind);
  }

  @Override
  public int compareTo(DegreeDayTotal<S> other) {
    requireSameKind(other);
    return Double.compare(celsiusDays, other.celsiusDays);
  }

  private void requireSameKind(DegreeDayTotal<S> other) {
    if (!kind.equals(other.kind)) {
      throw new IllegalArgumentException(
          "a heat sum of " + other.kind.describe() + " is not one of " + kind.describe());
    }
  }

  /** {@code 540 C-days (base 10 °C, …)}. */
  public String describe() {
    return Quantity.plain(celsiusDays) + " C-days (" + kind.describe() + ")";
  }
}
