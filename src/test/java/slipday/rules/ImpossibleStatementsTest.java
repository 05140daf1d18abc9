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

      lot ropewalk-2025
        of             ropewalk

      grow ropewalk-2025
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
        .formatted(latitude.equals("S") ? "2027-28" : "2027", latitude, last, first);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "N | 18 May, 1 in 10 after 30 May   | 27 September, 1 in 10 before 14 September",
        "N | 18 May                         | 27 September",
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
        "N | 27 September | 18 May | The last frost of spring comes after the first frost of autumn.",
        "S | 18 May | 27 September | The last frost of spring comes after the first frost of autumn.",
        "N | 18 May, 1 in 10 after 8 May | 27 September | `8 May` is not later than the usual day.",
        "N | 18 May | 27 September, 1 in 10 before 30 September | `30 September` is not earlier than the usual day.",
        "N | 18 May, 50 % after 30 May | 27 September | The odds of frost after `30 May` are more than none and less than half of the years.",
        "S | 20 October | 5 May, 0 % before 18 April | The odds of frost before `18 April` are more than none and less than half of the years.",
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
        "15 %, as sure as 0 flowers"
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
                Plans.check(plan.replace(lot, lot + "  harvested 2026\n")), "date-outside-season"))
        .isEmpty();
  }

  @Test
  void aSouthernSeasonOfOneYearIsExplained() {
    String plan = site("S", "20 October", "5 May") + "\n" + SEED + "  plants 6\n";
    assertThat(Plans.of(Plans.check(plan.replace("2027-28", "2027")), "impossible-season"))
        .singleElement()
        .satisfies(f -> assertThat(f.help()).contains("write `season 2027-28`"));
    assertThat(Plans.of(Plans.check(plan), "impossible-season")).isEmpty();
  }
}
