package slipday.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A number in the unit it was written in. */
public record Quantity(double amount, Unit unit) implements Comparable<Quantity> {
  /** In the base unit of the dimension: m, m², kg, °C, days, °C-days. */
  public double base() {
    return unit.toBase(amount);
  }

  /** Read as a difference: {@code 3 F} warmer is 1.67 °C warmer. */
  public double difference() {
    return unit.difference(amount);
  }

  @Override
  public int compareTo(Quantity other) {
    if (unit.dimension() != other.unit.dimension()) {
      throw new IllegalArgumentException(this + " and " + other + " can't be compared");
    }
    return Double.compare(base(), other.base());
  }

  /** A number as a person writes it: no exponent, no trailing zeros, at most four decimals. */
  public static String plain(double number) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(4, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A number with so many decimals in any case, and no minus before nothing. */
  public static String fixed(double number, int places) {
    return BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_UP).toPlainString();
  }

  @Override
  public String toString() {
    return plain(amount) + " " + unit.word();
  }
}
