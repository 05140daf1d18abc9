package slipday.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypeShareTest {
  /** Mendel's shares of an F2, and after two more selfings; multiplied out by hand. */
  @ParameterizedTest
  @CsvSource({
    "1, 0, 0, 2, 0.25",
    "0, 1, 0, 2, 0.75",
    "0, 0, 1, 2, 0.25",
    "2, 0, 0, 2, 0.0625",
    "1, 1, 0, 2, 0.1875",
    "0, 2, 0, 2, 0.5625",
    "3, 0, 0, 2, 0.015625",
    "1, 0, 0, 4, 0.4375",
    "1, 1, 1, 4, 0.107666015625"
  })
  void sharesMultiply(int recessive, int dominant, int pure, int generation, double share) {
    TypeShare type = TypeShare.of(recessive, dominant, pure, generation).value().orElseThrow();
    assertThat(type.share()).isCloseTo(share, within(1e-12));
  }

  @Test
  void aWholeFractionIsToldAsOne() {
    assertThat(TypeShare.of(2, 0, 0, 2).value().orElseThrow().rate().words()).isEqualTo("1 in 16");
    assertThat(TypeShare.of(0, 1, 0, 2).value().orElseThrow().rate().words()).isEqualTo("75 %");
  }

  @Test
  void pureDominantsAreToldByTheirOffspring() {
    assertThat(TypeShare.of(0, 0, 1, 2).value().orElseThrow().steps())
        .anyMatch(s -> s.contains("11 plants of each"));
    assertThat(TypeShare.of(0, 1, 0, 2).value().orElseThrow().steps())
        .noneMatch(s -> s.contains("of each"));
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 0, 2", "1, 0, 0, 1", "41, 0, 0, 2", "1, 0, 0, 31"})
  void whatCannotBeAskedIsSaid(int recessive, int dominant, int pure, int generation) {
    assertThat(TypeShare.of(recessive, dominant, pure, generation).refusal()).isPresent();
  }
}
