package slipday.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class HowManyTest {
  private static Rate rate(String text) {
    return RateReader.read(text).value().orElseThrow();
  }

  private static String told(Reckoning r) {
    return r.says() + " " + String.join(" ", r.steps()) + " " + String.join(" ", r.next());
  }

  /**
   * The whole table of plants needed: J. R. Sedcole 1977, Crop Science 17:667 (from memory; worked
   * out again in exact rational arithmetic).
   */
  @ParameterizedTest
  @CsvFileSource(resources = "/plants-needed.csv", numLinesToSkip = 1)
  void plantsOfAType(double sure, String frequency, int wanted, int expected) {
    Reckoning r = new HowMany(wanted, rate(frequency), sure).plants(List.of());
    assertThat(r.answer()).isEqualTo(OptionalInt.of(expected));
    assertThat(r.rows())
        .anyMatch(
            row -> row.demand().startsWith(Rate.percent(sure)) && row.number().equals(r.answer()));
    assertThat(r.says()).startsWith("Grow " + expected + " plant");
  }

  /** Worked out again exactly. */
  @ParameterizedTest
  @CsvSource({
    "12, 85 %, 0.95, 17",
    "12, 70 %, 0.95, 22",
    "4, 50 %, 0.95, 13",
    "20, 90 %, 0.99, 27"
  })
  void seedsForPlants(int plants, String germination, double sure, int seeds) {
    assertThat(new HowMany(plants, rate(germination), sure).seeds().answer()).hasValue(seeds);
  }

  /** Worked out again exactly, and 154 with a second library's beta-binomial of (3.5, 17.5). */
  @ParameterizedTest
  @CsvSource({"15 %, 85, certain", "30 %, 41, certain", "3 of 20, 154, doubt"})
  void flowersForFruits(String take, int flowers, String said) {
    Reckoning r = new HowMany(8, rate(take), 0.95).flowers();
    assertThat(r.answer()).hasValue(flowers);
    assertThat(told(r)).contains(said.equals("doubt") ? "unknown rate" : "taken as certain");
  }

  @Test
  void theReckoningGivesTheChancesOnBothSides() {
    Reckoning r = new HowMany(3, rate("1 in 16"), 0.95).plants(List.of());
    assertThat(told(r)).contains("99 plants with a chance of 4.9 %", "98 plants with 5.13 %");
  }

  /** ln 0.05 ÷ ln 0.75 = 10.41: K. Mather 1938, The Measurement of Linkage in Heredity (memory). */
  @Test
  void oneOfAKindShowsItsFormula() {
    assertThat(told(new HowMany(1, rate("1 in 4"), 0.95).plants(List.of())))
        .contains("ln 0.05 ÷ ln 0.75 = 10.41", "the next whole number is 11");
  }

  /** Two plants of a half are 75 % sure exactly: no further whole number is called for. */
  @Test
  void aChanceMetExactlyIsMet() {
    Reckoning r = new HowMany(1, rate("1 in 2"), 0.75).plants(List.of());
    assertThat(r.answer()).hasValue(2);
    assertThat(told(r)).contains("= 2, which is 2.");
  }

  @Test
  void deadSeedGivesNoNumber() {
    Reckoning r = new HowMany(10, rate("0 of 5000"), 0.95).seeds();
    assertThat(r.answer()).isEmpty();
    assertThat(r.says()).contains("as good as dead");
    assertThat(r.rows()).isEmpty();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new HowMany(0, rate("1 in 2"), 0.9))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new HowMany(1, rate("1 in 2"), 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** (1 − 0.0582)^50 is 5 %, worked out by hand; no number is told of the prior's half count. */
  @Test
  void ofNoneThatCameNoNumberIsSure() {
    Reckoning seeds = new HowMany(12, rate("0 of 50"), 0.95).seeds();
    assertThat(seeds.answer()).isEmpty();
    assertThat(seeds.rows()).isEmpty();
    assertThat(seeds.says()).startsWith("Hardly any comes, for none of 50 did: no number of seeds");
    assertThat(told(seeds)).contains("5.82 %").doesNotContain("Beta(");
    Reckoning flowers = new HowMany(8, rate("0 of 20"), 0.95).flowers();
    assertThat(flowers.answer()).isEmpty();
    assertThat(told(flowers)).contains("take or fail together, which is not reckoned in");
  }
}
