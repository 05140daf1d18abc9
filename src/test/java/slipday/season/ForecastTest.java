package slipday.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import slipday.climate.WeatherRecord;

/** The walk through made weather, in which every date can be worked out by hand. */
class ForecastTest {
  private static final String MELON =
      """
      line ours
        is a muskmelon
        first flowers 30 days after planting out
        ripe 40 days after pollination
        males earlier by 10 days
        blooms for 35 days
      lot ours-1
        of ours
      grow ours-1
        in one
        plants 6
        start indoors, 3 weeks before planting out
      """;

  private static boolean between(LocalDate d, int fromMonth, int fromDay, int toMonth, int toDay) {
    MonthDay day = MonthDay.from(d);
    return !day.isBefore(MonthDay.of(fromMonth, fromDay))
        && !day.isAfter(MonthDay.of(toMonth, toDay));
  }

  /** Steady 22 °C from 10 May to 20 September, freezing outside of it. */
  private static WeatherRecord steadySummer() {
    return Plans.weather(
        d -> between(d, 5, 10, 9, 20) ? 22 : -5, d -> between(d, 5, 10, 9, 20) ? 22 : -1);
  }

  private static LocalDate usual(Season season, Event event) {
    return season.plantings().get(0).date(event).orElseThrow().value().usual().orElseThrow();
  }

  @Test
  void atTheReferenceTemperatureDaysAreDays() {
    Season season =
        Plans.season(
            Plans.SITE + MELON.replace("plants 6", "plants 6\n  plant out on 1 June"),
            steadySummer());
    assertThat(usual(season, Event.SOW)).isEqualTo("2026-05-11");
    assertThat(usual(season, Event.PLANT_OUT)).isEqualTo("2026-06-01");
    // The first day of heat is the day of planting out itself, so the 30th is 30 June.
    assertThat(usual(season, Event.FIRST_FRUITING)).isEqualTo("2026-06-30");
    assertThat(usual(season, Event.FIRST_MALE)).isEqualTo("2026-06-20");
    assertThat(usual(season, Event.RIPE)).isEqualTo("2026-08-08");
    assertThat(usual(season, Event.BLOOM_ENDS)).isEqualTo("2026-08-03");
  }

  @Test
  void aCoolSeasonStretchesRipening() {
    WeatherRecord cool =
        Plans.weather(
            d -> between(d, 5, 10, 6, 30) ? 22 : between(d, 7, 1, 9, 20) ? 16 : -5,
            d -> between(d, 5, 10, 6, 30) ? 22 : between(d, 7, 1, 9, 20) ? 16 : -1);
    Season season =
        Plans.season(
            Plans.SITE + MELON.replace("plants 6", "plants 6\n  plant out on 1 June"), cool);
    // 12 C-days a day at 22 °C above 10 °C; 6 at 16 °C: 39 days' worth takes 78.
    assertThat(usual(season, Event.RIPE)).isEqualTo("2026-09-16");
  }

  @Test
  void theFirstDayPastTheFrostIsChosenAndFrostBindsIt() {
    Season season = Plans.season(Plans.SITE + MELON, steadySummer());
    DateChoice choice = season.plantings().get(0).choice();
    assertThat(choice.possible()).isTrue();
    assertThat(choice.earlyBound()).isIn(Condition.FROST, Condition.SOIL, Condition.CHILL);
    // The last freeze is on 9 May.
    assertThat(choice.earliest().orElseThrow()).isAfterOrEqualTo("2026-05-09");
    // Ripe takes 30 + 40 days to before 21 September: the last start is about 13 July.
    assertThat(choice.latest().orElseThrow()).isBetween("2026-07-10", "2026-07-14");
    assertThat(choice.lateBound()).isEqualTo(Condition.RIPENING);
  }

  @Test
  void coldSoilBindsWhereTheAirIsSafe() {
    // Frost-free all spring, but the soil is at 12 °C until the end of May.
    WeatherRecord lateWarmth =
        Plans.weather(
            d -> between(d, 6, 1, 10, 15) ? 22 : between(d, 3, 1, 5, 31) ? 12 : -5,
            d -> between(d, 6, 1, 10, 15) ? 22 : between(d, 3, 1, 5, 31) ? 12 : -1);
    DateChoice choice = Plans.season(Plans.SITE + MELON, lateWarmth).plantings().get(0).choice();
    assertThat(choice.earlyBound()).isEqualTo(Condition.SOIL);
    assertThat(choice.earliest().orElseThrow()).isBetween("2026-05-27", "2026-06-12");
  }

  @Test
  void anImpossibleSeasonSaysWhatWouldHelp() {
    WeatherRecord brief =
        Plans.weather(
            d -> between(d, 6, 10, 8, 10) ? 22 : -5, d -> between(d, 6, 10, 8, 10) ? 22 : -1);
    DateChoice choice = Plans.season(Plans.SITE + MELON, brief).plantings().get(0).choice();
    assertThat(choice.possible()).isFalse();
    assertThat(choice.mends()).isNotEmpty();
  }

  @Test
  void aFixedDateIsKeptAndJudged() {
    Season season =
        Plans.season(
            Plans.SITE + MELON.replace("plants 6", "plants 6\n  plant out on 1 May"),
            steadySummer());
    DateChoice choice = season.plantings().get(0).choice();
    assertThat(choice.fixed()).isTrue();
    assertThat(choice.date()).isEqualTo("2026-05-01");
    assertThat(choice.chances().get(Condition.FROST)).isEqualTo(0);
    assertThat(choice.earliest().orElseThrow()).isAfter("2026-05-01");
  }

  @Test
  void aTunnelThatGuardsLetsItOutEarlier() {
    // Light frosts of -1 °C until 20 May.
    WeatherRecord lightFrosts =
        Plans.weather(
            d -> between(d, 5, 21, 9, 30) ? 15 : between(d, 4, 1, 5, 20) ? -1 : -8,
            d -> between(d, 5, 21, 9, 30) ? 29 : between(d, 4, 1, 5, 20) ? 27 : -3);
    String guarded =
        MELON.replace(
            "plants 6",
            "plants 6\n  mulch black plastic, soil 8 C warmer\n"
                + "  cover tunnel, 5 weeks from planting out, air 12 C warmer, guards to -2 C");
    DateChoice open = Plans.season(Plans.SITE + MELON, lightFrosts).plantings().get(0).choice();
    DateChoice under = Plans.season(Plans.SITE + guarded, lightFrosts).plantings().get(0).choice();
    assertThat(under.date()).isBefore(open.date());
  }

  @Test
  void withoutWeatherTheGardenersFrostsServe() {
    String site =
        Plans.SITE.replace(
            "bed one",
            "  last frost 18 May, 1 in 10 after 30 May\n"
                + "  first frost 27 September, 1 in 10 before 14 September\nbed one");
    Season season = Plans.season(site + MELON);
    PlantingSeason p = season.plantings().get(0);
    assertThat(p.model()).isEqualTo(Model.CALENDAR_DAYS);
    // One year in ten has a frost after 30 May, and that is the risk taken by default.
    assertThat(p.choice().date()).isEqualTo("2026-05-30");
    assertThat(p.choice().chances().get(Condition.FROST)).isCloseTo(0.9, within(1e-6));
    assertThat(usual(season, Event.FIRST_FRUITING)).isEqualTo("2026-06-29");
  }

  @Test
  void aBiennialDoesNotFlowerInItsFirstYear() {
    String carrots =
        """
        line long-root
          is a carrot
        lot long-root-1
          of long-root
        grow long-root-1
          in one
        """;
    PlantingSeason p = Plans.season(Plans.SITE + carrots, steadySummer()).plantings().get(0);
    assertThat(p.flowers()).isFalse();
    assertThat(p.date(Event.SOW)).isPresent();
  }

  @Test
  void theSouthernSeasonCrossesTheNewYear() {
    String southern =
        Plans.SITE
            .replace("season 2026", "season 2026-27")
            .replace("44 N, 72 W", "38 S, 145 E")
            .replace("America/New_York", "Australia/Melbourne");
    WeatherRecord record =
        Plans.weather(
            d -> between(d, 4, 21, 10, 20) ? -2 : 18, d -> between(d, 4, 21, 10, 20) ? 8 : 28);
    PlantingSeason p = Plans.season(southern + MELON, record).plantings().get(0);
    assertThat(p.choice().date()).isBetween("2026-10-20", "2026-11-15");
    assertThat(p.date(Event.RIPE).orElseThrow().value().usual().orElseThrow())
        .isBetween("2026-12-20", "2027-02-15");
  }

  /** As in the tropics, where a record has no frost to count. */
  @Test
  void whereItNeverFreezesFrostStandsInNoDaysWay() {
    Season season = Plans.season(Plans.SITE + MELON, Plans.weather(d -> 22, d -> 22));
    DateChoice choice = season.plantings().get(0).choice();
    assertThat(choice.possible()).isTrue();
    assertThat(choice.chances()).containsEntry(Condition.FROST, 1.0);
    assertThat(choice.lateBound()).isEqualTo(Condition.CALENDAR);
    assertThat(usual(season, Event.RIPE)).isAfter(choice.date());
  }

  /** No soil is ever warm enough; the best day is all the same one past the frost. */
  @Test
  void theBestDayOfAHopelessSpringIsNotInWinter() {
    WeatherRecord cold =
        Plans.weather(
            d -> between(d, 5, 20, 9, 10) ? 9 : -8, d -> between(d, 5, 20, 9, 10) ? 15 : -1);
    DateChoice choice = Plans.season(Plans.SITE + MELON, cold).plantings().get(0).choice();
    assertThat(choice.possible()).isFalse();
    assertThat(choice.date()).isBetween("2026-05-20", "2026-09-10");
    assertThat(choice.chances()).containsEntry(Condition.FROST, 1.0);
  }

  @Test
  void bothDaysFixedMakeTheAgeOfItsSeedlings() {
    String fixed = "plants 6\n  sow on 21 May\n  plant out on 1 June";
    String older = "\ngrow ours-1 as older\n  plants 6\n  sow on 1 May\n  plant out on 1 June";
    Season season =
        Plans.season(Plans.SITE + MELON.replace("plants 6", fixed) + older, steadySummer());
    assertThat(usual(season, Event.SOW)).isEqualTo("2026-05-21");
    // At 21 °C a melon is up in a week, and hardened off from then on at the soonest.
    assertThat(usual(season, Event.EMERGED)).isEqualTo("2026-05-28");
    assertThat(usual(season, Event.HARDEN)).isEqualTo("2026-05-28");
    PlantingSeason second = season.plantings().get(1);
    assertThat(second.date(Event.EMERGED).orElseThrow().value().usual())
        .contains(day("2026-05-08"));
    assertThat(second.date(Event.HARDEN).orElseThrow().value().usual()).contains(day("2026-05-23"));
  }

  @Test
  void nothingIsHardenedOffThatIsNotUp() {
    String soon = MELON.replace("3 weeks before", "5 days before");
    Season season = Plans.season(Plans.SITE + soon, steadySummer());
    assertThat(season.plantings().get(0).date(Event.HARDEN)).isEmpty();
  }

  private static LocalDate day(String text) {
    return LocalDate.parse(text);
  }
}
