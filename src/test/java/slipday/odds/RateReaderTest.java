package slipday.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RateReaderTest {
  @ParameterizedTest
  @CsvSource({
    "1 in 16, 0.0625, 1 in 16 (0.0625)",
    "1/16, 0.0625, 1/16 (0.0625)",
    "1:3, 0.25, 1:3 (0.25)",
    "9:3:3:1, 0.5625, 9:3:3:1 (0.5625)",
    "85 %, 0.85, 85 %",
    "6.25%, 0.0625, 6.25 %",
    ".5, 0.5, .5 (0.5)",
    "0.5, 0.5, 0.5",
    "100 %, 1, 100 %"
  })
  void sharesAreCertain(String text, double share, String words) {
    Rate rate = RateReader.read(text).value().orElseThrow();
    assertThat(rate).isInstanceOf(Rate.Certain.class);
    assertThat(rate.middle()).isCloseTo(share, within(1e-12));
    assertThat(rate.words()).isEqualTo(words);
  }

  @Test
  void countsBringTheirDoubt() {
    assertThat(RateReader.read("44 of 50").value()).contains(new Rate.Counted(44, 50));
    assertThat(RateReader.read(" 0  of 5 ").value()).contains(new Rate.Counted(0, 5));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "3",
        "often",
        "1 in",
        "51 of 50",
        "5 of 0",
        "0 %",
        "120 %",
        "3/2",
        "-1 %",
        "0:3",
        "1:x",
        "1,5 %",
        "99999999 of 99999999"
      })
  void whatIsNoShareIsSaid(String text) {
    String why = RateReader.read(text).refusal().orElseThrow();
    assertThat(why).contains("`").endsWith(".");
  }
}
