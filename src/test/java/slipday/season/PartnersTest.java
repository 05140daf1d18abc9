package slipday.season;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PartnersTest {
  private static final String SITE =
      Plans.SITE.replace(
          "bed one",
          "  last frost 1 May, 1 in 10 after 10 May\n"
              + "  first frost 15 October, 1 in 10 before 1 October\nbed one");

  private static String corn(String name, int flowers, String more) {
    return """
        line %1$s-line
          is a sweet-corn
          first flowers %2$d days after emergence
          males earlier by 2 days
          blooms for 8 days
          ripe 20 days after pollination
          seed ripe 30 days after pollination
        lot %1$s
          of %1$s-line
        grow %1$s
          in one
          plants 20
          %3$s
        """
        .formatted(name, flowers, more);
  }

  private static final String CROSS =
      """
      cross both
        seed parent early
        pollen parent late
        fruits 3
      """;

  @Test
  void theEarlierParentIsPutOffUntilBothBloom() {
    Season season = Plans.season(SITE + corn("early", 40, "") + corn("late", 62, "") + CROSS);
    Nicking nicking = season.nickings().get(0);
    assertThat(nicking.chance()).isGreaterThan(0.9);
    assertThat(nicking.movedPlanting()).contains("early");
    assertThat(nicking.moved()).isBetween(14, 26);
    assertThat(season.planting("early").orElseThrow().choice().earlyBound())
        .isEqualTo(Condition.BLOOM);
  }

  @Test
  void parentsWithFixedDatesAreLeftAndTold() {
    Season season =
        Plans.season(
            SITE + corn("early", 40, "sow on 12 May") + corn("late", 62, "sow on 12 May") + CROSS);
    Nicking nicking = season.nickings().get(0);
    assertThat(nicking.moved()).isZero();
    assertThat(nicking.chance()).isLessThan(0.1);
  }

  @Test
  void cornCanBeSetToBloomApart() {
    Season season =
        Plans.season(SITE + corn("early", 50, "") + corn("late", 50, "bloom apart from early"));
    Apart apart = season.apart().get(0);
    assertThat(apart.honoured()).isTrue();
    assertThat(apart.moved()).isGreaterThan(5);
    assertThat(season.exposures()).isEmpty();
  }

  @Test
  void melonsThatFlowerForWeeksCannot() {
    String melons =
        """
        line a
          is a muskmelon
        lot a-1
          of a
        grow a-1
          in one
        line b
          is a casaba
        lot b-1
          of b
        grow b-1
          in two
          bloom apart from a-1
        """;
    Apart apart = Plans.season(SITE + melons).apart().get(0);
    assertThat(apart.honoured()).isFalse();
    assertThat(apart.togetherMornings()).isPositive();
    assertThat(apart.moved()).isZero();
  }
}
