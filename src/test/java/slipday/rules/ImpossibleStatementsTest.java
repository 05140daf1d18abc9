package slipday.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.finding.Finding;

/** Days and counts that each read well and can't be true together. */
class ImpossibleStatementsTest {
  private static final String SEED =
      """
      line ropewalk
        is a           muskmelon

      lot ropewalk-2024
        of             ropewalk

      grow ropewalk-2024
      """;

  private static String site(String latitude, String last, String first) {
    return """
    season %s

    site garden
      place          45 %s, 147 E
      time zone      Australia/Hobart
      last frost     %s
      first frost    %s
    """
        .formatted(latitude.equals("S") ? "2026-27" : "2026", latitude, last, first);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "N | 18 May, 1 in 10 after 30 May   | 27 September, 1 in 10 before 14 September",
        "N | 18 May                         | 27 September",
        "N | 28 February, 10 % after 29 February | 27 September",
        "S | 20 October, 1 in 10 after 5 November | 5 May, 1 in 10 before 18 April",
        "S | 20 December, 1 in 10 after 5 January | 5 March",
      })
  void frostDatesInTheirOrderAreFine(String latitude, String last, String first) {
    assertThat(Plans.of(Plans.check(site(latitude, last, first)), "impossible-date")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "N | 27 September | 18 May | The last frost of spring comes after the first frost of"
            + " autumn.",
        "S | 18 May | 27 September | The last frost of spring comes after the first frost of"
            + " autumn.",
        "N | 18 May, 1 in 10 after 8 May | 27 September | `8 May` is not later than the usual day.",
        "N | 18 May | 27 September, 1 in 10 before 30 September | `30 September` is not earlier"
            + " than the usual day.",
        "N | 18 May, 50 % after 30 May | 27 September | The odds of frost after `30 May` are more"
            + " than none and less than half of the years.",
        "S | 20 October | 5 May, 0 % before 18 April | The odds of frost before `18 April` are more"
            + " than none and less than half of the years.",
      })
  void frostDatesOutOfOrderAreTold(String latitude, String last, String first, String message) {
    assertThat(Plans.of(Plans.check(site(latitude, last, first)), "impossible-date"))
        .extracting(Finding::message)
        .containsExactly(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plants 0 | impossible-count",
        "pollinate self by hand, for 0 fruits | impossible-count",
        "start indoors, 3000 weeks before planting out | impossible-count",
      })
  void countsThatCannotBeAreTold(String clause, String rule) {
    String plan = RulePage.preamble() + "\n" + SEED + "  " + clause + "\n";
    assertThat(Plans.of(Plans.check(plan), rule)).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "raise sweetness to 13 brix, matters -1 | -1",
        "lower sweetness to 3 brix, matters -0.5 | -0.5",
        "keep fruit weight at 1 kg to 2 kg, matters 100000000 | 100000000",
        "raise sweetness to 13 brix, matters 0 |",
        "parents 0 or more | 0",
        "parents 1 or more |",
      })
  void aGoalWantsSomethingOfSomePlants(String clause, String wrong) {
    String plan = RulePage.preamble() + "\n" + SEED + "  plants 6\n\ngoal ropewalk\n  ";
    assertThat(Plans.of(Plans.check(plan + clause + "\n"), "impossible-figure"))
        .extracting(f -> f.place().orElseThrow().span().text())
        .isEqualTo(wrong == null ? List.of() : List.of(wrong));
  }

  @Test
  void sowingAfterPlantingOutIsTold() {
    String plan = RulePage.preamble() + "\n" + SEED + "  start indoors\n  plant out on 1 June\n";
    assertThat(Plans.of(Plans.check(plan + "  sow on 20 June\n"), "impossible-date")).hasSize(1);
    assertThat(Plans.of(Plans.check(plan + "  sow on 8 May\n"), "impossible-date")).isEmpty();
  }

  /** A take of none or of all leaves doubt, and no fault of reckoning. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 %, as sure as 20 flowers",
        "100 %, as sure as 20 flowers",
      })
  void anyShareMayTake(String take) {
    String plan =
        RulePage.preamble()
            + "\n"
            + SEED.replace("muskmelon\n", "muskmelon\n  take " + take + "\n")
            + "  plants 8\n  flowers cover the chosen\n  pollinate self by hand, for 2 fruits\n";
    List<Finding> found = Plans.of(Plans.check(plan), "too-few-flowers");
    assertThat(Plans.check(plan).season()).isPresent();
    assertThat(found.isEmpty()).isEqualTo(take.startsWith("100"));
  }

  @Test
  void seedOfTheFutureIsTold() {
    String plan = RulePage.preamble() + "\n" + SEED;
    String lot = "of             ropewalk\n";
    assertThat(
            Plans.of(
                Plans.check(plan.replace(lot, lot + "  harvested 2035\n")), "date-outside-season"))
        .hasSize(1);
    assertThat(
            Plans.of(
                Plans.check(plan.replace(lot, lot + "  harvested 2025\n")), "date-outside-season"))
        .isEmpty();
  }

  @Test
  void aSeasonOfTheOtherHalfIsTold() {
    String rule = "season-of-other-half";
    String plan = site("S", "20 October", "5 May") + "\n" + SEED + "  plants 6\n";
    assertThat(Plans.of(Plans.check(plan.replace("2026-27", "2026")), rule))
        .singleElement()
        .satisfies(f -> assertThat(f.help()).contains("Write `season 2026-27`"));
    assertThat(Plans.of(Plans.check(plan), rule)).isEmpty();
    String northern = RulePage.preamble() + "\n" + SEED;
    assertThat(Plans.of(Plans.check(northern.replace("2026\n", "2026-27\n")), rule))
        .singleElement()
        .satisfies(f -> assertThat(f.help()).contains("Write `season 2026`"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tested 44 of 50 in 1999 | The test is older than the seed.",
        "tested 44 of 50 in 2090 | The test is of a year yet to come.",
        "tested 44 of 50 in 2026 |",
      })
  void aTestIsOfSeedThatWasThere(String tested, String message) {
    String plan =
        RulePage.preamble()
            + "\n"
            + SEED.replace(
                "of             ropewalk\n", "of ropewalk\n  harvested 2024\n  " + tested + "\n");
    assertThat(Plans.of(Plans.check(plan), "date-outside-season"))
        .extracting(Finding::message)
        .isEqualTo(message == null ? List.of() : List.of(message));
  }

  @Test
  void aHarvestYetToComeIsToldOnce() {
    String lot = "of             ropewalk\n";
    String plan = RulePage.preamble() + "\n" + SEED;
    String wrong = lot + "  harvested 2029\n  tested 44 of 50 in 2025\n";
    assertThat(Plans.of(Plans.check(plan.replace(lot, wrong)), "date-outside-season"))
        .extracting(Finding::message)
        .containsExactly("Seed can't be in hand before it is harvested.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bloom apart from ropewalk-2024 | 1",
        "flowers caged with ropewalk-2024 | 1",
        "flowers caged | 0",
      })
  void nothingIsApartFromItself(String clause, int found) {
    String plan = RulePage.preamble() + "\n" + SEED + "  plants 8\n  " + clause + "\n";
    assertThat(Plans.of(Plans.check(plan), "with-itself")).hasSize(found);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "picked ropewalk-2024 plant 1, 1.62 kg less 0 kg, 12.4 brix | 0",
        "picked ropewalk-2024 plant 1, 9000 kg | 1",
        "picked ropewalk-2024 plant 1, 124 brix | 1",
        "weighed ropewalk-2024 plant 1, 0 kg | 1",
        "measured ropewalk-2024 plant 1, length 2100 m | 1",
      })
  void figuresOfTheRecordAreOfThisWorld(String line, int found) {
    String plan = RulePage.preamble() + "\n" + SEED + "  plants 8\n2026-08-20 " + line + "\n";
    assertThat(Plans.of(Plans.check(plan), "impossible-figure")).hasSize(found);
  }

  /** A digit too many, a unit mistaken: outside of what can be. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "site    | frost risk 100 %                       | `100 %`",
        "site    | soil 300 C on 10 May                   | `300 C`",
        "site    | colder than the station by 30 C        | `30 C`",
        "site    | hands 0, 10 flowers each               | `0`",
        "bed     | size 0 m x 1 m                         | `0 m`",
        "bed     | frost pocket 100 C colder              | `100 C`",
        "bed     | vines may trail 2000 m beyond          | `2000 m`",
        "planting | plants 6, 0 cm apart                  | `0 cm`",
        "planting | start indoors, at 300 C               | `300 C`",
        "planting | start indoors, 0 weeks before planting out | `0 weeks`",
        "planting | mulch straw, soil 90 C cooler         | `90 C`",
        "planting | cover fleece, 5 weeks from planting out, air 200 C warmer | `200 C`",
        "planting | cover fleece, 0 days from planting out, air 2 C warmer    | `0 days`",
        "line    | take 15 %, as sure as 0 flowers        | `0`",
        "line    | ripe 0 days after pollination          | `0 days`",
        "crop    | growth above 60 C                      | `60 C`",
        "crop    | growth above 30 C, up to 20 C          | `20 C`",
        "crop    | first flowers 300 C-days after emergence, above 30 C, up to 20 C | `20 C`",
        "crop    | heat at flowering 40 C hinders, 35 C ends it | `35 C`",
        "crop    | area 0 sqm a plant                     | `0 sqm`",
        "crop    | emerges 0 days in soil of 20 C         | `0 days`",
        "crop    | seed keeps 0 years                     | `0`",
      })
  void figuresOutsideOfTheWorldAreTold(String under, String clause, String place) {
    String line = "  " + clause + "\n";
    String plan =
        RulePage.preamble()
            + "\n"
            + (under.equals("site") ? line : "")
            + "bed one\n"
            + (under.equals("bed") ? line : "")
            + "crop hill-melon\n  of melon\n  ripe 35 to 46 days after pollination\n"
            + (under.equals("crop") ? line : "")
            + SEED.replace("muskmelon\n", "hill-melon\n" + (under.equals("line") ? line : ""))
            + (under.equals("planting") ? line : "");
    assertThat(Plans.check(plan.replace(line, "")).season()).isPresent();
    assertThat(Plans.check(plan).findings())
        .filteredOn(f -> f.rule().equals("impossible-figure"))
        .extracting(Finding::message)
        .singleElement()
        .asString()
        .startsWith(place + " is ");
  }
}
