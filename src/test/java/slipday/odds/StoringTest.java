package slipday.odds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StoringTest {
  private static Reckoning read(String asked) {
    return Storing.read(asked).value().orElseThrow();
  }

  /** J. F. Harrington 1972 (from memory): twice by a percent of moisture, twice by five degrees. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "10 % at 20 C, 8 % at 10 C | 16 | 16 times",
        "10% at 20C then 9% at 20C | 2 | 2 times",
        "10 % at 68 F, 10 % at 59 F | 2 | 2 times",
        "8 % at 20 C, 8 % at 19 C | 1 | 1.1 times",
        "8 % at 10 C, 10 % at 20 C | | 1/16",
      })
  void twiceForEachPercentAndForEachFiveDegrees(String asked, Integer answer, String says) {
    Reckoning reckoning = read(asked);
    assertThat(reckoning.answer())
        .isEqualTo(answer == null ? OptionalInt.empty() : OptionalInt.of(answer));
    assertThat(reckoning.says()).contains("lives about " + says + " as long as at ");
    assertThat(reckoning.sources()).anyMatch(s -> s.contains("Harrington 1972"));
  }

  @Test
  void itTellsWhichOfTheTwoDoesHowMuch() {
    assertThat(read("10 % at 20 C, 7 % at 10 C").steps())
        .contains("By moisture alone 8 times as long, by warmth alone 4 times as long.");
  }

  /** Degrees Fahrenheit and percent of humidity under a hundred, as above. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "10 C | up to 49 % of humidity",
        "20 C | up to 31 % of humidity",
        "40 C | At 40 C no air is dry enough"
      })
  void howDryTheAirIsToBe(String place, String says) {
    assertThat(read("10 % at 20 C, 8 % at " + place).steps()).anyMatch(s -> s.contains(says));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "10 % at 20 C | does not tell how moist and how warm",
        "somewhere cool | does not tell how moist and how warm",
        "10 % at 20 C, 4 % at 10 C | holds from 5 % to 14 % only",
        "10 % at 20 C, 8 % at -4 C | holds from 0 to 50 C only"
      })
  void whatCanNotBeTold(String asked, String why) {
    assertThat(Storing.read(asked).refusal().orElseThrow()).contains(why);
  }
}
