package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgTest {
  @Test
  void namesAreNeverMarkup() {
    String svg =
        new Svg()
            .open("text", "aria-label", "\"><script>")
            .text("</text><script>alert('1')</script>&amp;")
            .close()
            .toString();
    assertThat(svg)
        .isEqualTo(
            "<text aria-label=\"&quot;&gt;&lt;script&gt;\">&lt;/text&gt;&lt;script&gt;alert("
                + "&#39;1&#39;)&lt;/script&gt;&amp;amp;</text>");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.001, 0",
    "1.005, 1",
    "1.5, 1.5",
    "-2.25, -2.25",
    "0.07, 0.07",
    "100000000, 100000000"
  })
  void numbersHaveNoExponentAndAtMostTwoDecimals(double number, String written) {
    assertThat(Svg.number(number)).isEqualTo(written);
  }

  @Test
  void anElementLeftOpenIsAFault() {
    assertThatThrownBy(() -> new Svg().open("g").toString()).hasMessageContaining("`g`");
  }
}
