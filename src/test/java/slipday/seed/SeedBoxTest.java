package slipday.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.descent.Pedigrees;
import slipday.garden.Garden;
import slipday.genetics.Odds;
import slipday.genetics.SeedLife;

class SeedBoxTest {
  private static final String LOTS =
      "lot old\n  of p\n  seeds 100\n  harvested 2026\n  keep back 20 seeds\n";

  private static SeedLot lot(Garden garden, String name, OptionalInt plants) {
    return SeedBox.lots(garden, plants).stream()
        .filter(l -> l.lot().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Garden garden(String more, String... record) {
    return Pedigrees.garden(LOTS + more, java.util.List.of(record));
  }

  @Test
  void whatIsLeftAfterAllThatWent() {
    Garden garden =
        garden(
            "grow old\n  in south\n  plants 8, 1 m apart\n",
            "2027-02-01 tested old, 18 of 20 seeds",
            "2027-03-01 given away old, 5 seeds, to a neighbour",
            "2027-05-20 sowed old, 12 seeds");
    SeedLot old = lot(garden, "old", OptionalInt.empty());
    assertThat(old.left()).contains(100 - 20 - 5 - 12);
    assertThat(old.atMost()).isFalse();
    assertThat(old.wanted()).isZero();
    assertThat(old.remnant()).contains(63);
  }

  @Test
  void aCountStandsForWhatWentBefore() {
    SeedLot old =
        lot(
            garden("", "2027-02-01 given away old, 5 seeds", "2027-03-01 counted old, 90 seeds"),
            "old",
            OptionalInt.empty());
    assertThat(old.left()).contains(90);
  }

  /** A sowing some weeks ahead of the season's first day is taken off once. */
  @Test
  void seedSownAheadOfTheSeasonIsTakenOffOnce() {
    String grow = "grow old\n  in south\n  plants 8, 1 m apart\n";
    String ahead = "2026-12-20 sowed old, 30 seeds";
    assertThat(lot(garden(grow, ahead), "old", OptionalInt.empty()).left()).contains(70);
    assertThat(left(grow, "2026-11-01 counted old, 80 seeds", ahead)).contains(50);
    assertThat(left(grow, ahead, "2026-12-28 counted old, 50 seeds")).contains(50);
    assertThat(
            left(
                grow,
                "2026-11-01 counted old, 50 seeds",
                ahead,
                "2027-02-01 given away old, 20 seeds"))
        .contains(0);
  }

  private static Optional<Integer> left(String more, String... record) {
    return lot(garden(more, record), "old", OptionalInt.empty()).left();
  }

  /** An earlier year's uses are in the count of that year, or before it. */
  @Test
  void whatWentInEarlierYearsIsTakenOffTheCountBeforeIt() {
    assertThat(
            left(
                "",
                "2025-03-01 counted old, 200 seeds",
                "2025-05-20 sowed old, 60 seeds",
                "2026-02-01 tested old, 18 of 20 seeds",
                "2027-02-01 given away old, 5 seeds"))
        .contains(200 - 60 - 20 - 5);
  }

  @Test
  void whatGoesAfterTheSeasonIsTakenOffToo() {
    assertThat(
            left("", "2027-12-30 given away old, 10 seeds", "2028-01-20 given away old, 15 seeds"))
        .contains(75);
  }

  @Test
  void sownWithoutACount() {
    Garden garden = garden("grow old\n  in south\n  plants 8, 1 m apart\n", "2027-05-20 sowed old");
    assertThat(lot(garden, "old", OptionalInt.empty()).atMost()).isTrue();
  }

  /** Against the binomial sum itself, at the least germination of 7 CFR 201.31. */
  @Test
  void seedsForPlantsNotYetSown() {
    Garden garden = garden("grow old\n  in south\n  plants 8, 1 m apart\n");
    SeedLot old = lot(garden, "old", OptionalInt.empty());
    assertThat(old.wanted()).isEqualTo(8);
    assertThat(chance(old.toSow(), 8, 0.75)).isGreaterThanOrEqualTo(0.95);
    assertThat(chance(old.toSow() - 1, 8, 0.75)).isLessThan(0.95);
    assertThat(old.remnant()).contains(100 - old.toSow());
    assertThat(lot(garden, "old", OptionalInt.of(1)).wanted()).isEqualTo(1);
  }

  @Test
  void moreOfOldSeed() {
    String more = "lot older\n  of p\n  harvested 2018\n";
    SeedLot older = lot(garden(more), "older", OptionalInt.of(8));
    double rate = older.outlook().germination().orElseThrow().usual();
    assertThat(rate).isLessThan(0.75);
    assertThat(chance(older.toSow(), 8, rate)).isGreaterThanOrEqualTo(0.95);
    assertThat(chance(older.toSow() - 1, 8, rate)).isLessThan(0.95);
  }

  private static double chance(int seeds, int plants, double rate) {
    double below = 0;
    double ways = 1;
    for (int k = 0; k < plants; k++) {
      below += ways * Math.pow(rate, k) * Math.pow(1 - rate, seeds - k);
      ways = ways * (seeds - k) / (k + 1);
    }
    return 1 - below;
  }

  /** Least germination: 7 CFR 201.31. */
  @ParameterizedTest
  @CsvSource({"muskmelon, 75", "pickling-cucumber, 80", "butternut, 75"})
  void grownOnBeforeItFallsUnderTheLeastForSale(String crop, int percent) {
    String more =
        "line x\n  is a "
            + crop
            + "\nlot seed\n  of x\n  harvested 2026\n  tested 95 of 100 in 2026\n";
    Outlook outlook = lot(garden(more), "seed", OptionalInt.empty()).outlook();
    assertThat(outlook.reckoning().get(1)).contains("under " + percent + " %");
    int by = outlook.growOnBy().orElseThrow();
    Garden garden = garden(more);
    SeedLot seed = lot(garden, "seed", OptionalInt.empty());
    assertThat(Outlook.of(seed.lot(), by).germination().orElseThrow().usual())
        .isGreaterThanOrEqualTo(percent / 100.0);
    assertThat(Outlook.of(seed.lot(), by + 1).germination().orElseThrow().usual())
        .isLessThan(percent / 100.0);
  }

  @Test
  void aFreshTestIsWhatIsExpected() {
    SeedLot old =
        lot(garden("", "2027-02-01 tested old, 18 of 20 seeds"), "old", OptionalInt.empty());
    assertThat(old.outlook().germination().map(SeedLife.Germination::usual).orElseThrow())
        .isCloseTo(SeedLife.tested(18, 20).usual(), within(1e-12));
    assertThat(old.outlook().reckoning().get(0)).startsWith("18 of 20 came up in its test of 2027");
  }

  /** A life told as a range is reckoned with at its middle, and said so. */
  @Test
  void aRangeOfLivesIsReckonedWithAtItsMiddle() {
    String line = "crop own\n  of moschata\n  seed keeps ";
    String seed = "\nline x\n  is a own\nlot seed\n  of x\n  harvested 2021\n";
    SeedLot ranged = lot(garden(line + "3 to 7 years" + seed), "seed", OptionalInt.empty());
    SeedLot single = lot(garden(line + "5 years" + seed), "seed", OptionalInt.empty());
    assertThat(ranged.outlook().germination()).isEqualTo(single.outlook().germination());
    assertThat(ranged.outlook().growOnBy()).isEqualTo(single.outlook().growOnBy());
    assertThat(ranged.outlook().reckoning().get(0))
        .endsWith("6 years since, and such seed keeps 3 to 7 years (5 are reckoned with).");
    assertThat(single.outlook().reckoning().get(0)).endsWith("such seed keeps 5 years.");
  }

  @Test
  void nothingTold() {
    SeedLot seed = lot(garden("lot seed\n  of p\n"), "seed", OptionalInt.of(3));
    assertThat(seed.outlook().germination()).isEmpty();
    assertThat(seed.left()).isEqualTo(Optional.empty());
    assertThat(seed.remnant()).isEmpty();
    assertThat(seed.outlook().reckoning().get(0)).contains("Neither its harvest nor a test");
  }

  @Test
  void parentsAreThePlantsItsSeedWasSavedFrom() {
    Garden garden =
        garden(
            "",
            "2026-07-01 selfed old plant 3, tag 3A",
            "2026-09-01 saved 3A, 40 seeds, into young");
    SeedLot young = lot(garden, "young", OptionalInt.empty());
    assertThat(young.parents()).containsExactly("old plant 3 selfed (tag 3A, 2026-07-01)");
    assertThat(young.generation()).contains("S1");
    assertThat(young.cross()).contains("p");
  }

  /** None of fifty: any number would tell of the prior's half count and not of the seed. */
  @Test
  void ofDeadSeedNoNumberIsSure() {
    String dead = "lot dead\n  of p\n  seeds 50\n  harvested 2026\n  tested 0 of 50 in 2027\n";
    SeedLot seed = lot(garden(dead), "dead", OptionalInt.of(12));
    assertThat(seed.toSow()).isEqualTo(Odds.MOST);
    assertThat(seed.remnant()).isEmpty();
    assertThat(seed.outlook().asUsual()).isFalse();
    assertThat(seed.outlook().reckoning().get(1)).startsWith("It is past the time to be grown on");
  }

  /** The seeds to sow of what nobody tested for years rest on its keeping as usual. */
  @Test
  void oldSeedIsEnoughOnlyIfItKeepsAsUsual() {
    String more = "lot older\n  of p\n  harvested 2022\n";
    assertThat(lot(garden(more), "older", OptionalInt.of(8)).outlook().asUsual()).isTrue();
    String tested = more + "  tested 44 of 50 in 2027\n";
    assertThat(lot(garden(tested), "older", OptionalInt.of(8)).outlook().asUsual()).isFalse();
    String fresh = "lot fresh\n  of p\n  harvested 2027\n";
    assertThat(lot(garden(fresh), "fresh", OptionalInt.of(8)).outlook().asUsual()).isFalse();
  }

  @Test
  void plantsOfSeedsAreTheOtherWayRound() {
    SeedLot old = lot(garden(""), "old", OptionalInt.of(8));
    for (int seeds = 0; seeds < 30; seeds++) {
      int plants = SeedsToSow.plants(old.lot(), seeds, 100, old.outlook());
      assertThat(SeedsToSow.of(old.lot(), plants, old.outlook())).isLessThanOrEqualTo(seeds);
      assertThat(SeedsToSow.of(old.lot(), plants + 1, old.outlook())).isGreaterThan(seeds);
    }
    assertThat(SeedsToSow.plants(old.lot(), 90, 5, old.outlook())).isEqualTo(5);
  }
}
