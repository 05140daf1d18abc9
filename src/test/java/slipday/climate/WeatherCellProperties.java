package slipday.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class WeatherCellProperties {
  /** What is read by hand is, to the last bit, what Java's own reader of numbers makes of it. */
  @Property
  void aDecimalIsTheDoubleNearestToIt(
      @ForAll @LongRange(min = -999_999_999_999L, max = 999_999_999_999L) long whole,
      @ForAll @IntRange(max = 12) int places) {
    String text = BigDecimal.valueOf(whole, places).toPlainString();
    if (text.chars().filter(Character::isDigit).count() <= 12) {
      double read = WeatherCell.number("x" + text + ",", 1, text.length() + 1, false);
      assertThat(read).isEqualTo(Double.parseDouble(text));
    }
  }

  @Example
  void signsAndPointsMayStandAlone() {
    assertThat(WeatherCell.number("+5.", false)).isEqualTo(5);
    assertThat(WeatherCell.number("\u2212,5", true)).isEqualTo(-0.5);
    assertThat(WeatherCell.number("-0", false)).isEqualTo(-0.0);
  }

  @Example
  void anythingElseIsMissingOrNoNumber() {
    for (String missing : new String[] {"", "-", "--", "NA", "-9999", "-9999.0"}) {
      assertThat(WeatherCell.number(missing, false)).as(missing).isNaN();
    }
    for (String wrong : new String[] {"1,5", "1.5.2", "5 C", "1e3", "--5", ".", "1234567890123"}) {
      double read = WeatherCell.number(wrong, false);
      assertThat(read).as(wrong).isEqualTo(WeatherCell.NOT_A_NUMBER);
    }
  }
}
