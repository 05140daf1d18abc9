package slipday.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class QuantityProperties {
  /** Beside the JDK's own formatter, but for the minus before nothing. */
  @Property
  void fixedPlacesAreThoseOfTheFormatter(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double number,
      @ForAll @IntRange(max = 4) int places) {
    String formatted = String.format(Locale.ROOT, "%." + places + "f", number);
    String wanted = formatted.matches("-0\\.?0*") ? formatted.substring(1) : formatted;
    assertThat(Quantity.fixed(number, places)).isEqualTo(wanted);
  }

  @Example
  void halvesGoUpAndNothingHasNoMinus() {
    assertThat(Quantity.fixed(0.125, 2)).isEqualTo("0.13");
    assertThat(Quantity.fixed(-0.0, 2)).isEqualTo("0.00");
    assertThat(Quantity.fixed(-0.004, 2)).isEqualTo("0.00");
    assertThat(Quantity.fixed(12, 1)).isEqualTo("12.0");
  }
}
