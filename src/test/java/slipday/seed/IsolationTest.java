package slipday.seed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.descent.Lineage;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.record.Subject;

/**
 * Open-pollinated seed of a block that stood farther from all its kin than the strict isolation
 * distance of its species: for melon half a mile, 804.7 m (common practice, no source).
 */
class IsolationTest {
  private static final String PLAN =
      """
      season 2026
      site home
        place 44 N, 72 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      bed south
        size 10 m x 1 m
        corner 0 m east, 0 m north
      bed far
        size 10 m x 1 m
        corner %s m east, 0 m north
      line rope
        is a muskmelon
      line amber
        is a %s
      lot rope-2023
        of rope
        inbred 0 %%
        seeds 60
      lot amber-f3
        of amber
        seeds 40
      grow rope-2023 as rope
        in south
        plants 4, 60 cm apart
        flowers %s
        seed saved
      grow amber-f3
        in far
        plants 4, 60 cm apart
      2026-08-30 saved rope, 200 seeds, into rope-2026
      """;

  private static Garden garden(String plan) {
    return new Pipeline(FileTexts.onDisk(), false, LocalDate.of(2026, 12, 31))
        .check(
            new ByteArrayInputStream(plan.getBytes(StandardCharsets.UTF_8)),
            "plan.season",
            Path.of("."))
        .garden()
        .orElseThrow();
  }

  private static SeedLot lot(String plan, String name) {
    return SeedBox.lots(garden(plan), OptionalInt.empty()).stream()
        .filter(l -> l.lot().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static SeedLot saved(String east, String kin, String flowers, String more) {
    return lot(PLAN.formatted(east, kin, flowers) + more, "rope-2026");
  }

  /** The far bed begins so far east of a bed of 10 m. */
  @ParameterizedTest
  @CsvSource({"815, true", "814, false", "2000, true", "20, false"})
  void farFromAllKinItsFatherIsOfTheBlock(String east, boolean kept) {
    SeedLot seed = saved(east, "muskmelon", "open", "");
    assertThat(seed.lot().isolated().isPresent()).isEqualTo(kept);
    assertThat(seed.lot().identity()).isEqualTo(kept ? Lot.Identity.KNOWN : Lot.Identity.UNKNOWN);
    assertThat(seed.generation().orElseThrow()).isEqualTo(kept ? "OP1, isolated" : "OP1");
  }

  @Test
  void itSaysHowFarAndByWhoseFigure() {
    SeedLot seed = saved("1010", "muskmelon", "open", "");
    assertThat(seed.lot().isolated().orElseThrow().says())
        .isEqualTo(
            "its nearest kin that the plan tells of, `amber-f3`, was 1000 m away all season,"
                + " beyond the 805 m that keep its kind clean (of nearer kin nobody told)");
    assertThat(seed.lot().isolated().orElseThrow().from())
        .extracting(r -> r.says())
        .anyMatch(s -> s.contains("isolation"))
        .anyMatch(s -> s.contains("corner"));
    assertThat(seed.parents()).containsExactly("rope, open, among its own kind alone");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "neighbour farm; grows casaba; distance 2 km                | true",
        "neighbour farm; grows casaba; distance 140 m               | false",
        "neighbour farm; grows casaba                               | false",
        "neighbour farm; grows butternut; distance 140 m            | true",
        "volunteer heap; grows muskmelon; distance 30 m             | false",
        "2026-06-10 moved amber-f3 plant 2, to south                | false",
        "2026-06-10 moved amber-f3, to south                        | false",
        "2026-06-10 moved rope plant 2, to far                      | false",
        "line gem; is a butternut; lot gem-1; of gem; grow gem-1; in south; plants 2 | true",
        "line gem; is a casaba; lot gem-1; of gem; grow gem-1; plants 2 | false",
        "lot rope-x; of rope; grow rope-x; in south; plants 2       | false",
      })
  void nothingNearerMayBeKnownOrUntold(String more, boolean kept) {
    SeedLot seed = saved("1010", "muskmelon", "open", more.replace("; ", "\n") + "\n");
    assertThat(seed.lot().isolated().isPresent()).isEqualTo(kept);
  }

  /** That nobody grows any is not what the plan says, when it says nothing. */
  @Test
  void noKinToldOfIsNoDistance() {
    SeedLot seed = saved("1010", "butternut", "open", "");
    assertThat(seed.lot().isolated()).isEmpty();
    assertThat(seed.lot().identity()).isEqualTo(Lot.Identity.UNKNOWN);
  }

  /** What pollinates itself is true seed where the plan tells of no kin near it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tomato   | butternut | 20   |                                                      | true",
        "snap-bean| butternut | 20   |                                                      | true",
        "tomato   | tomato    | 11   |                                                      | false",
        "tomato   | tomato    | 200  |                                                      | true",
        "tomato   | butternut | 20   | lot gem-1; of rope; grow gem-1; in south; plants 2   | false",
        "tomato   | butternut | 20   | grow rope-2023 as later; in south; plants 2          | true",
        "tomato   | butternut | 20   | volunteer heap; grows tomato; distance 3 m           | false",
        "sweet-pepper | butternut | 20 |                                                    | false",
      })
  void whatPollinatesItselfIsTrueWhereNoKinIsNear(
      String kind, String other, String east, String more, boolean kept) {
    String plan =
        PLAN.formatted(east, other, "open").replaceFirst("is a muskmelon", "is a " + kind);
    String added = more == null ? "" : more.replace("; ", "\n") + "\n";
    SeedLot seed = lot(plan + added, "rope-2026");
    assertThat(seed.lot().isolated().isPresent()).isEqualTo(kept);
    assertThat(seed.lot().identity()).isEqualTo(kept ? Lot.Identity.KNOWN : Lot.Identity.UNKNOWN);
  }

  @Test
  void withoutPollenOfItsOwnTheDistanceTellsNothing() {
    assertThat(saved("1010", "muskmelon", "males removed", "").lot().isolated()).isEmpty();
  }

  /**
   * Two plants of a block not inbred and not akin: their seed is not inbred. The father is known as
   * one of the block, so half of the plant's genes come from each: heterozygosity stays 1.
   */
  @Test
  void theFatherIsAPlantOfTheBlock() {
    Garden garden = garden(PLAN.formatted("1010", "muskmelon", "open"));
    Lot lot =
        garden.lots().stream().filter(l -> l.name().equals("rope-2026")).findFirst().orElseThrow();
    Lineage descent = Lineage.of(garden, new Subject.OfLot(lot), Optional.empty());
    assertThat(descent.inbreeding()).isCloseTo(0, within(1e-12));
    assertThat(descent.subject().parents()).allMatch(p -> p.number().isPresent()).hasSize(2);
    assertThat(descent.assumed())
        .anyMatch(s -> s.contains("among its own kind alone: its nearest kin"))
        .noneMatch(s -> s.contains("pollen parent of `rope-2026` is unknown"));
  }

  /** Bitter kin that the plan does not tell of may have been nearer: the caution stays. */
  @Test
  void distanceAloneLiftsNoBitterRisk() {
    assertThat(saved("1010", "muskmelon", "open", "").mayBeBitter()).isTrue();
    assertThat(saved("1010", "muskmelon", "caged", "").mayBeBitter()).isFalse();
    String lifted =
        """
        2026-10-30 lifted rope-2026, bitter risk, "no gourd within two miles, walked it"
        """;
    assertThat(saved("1010", "muskmelon", "open", lifted).mayBeBitter()).isFalse();
  }

  /** Over the years by the label, which does not say whether it was a cage. */
  @Test
  void theRiskFollowsTheSeedOfItsPlants() {
    String next =
        PLAN.formatted("1010", "muskmelon", "cover the chosen")
                .replace("season 2026", "season 2027")
                .replace("grow rope-2023 as rope", "grow rope-2026 as rope")
                .replace("saved rope, 200 seeds", "saved rope-2023, 200 seeds")
                .replace("into rope-2026", "into rope-2026, generation OP1, isolated")
            + "2027-07-08 selfed rope plant 1, tag 1A\n"
            + "2027-08-30 saved 1A, 90 seeds, into rope-1A\n";
    assertThat(lot(next, "rope-2026").lot().identity()).isEqualTo(Lot.Identity.KNOWN);
    assertThat(lot(next, "rope-1A").lot().isolated()).isEmpty();
    assertThat(lot(next, "rope-1A").mayBeBitter()).isTrue();
    String lifted = "2027-02-01 lifted rope-2026, bitter risk, \"it was caged\"\n";
    assertThat(lot(next + lifted, "rope-2026").mayBeBitter()).isFalse();
    assertThat(lot(next + lifted, "rope-1A").mayBeBitter()).isFalse();
  }
}
