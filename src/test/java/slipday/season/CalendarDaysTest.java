package slipday.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slipday.measure.Reason;

/** Seasons of gardens without a weather record. */
class CalendarDaysTest {
  private static final String FROSTS =
      """
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      """;
  private static final String GROWN =
      """
      line ours
        is a muskmelon
      lot ours-1
        of ours
      grow ours-1
        in one
        plants 6
        start indoors, 3 weeks before planting out
      """;

  private static PlantingSeason planting(String site, String bed, String grow) {
    String text = Plans.SITE.replace("bed one\n", FROSTS + site + "bed one\n" + bed) + GROWN + grow;
    return Plans.season(text).plantings().get(0);
  }

  @Test
  void aPocketTwoDegreesColderGoesOutTenDaysLater() {
    PlantingSeason open = planting("", "", "");
    PlantingSeason pocket = planting("", "  frost pocket 2 C colder\n", "");
    assertThat(open.choice().date()).isEqualTo("2026-05-30");
    assertThat(pocket.choice().date()).isEqualTo("2026-06-09");
    // And its autumn begins as much sooner.
    assertThat(pocket.choice().latest().orElseThrow())
        .isEqualTo(open.choice().latest().orElseThrow().minusDays(10));
    assertThat(reasons(pocket.choice().reason()))
        .anyMatch(r -> r.equals("frost pocket 2 C colder"))
        .anyMatch(r -> r.startsWith("A frost 1 °C deeper"));
  }

  @Test
  void aCoverThatGuardsToTwoDegreesLetsItOutTenDaysSooner() {
    String cover = "  cover fleece, %s from planting out, air 1 C warmer, guards to -2 C\n";
    PlantingSeason long5 = planting("", "", cover.formatted("5 weeks"));
    assertThat(long5.choice().date()).isEqualTo("2026-05-20");
    // Taken off after four days, frosts that come after that count in full.
    PlantingSeason brief = planting("", "", cover.formatted("4 days"));
    assertThat(brief.choice().date()).isEqualTo("2026-05-26");
    PlantingSeason bare =
        planting("", "", "  cover fleece, 5 weeks from planting out, air 1 C warmer\n");
    assertThat(bare.choice().date()).isEqualTo("2026-05-30");
    assertThat(reasons(bare.choice().reason())).noneMatch(r -> r.startsWith("cover"));
  }

  @Test
  void coldSoilOfTheGardenersOwnReadingHoldsItBack() {
    PlantingSeason cold = planting("  soil 13 C on 20 May\n", "", "");
    assertThat(cold.choice().earlyBound()).isEqualTo(Condition.SOIL);
    assertThat(cold.choice().date()).isBetween("2026-06-18", "2026-06-24");
    PlantingSeason warm = planting("  soil 19 C on 20 May\n", "", "");
    assertThat(warm.choice().date()).isEqualTo("2026-05-30");
    // A reading of another year tells of its day.
    PlantingSeason earlier = planting("  soil 13 C on 2024-05-20\n", "", "");
    assertThat(earlier.choice().date()).isEqualTo(cold.choice().date());
    PlantingSeason mulched =
        planting("  soil 13 C on 20 May\n", "", "  mulch black plastic, soil 3 C warmer\n");
    assertThat(mulched.choice().date()).isEqualTo(cold.choice().date().minusDays(20));
  }

  @Test
  void nothingIsGivenAsAReasonThatWasNotTested() {
    PlantingSeason unread = planting("", "", "  mulch black plastic, soil 3 C warmer\n");
    assertThat(unread.choice().chances()).doesNotContainKeys(Condition.SOIL, Condition.CHILL);
    assertThat(reasons(unread.choice().reason()))
        .noneMatch(r -> r.contains("chilled below"))
        .noneMatch(r -> r.contains("set out in soil"))
        .noneMatch(r -> r.contains("mulch"));
    PlantingSeason read = planting("  soil 19 C on 20 May\n", "", "");
    assertThat(reasons(read.choice().reason()))
        .anyMatch(r -> r.contains("set out in soil"))
        .anyMatch(r -> r.equals("soil 19 C on 20 May"))
        .noneMatch(r -> r.contains("chilled below"));
  }

  /** Peas stand to -4 °C, so that the first frosts of autumn end nothing. */
  @Test
  void hardyPlantsAreNotKilledByTheFirstFrost() {
    String text =
        Plans.SITE.replace("bed one\n", FROSTS + "bed one\n")
            + """
            line pea-row
              is a pea
            lot pea-row-1
              of pea-row
            grow pea-row-1
              in one
              start outdoors
              sow on 20 July
              seed saved
            """;
    PlantingSeason peas = Plans.season(text).plantings().get(0);
    assertThat(peas.date(Event.BLOOM_ENDS).orElseThrow().value().usual().orElseThrow())
        .isAfter("2026-09-27");
    assertThat(peas.choice().chances().get(Condition.FROST)).isCloseTo(1, within(1e-6));
  }

  private static Stream<String> reasons(Reason reason) {
    return Stream.concat(
        Stream.of(reason.says()), reason.from().stream().flatMap(CalendarDaysTest::reasons));
  }
}
