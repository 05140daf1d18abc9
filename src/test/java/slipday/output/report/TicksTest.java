package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TicksTest {
  private static List<String> labels(double from, double to, int about) {
    Ticks ticks = Ticks.over(from, to, about);
    return ticks.values().stream().map(ticks::label).toList();
  }

  /** P. S. Heckbert, Graphics Gems, 1990, p. 61: data from 105 to 543, five ticks (from memory). */
  @Test
  void theWorkedExampleOfLooseLabels() {
    assertThat(labels(105, 543, 5)).containsExactly("100", "200", "300", "400", "500", "600");
  }

  /** By hand, by the same rules. */
  @ParameterizedTest
  @CsvSource({
    "10.6, 12.6, 5, 10.5 11.0 11.5 12.0 12.5 13.0",
    "0, 1, 6, 0.0 0.2 0.4 0.6 0.8 1.0",
    "0.6, 1.2, 6, 0.6 0.8 1.0 1.2",
    "-1.3, 2.2, 5, -2 -1 0 1 2 3",
    "0.0012, 0.0031, 5, 0.0010 0.0015 0.0020 0.0025 0.0030 0.0035",
    "3, 3, 5, 2.6 2.8 3.0 3.2 3.4",
    "0, 0, 5, -1.0 -0.5 0.0 0.5 1.0",
  })
  void roundFiguresCoverWhatIsShown(double from, double to, int about, String ticks) {
    assertThat(String.join(" ", labels(from, to, about))).isEqualTo(ticks);
  }

  @Property
  boolean ticksAreRoundFewAndReachAllTheWay(
      @ForAll @IntRange(min = -1_000_000, max = 1_000_000) int start,
      @ForAll @IntRange(min = 1) int length,
      @ForAll @IntRange(max = 6) int power) {
    double one = start / Math.pow(10, power);
    double range = length / Math.pow(10, power);
    Ticks ticks = Ticks.over(one, one + range, 5);
    double lead = ticks.step() / Math.pow(10, Math.floor(Math.log10(ticks.step()) + 1e-9));
    boolean round = List.of(1.0, 2.0, 5.0).stream().anyMatch(l -> Math.abs(l - lead) < 1e-6);
    double hair = 1e-6 * ticks.step();
    boolean covers = ticks.low() <= one + hair && ticks.high() >= one + range - hair;
    boolean tight = ticks.low() > one - ticks.step() - hair;
    return round && covers && tight && ticks.values().size() >= 2 && ticks.values().size() <= 11;
  }

  @Test
  void aFigureLandsWhereItIsReckonedToBe() {
    Scale up = new Scale(Ticks.over(10, 14, 5), 236, 26);
    assertThat(up.at(10)).isEqualTo(236);
    assertThat(up.at(14)).isEqualTo(26);
    assertThat(up.at(11)).isCloseTo(236 - 210 / 4.0, within(1e-9));
    assertThat(up.holds(14.01)).isFalse();
    assertThat(up.held(20)).isEqualTo(14);
  }
}
