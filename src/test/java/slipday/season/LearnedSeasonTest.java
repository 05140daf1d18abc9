package slipday.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slipday.climate.WeatherRecord;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * What a line did in earlier seasons replaces its kind's figure by how much there is of it. The
 * figures are worked out here by hand: half of the kind's spread is between lines, a quarter
 * between seasons, a quarter within, so that one record counts for 1/2 and one of each of two
 * seasons for 2/3.
 */
class LearnedSeasonTest {
  private static final double TENTH = 1.2815515655446004;

  private static final String PLAN =
      Plans.SITE
          + """
          line amber
            is a muskmelon
          line rope
            is a muskmelon
          lot amber-f3
            of amber
          lot rope-25
            of rope
          grow amber-f3
            in one
            plants 8, 60 cm apart
            start indoors, 3 weeks before planting out
            plant out on 5 June
            flowers cover the chosen
            pollinate self by hand, for 4 fruits
            seed saved
          grow rope-25
            in two
            plants 8, 60 cm apart
            start indoors, 3 weeks before planting out
            plant out on 5 June
          """;

  private static final String FROSTS =
      "  last frost 18 May, 1 in 10 after 30 May\n"
          + "  first frost 27 September, 1 in 10 before 14 September\n";

  private static Season byDays(String... record) {
    String zone = "  time zone America/New_York\n";
    return Plans.season(PLAN.replace(zone, zone + FROSTS) + String.join("\n", record) + "\n");
  }

  private static Season byYears(String... record) {
    return Plans.season(PLAN + String.join("\n", record) + "\n", EVEN_SUMMERS);
  }

  private static boolean isSummer(LocalDate d) {
    return d.getMonthValue() >= 5 && d.getMonthValue() <= 9;
  }

  /** Summers of one temperature day and night: 25 °C in 2019, 17.5 °C in 2020, 20 °C otherwise. */
  private static double even(LocalDate d) {
    double summer = d.getYear() == 2019 ? 25 : d.getYear() == 2020 ? 17.5 : 20;
    return isSummer(d) ? summer : -5;
  }

  private static final WeatherRecord EVEN_SUMMERS =
      Plans.weather(LearnedSeasonTest::even, LearnedSeasonTest::even);

  private static Range ripeDays(Season season, String planting) {
    return own(season, planting).value();
  }

  private static Reasoned<Range> own(Season season, String planting) {
    return java.util.Objects.requireNonNull(
        season.planting(planting).orElseThrow().ownDays().get(Event.RIPE));
  }

  private static LocalDate usual(Season season, String planting, Event event) {
    return season
        .planting(planting)
        .orElseThrow()
        .date(event)
        .orElseThrow()
        .value()
        .usual()
        .orElseThrow();
  }

  private static List<String> lines(Reason reason) {
    return Stream.concat(
            Stream.of(reason.says()), reason.from().stream().flatMap(r -> lines(r).stream()))
        .toList();
  }

  /** Muskmelon: 35 to 46 days. One fruit of 36 days meets its middle, 40.5, half way. */
  @Test
  void withoutWeatherDaysAreCountedAsDays() {
    Season season =
        byDays(
            "2025-07-05 selfed amber-f3 plant 3, tag 3A",
            "2025-08-10 picked 3A, full slip, 1.2 kg",
            "2025-07-05 selfed amber-f3 plant 4, tag 4A",
            "2025-08-30 picked 4A, overripe",
            "2025-07-05 selfed amber-f3 plant 5, tag 5A",
            "2025-07-30 picked 5A, before ripe");
    Range days = ripeDays(season, "amber-f3");
    assertThat(days.middle()).isCloseTo(38.25, within(1e-9));
    // The spread of a fruit to come: 1/2 of half the variance is known, the rest stays: 3/4.
    double spread = 11 / (2 * TENTH) * Math.sqrt(0.75);
    assertThat(days.high() - days.middle()).isCloseTo(TENTH * spread, within(1e-9));
    List<String> why = lines(own(season, "amber-f3").reason());
    assertThat(why.get(0)).contains("its own 1 fruit in 1 season count for 50 %");
    assertThat(why)
        .contains(
            "2025-07-05 selfed amber-f3 plant 3, tag 3A", "2025-08-10 picked 3A, full slip, 1.2 kg")
        .noneMatch(l -> l.contains("4A") || l.contains("5A"))
        .anyMatch(l -> l.contains("ripe 35 to 46 days after pollination"));
    assertThat(ChronoUnit.DAYS.between(first(season), usual(season, "amber-f3", Event.RIPE)))
        .isEqualTo(38);
    assertThat(season.planting("rope-25").orElseThrow().ownDays()).isEmpty();
  }

  private static LocalDate first(Season season) {
    return usual(season, "amber-f3", Event.FIRST_FRUITING);
  }

  /**
   * 31 days at 25 °C and 62 at 17.5 °C, both counted in, are the same heat above 10 °C: 465 C-days.
   * Muskmelon's 35 to 46 days at 22 °C are 420 to 552. So (486 + 2 x 465) / 3 = 472.
   */
  @Test
  void aCoolYearDoesNotMakeALineLate() {
    Season season =
        byYears(
            "2019-07-01 selfed amber-f3 plant 3, tag 3A",
            "2019-07-31 picked 3A, full slip",
            "2020-07-01 selfed amber-f3 plant 3, tag 3A",
            "2020-08-31 picked 3A, full slip");
    assertThat(ripeDays(season, "amber-f3").middle()).isCloseTo(472 / 12.0, within(1e-6));
    List<String> why = lines(own(season, "amber-f3").reason());
    assertThat(why)
        .anyMatch(l -> l.equals("3A: 465 C-days by that season's weather"))
        .anyMatch(l -> l.contains("its own 2 fruits in 2 seasons count for 67 %"));
  }

  /** 2025 is not among the weather years: their mean summer stands in, 20.025 °C. */
  @Test
  void whereTheSeasonsWeatherIsNotKnownTheMeanStandsIn() {
    Season season =
        byYears("2025-07-01 selfed amber-f3 plant 3, tag 3A", "2025-08-11 picked 3A, full slip");
    double mean = (25 + 17.5 + 18 * 20) / 20 - 10;
    double heat = 42 * mean;
    assertThat(ripeDays(season, "amber-f3").middle())
        .isCloseTo((486 + heat) / 2 / 12, within(1e-6));
    assertThat(lines(own(season, "amber-f3").reason()))
        .anyMatch(l -> l.contains("by the mean of the weather years"));
  }

  /**
   * Melon: first flowers 335 to 391 C-days above 6.8 °C after planting out (Jenni and others 1996,
   * from the crop file). 30 days at 25 °C, both counted in, are 546; half way to it from 363 is
   * 454.5, which 20 °C give in 35 days.
   */
  @Test
  void earlierFloweringsAreReadOffTheirSeasonsWeather() {
    String[] record = {
      "2019-06-01 planted out amber-f3, 8 plants",
      "2019-06-30 first fruiting flowers amber-f3 plant 2",
      "2019-07-04 first fruiting flowers amber-f3 plant 5"
    };
    Season usual = byYears();
    Season taught = byYears(record);
    assertThat(usual(taught, "amber-f3", Event.PLANT_OUT)).isEqualTo(LocalDate.of(2026, 6, 5));
    assertThat(first(usual)).isEqualTo(LocalDate.of(2026, 6, 5).plusDays(27));
    assertThat(first(taught)).isEqualTo(LocalDate.of(2026, 6, 5).plusDays(34));
    assertThat(usual(taught, "rope-25", Event.FIRST_FRUITING))
        .isEqualTo(usual(usual, "rope-25", Event.FIRST_FRUITING));
    List<String> why =
        lines(
            taught
                .planting("amber-f3")
                .orElseThrow()
                .date(Event.FIRST_FRUITING)
                .orElseThrow()
                .reason());
    assertThat(why)
        .contains("2019-06-30 first fruiting flowers amber-f3 plant 2")
        .anyMatch(l -> l.contains("its own 1 planting in 1 season count for 50 %"));
  }

  @Test
  void aFloweringWithoutTheDayItCountsFromTeachesNothing() {
    assertThat(first(byYears("2019-06-30 first fruiting flowers amber-f3")))
        .isEqualTo(first(byYears()));
  }

  /** Males earlier by 7 to 14 days; once 4 days earlier: half way from 10.5 is 7.25. */
  @Test
  void howMuchEarlierTheMalesComeIsLearned() {
    Season season =
        byDays(
            "2025-06-20 first male flowers amber-f3", "2025-06-24 first fruiting flowers amber-f3");
    assertThat(ChronoUnit.DAYS.between(usual(season, "amber-f3", Event.FIRST_MALE), first(season)))
        .isEqualTo(7);
    Season usual = byDays();
    assertThat(ChronoUnit.DAYS.between(usual(usual, "amber-f3", Event.FIRST_MALE), first(usual)))
        .isEqualTo(11);
  }

  /** This season's own first flowers stand for themselves and teach its planting nothing more. */
  @Test
  void aPlantingIsNotTaughtByItself() {
    String[] record = {
      "2026-06-05 planted out amber-f3, 8 plants", "2026-07-20 first fruiting flowers amber-f3"
    };
    Season season = byDays(record);
    assertThat(first(season)).isEqualTo(LocalDate.of(2026, 7, 20));
    assertThat(
            season
                .planting("amber-f3")
                .orElseThrow()
                .date(Event.FIRST_FRUITING)
                .orElseThrow()
                .reason()
                .says())
        .isEqualTo("2026-07-20 first fruiting flowers amber-f3");
  }

  /** Melons share one figure of take; squash would not. Emasculated crosses have their own. */
  @Test
  void allThatShareAFigureOfTakeTeachIt() {
    Season season =
        byDays(
            "2025-07-05 selfed amber-f3 plant 3, tag 3A",
            "2025-07-12 took 3A",
            "2025-07-05 sibbed rope-25 plant 1 by plant 2, tag R1",
            "2025-07-12 took R1",
            "2025-07-04 emasculated rope-25 plant 2",
            "2025-07-05 crossed rope-25 plant 2 by amber-f3 plant 1, tag X1",
            "2025-07-12 failed X1");
    Reasoned<Double> take = season.pollinations().get(0).take();
    // 15 % worth 20 flowers, and two that took on two vines: 5 of 22.
    assertThat(take.value()).isCloseTo(5.0 / 22, within(1e-9));
    assertThat(lines(take.reason()))
        .contains("2025-07-12 took R1")
        .doesNotContain("2025-07-12 failed X1");
  }
}
