package slipday.season.chore;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slipday.season.PollinationPlan;
import slipday.season.Season;

class MorningsTest {
  private static final LocalDate FIRST = LocalDate.of(2027, 7, 5);

  @Test
  void noMoreThanItTakesToBeSureFromTheFirstOn() {
    List<LocalDate> mornings = Mornings.of(plan(20, 5, Optional.of(18)), Optional.empty());
    assertThat(mornings)
        .containsExactly(FIRST, FIRST.plusDays(1), FIRST.plusDays(2), FIRST.plusDays(3));
  }

  @Test
  void allThereAreWhereThatIsNotEnough() {
    assertThat(Mornings.of(plan(20, 5, Optional.empty()), Optional.empty())).hasSize(20);
    assertThat(Mornings.of(plan(20, 5, Optional.of(900)), Optional.empty())).hasSize(20);
  }

  @Test
  void someMorningsAWeekLieSpread() {
    List<LocalDate> mornings = Mornings.of(plan(8, 5, Optional.empty()), Optional.of(3));
    assertThat(mornings).hasSize(8).first().isEqualTo(FIRST);
    assertThat(mornings.stream().map(LocalDate::getDayOfWeek).collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY);
  }

  @Test
  void noneAfterTheWindow() {
    assertThat(Mornings.of(plan(99, 5, Optional.empty()), Optional.empty()))
        .hasSize(20)
        .last()
        .isEqualTo(FIRST.plusDays(19));
    assertThat(Mornings.of(plan(0, 0, Optional.empty()), Optional.empty())).isEmpty();
  }

  /** A window of 20 days. */
  private static PollinationPlan plan(int mornings, int aMorning, Optional<Integer> sure) {
    Season season =
        Gardens.season(
            """
            season 2027
            site quince-end "Quince End"
              place 44.21 N, 72.58 W
              time zone America/New_York
              last frost 18 May
              first frost 27 September
            """
                + Gardens.lot("pip", "muskmelon")
                    .replace("in long-bed", "pollinate self by hand, for 2 fruits"));
    PollinationPlan p = season.pollinations().get(0);
    return new PollinationPlan(
        p.subject(),
        p.seedParent(),
        p.pollenParent(),
        p.cross(),
        p.selfing(),
        p.emasculate(),
        p.wanted(),
        p.pollinated(),
        p.fromPlants(),
        p.take(),
        p.flowersLikely(),
        sure,
        p.flowersOpen(),
        p.flowersThere(),
        p.canCarry(),
        p.chance(),
        Optional.of(FIRST),
        Optional.of(FIRST.plusDays(19)),
        mornings,
        aMorning,
        p.stop(),
        p.reason());
  }
}
