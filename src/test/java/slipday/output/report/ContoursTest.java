package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slipday.genetics.Aim;
import slipday.measure.Range;
import slipday.output.report.Contours.Level;
import slipday.output.report.Contours.Segment;

/** Lines of equal worth, against what the aims themselves say of the points on them. */
class ContoursTest {
  private static Aim aim(Double low, Double high, double weight, double unit) {
    return new Aim(
        Optional.ofNullable(low), Optional.ofNullable(high), weight, unit, Optional.empty());
  }

  private static void areAsShortAsTheySay(Contours contours, Aim across, Aim up) {
    assertThat(contours.levels()).isNotEmpty();
    for (Level level : contours.levels()) {
      assertThat(level.segments()).as("short by " + level.label()).isNotEmpty();
      for (Segment s : level.segments()) {
        for (double share : new double[] {0, 0.3, 1}) {
          double x = s.from().x() + share * (s.to().x() - s.from().x());
          double y = s.from().y() + share * (s.to().y() - s.from().y());
          assertThat(-across.worth(x) - up.worth(y))
              .isCloseTo(Double.parseDouble(level.label()), within(1e-9));
        }
      }
    }
  }

  /** Where neither aim is met a line stands at right angles to the weights of a unit. */
  @Test
  void beforeBothAimsLinesAreStraightAndPerpendicularToTheWeights() {
    Aim across = aim(20.0, null, 5, 2);
    Aim up = aim(null, 0.0, 3, 4);
    Contours contours = Contours.of(across, up, Ticks.over(0, 10, 5), Ticks.over(5, 20, 5));
    areAsShortAsTheySay(contours, across, up);
    for (Level level : contours.levels()) {
      assertThat(level.segments()).hasSize(1);
      Segment s = level.segments().get(0);
      double dx = s.to().x() - s.from().x();
      double dy = s.to().y() - s.from().y();
      // Worth grows by 5/2 a unit across and falls by 3/4 a unit up.
      assertThat(dx * 2.5 - dy * 0.75).isCloseTo(0, within(1e-9));
      assertThat(Math.hypot(dx, dy)).isPositive();
    }
  }

  @Test
  void linesBendWhereAnAimIsMet() {
    Aim across = aim(5.0, null, 1, 1);
    Aim up = aim(4.0, 6.0, 2, 1);
    Contours contours = Contours.of(across, up, Ticks.over(0, 10, 6), Ticks.over(0, 10, 6));
    areAsShortAsTheySay(contours, across, up);
    Level two =
        contours.levels().stream().filter(l -> l.label().equals("2")).findFirst().orElseThrow();
    Set<String> ends =
        two.segments().stream()
            .flatMap(s -> List.of(s.from(), s.to()).stream())
            .map(p -> Math.round(p.x() * 1e6) / 1e6 + " " + Math.round(p.y() * 1e6) / 1e6)
            .collect(Collectors.toSet());
    // Short by 2: two short across with the other met, or one too low or too high up.
    assertThat(ends)
        .containsExactlyInAnyOrder(
            "10.0 3.0", "5.0 3.0", "3.0 4.0", "3.0 6.0", "5.0 7.0", "10.0 7.0");
  }

  @Test
  void theEndOfAScaleBendsThemToo() {
    Aim across = new Aim(Optional.of(8.0), Optional.empty(), 1, 1, Optional.of(new Range(0, 10)));
    Aim up = aim(3.0, null, 1, 1);
    Contours contours = Contours.of(across, up, Ticks.over(-2, 8, 6), Ticks.over(0, 4, 5));
    areAsShortAsTheySay(contours, across, up);
  }

  @Test
  void whereAllIsMetThereAreNone() {
    Contours contours =
        Contours.of(
            aim(1.0, null, 1, 1), aim(1.0, null, 1, 1), Ticks.over(2, 3, 5), Ticks.over(2, 3, 5));
    assertThat(contours.levels()).isEmpty();
  }
}
