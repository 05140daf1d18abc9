package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import slipday.measure.Range;

class AimTest {
  private static final Optional<Range> POINTS = Optional.of(new Range(0, 10));

  private static Aim aim(double low, double high, double weight, double unit) {
    return new Aim(
        Double.isNaN(low) ? Optional.empty() : Optional.of(low),
        Double.isNaN(high) ? Optional.empty() : Optional.of(high),
        weight,
        unit,
        Optional.empty());
  }

  private static Aim points(double low) {
    return new Aim(Optional.of(low), Optional.empty(), 1, 1, POINTS);
  }

  /**
   * Sweetness to be raised to 13, 5 a standard deviation of 1.25: 2.5 short of it are worth −10.
   */
  @Test
  void whatFallsShortIsCountedInDeviations() {
    Aim raise = aim(13, Double.NaN, 5, 1.25);
    assertThat(raise.worth(10.5)).isCloseTo(-10, within(1e-12));
    assertThat(raise.worth(13)).isZero();
    assertThat(raise.worth(15)).isZero();
    assertThat(raise.isMetBy(14)).isTrue();
    assertThat(raise.isMetBy(12.9)).isFalse();
  }

  @Test
  void whatIsToBeLoweredCountsAbove() {
    Aim lower = aim(Double.NaN, 36, 3, 1);
    assertThat(lower.worth(38)).isEqualTo(-6);
    assertThat(lower.worth(30)).isZero();
  }

  @Test
  void whatIsToBeKeptCountsOnBothSides() {
    Aim keep = aim(1.2, 1.8, 2, 0.5);
    assertThat(keep.worth(1.5)).isZero();
    assertThat(keep.worth(0.7)).isCloseTo(-2, within(1e-12));
    assertThat(keep.worth(2.3)).isCloseTo(-2, within(1e-12));
  }

  @Test
  void pointsStayOnTheirScale() {
    assertThat(points(8).held(11.3)).isEqualTo(10);
    assertThat(points(8).worth(-2)).isEqualTo(points(8).worth(0)).isEqualTo(-8);
    assertThat(points(8).isOnScale()).isTrue();
    assertThat(points(11).isOnScale()).isFalse();
    assertThat(new Aim(Optional.empty(), Optional.of(-1.0), 1, 1, POINTS).isOnScale()).isFalse();
  }

  @Test
  void aScaleOnWhoseEndHalfStandIsWornOut() {
    assertThat(points(8).isWornOut(5, 10)).isTrue();
    assertThat(points(8).isWornOut(4, 10)).isFalse();
    assertThat(points(8).isWornOut(0, 0)).isFalse();
    assertThat(aim(1, 2, 1, 1).isWornOut(10, 10)).isFalse();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> aim(2, 1, 1, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> aim(1, 2, -1, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> aim(1, 2, 1, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  /** Nearer is never worth less. */
  @Property(tries = 200)
  void worthGrowsTowardsTheAim(
      @ForAll @DoubleRange(min = -50, max = 50) double figure,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    Aim keep = aim(-5, 7, 2, 3);
    double nearer = figure + (1 - figure) * share;
    assertThat(keep.worth(nearer)).isGreaterThanOrEqualTo(keep.worth(figure));
    assertThat(keep.worth(figure)).isLessThanOrEqualTo(0);
  }
}
