package slipday.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class HandPollinationTest {
  private static final String FROSTS =
      Plans.SITE.replace(
          "bed one",
          "  last frost 1 May, 1 in 10 after 10 May\n  first frost 15 October, 1 in 10 before 1 October\nbed one");

  private static final String MELON =
      """
      line ours
        is a muskmelon
        take 15 %, as sure as 20 flowers
        take without anthers 10 %, as sure as 20 flowers
        fruiting flowers 3 a plant a week
      lot ours-1
        of ours
      grow ours-1
        in one
        plants 40
        flowers cover the chosen
        pollinate self by hand, for 8 fruits
        seed saved
      line theirs
        is a casaba
      lot theirs-1
        of theirs
      grow theirs-1
        in two
        plants 4
      """;

  private static final String CROSS =
      """
      cross both
        seed parent ours-1
        pollen parent theirs-1
        fruits 2
      """;

  @Test
  void countsFlowersByTheBetaBinomial() {
    PollinationPlan plan = Plans.season(FROSTS + MELON).pollinations().get(0);
    // 8 fruits at a take of Beta(3, 17): 192 flowers (worked out by an independent script).
    assertThat(plan.flowersSure()).contains(192);
    assertThat(plan.flowersLikely()).isBetween(50, 62);
  }

  @Test
  void aSelfAndACrossShareTheirMothersFlowers() {
    int alone = Plans.season(FROSTS + MELON).pollinations().get(0).flowersThere();
    List<PollinationPlan> both = Plans.season(FROSTS + MELON + CROSS).pollinations();
    assertThat(both).hasSize(2);
    int shared = both.stream().mapToInt(PollinationPlan::flowersThere).sum();
    assertThat(shared).isCloseTo(alone, within(1));
    assertThat(both.get(0).chance()).isLessThan(1);
    assertThat(both.get(1).emasculate()).isTrue();
  }

  @Test
  void theHandsThereAreSetABound() {
    String two = FROSTS.replace("bed one", "  hands 1, 2 flowers each\nbed one");
    List<PollinationPlan> plans = Plans.season(two + MELON + CROSS).pollinations();
    double aMorning =
        plans.stream().mapToDouble(p -> p.flowersThere() / (double) p.mornings()).sum();
    assertThat(aMorning).isLessThanOrEqualTo(2.1);
  }
}
