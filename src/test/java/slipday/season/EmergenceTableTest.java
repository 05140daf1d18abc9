package slipday.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slipday.garden.CropFacts.EmergenceRow;

class EmergenceTableTest {
  /** Muskmelon of Harrington and Minges 1954, in Knott's Handbook for Vegetable Growers. */
  private final EmergenceTable melon =
      new EmergenceTable(List.of(row(20, 8), row(25, 4), row(30, 3)), 15.6, 37.8);

  private static EmergenceRow row(double soil, double days) {
    return new EmergenceRow(days, soil, Optional.empty());
  }

  @Test
  void givesTheTablesOwnDays() {
    assertThat(melon.days(20)).isCloseTo(8, within(1e-9));
    assertThat(melon.days(25)).isCloseTo(4, within(1e-9));
    assertThat(melon.days(30)).isCloseTo(3, within(1e-9));
  }

  @Test
  void runsStraightBetweenTheRows() {
    assertThat(melon.rate(22.5)).isCloseTo((1.0 / 8 + 1.0 / 4) / 2, within(1e-9));
  }

  @Test
  void nothingComesUpInSoilTooColdOrTooHot() {
    assertThat(melon.rate(15)).isZero();
    assertThat(melon.rate(38)).isZero();
    assertThat(melon.days(10)).isInfinite();
  }
}
