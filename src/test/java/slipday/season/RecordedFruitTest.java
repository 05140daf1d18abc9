package slipday.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slipday.finding.Finding;
import slipday.measure.Basis;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.rules.Checker;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreKind;
import slipday.season.chore.Chores;

/** What is recorded of marked fruit and of plants that are gone overrides what was forecast. */
class RecordedFruitTest {
  private static final String PLAN =
      Plans.SITE.replace(
              "  time zone America/New_York\n",
              "  time zone America/New_York\n"
                  + "  last frost 18 May, 1 in 10 after 30 May\n"
                  + "  first frost 27 September, 1 in 10 before 14 September\n")
          + """
          line amber
            is a muskmelon
          line pickle
            is a pickling-cucumber
          lot amber-f3
            of amber
          lot pickle-26
            of pickle
          grow amber-f3
            in one
            plants 8, 60 cm apart
            start indoors, 3 weeks before planting out
            flowers cover the chosen
            pollinate self by hand, for 4 fruits from 3 plants or more
            seed saved
          grow pickle-26
            in two
            plants 4, 40 cm apart
            start indoors, 3 weeks before planting out
            flowers cover the chosen
            pollinate sib by hand, for 1 fruits
            seed saved
          """;

  private static Season season(String... record) {
    return Plans.season(PLAN + String.join("\n", record) + "\n");
  }

  private static PollinationPlan plan(Season season, String subject) {
    return season.pollinations().stream()
        .filter(p -> p.subject().equals(subject))
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Reasoned<DateSpread>> date(Season season, String planting, Event event) {
    return season.planting(planting).orElseThrow().date(event);
  }

  private static List<Chore> chores(Season season, ChoreKind kind, String subject) {
    return Chores.of(season).chores().stream()
        .filter(c -> c.kind() == kind && c.subject().equals(subject))
        .toList();
  }

  private static List<String> lines(Reason reason) {
    return Stream.concat(
            Stream.of(reason.says()), reason.from().stream().flatMap(r -> lines(r).stream()))
        .toList();
  }

  @Test
  void theFirstFruitPickedInItsTimeIsTheDayItWasRipe() {
    Season season =
        season(
            "2026-07-05 selfed amber-f3 plant 1, tag 1A",
            "2026-07-06 selfed amber-f3 plant 2, tag 2A",
            "2026-08-01 picked 2A, before ripe",
            "2026-08-08 picked 1A, full slip");
    for (Event event : List.of(Event.RIPE, Event.SEED_RIPE)) {
      Reasoned<DateSpread> ripe = date(season, "amber-f3", event).orElseThrow();
      assertThat(ripe.value()).isEqualTo(DateSpread.decided(LocalDate.of(2026, 8, 8)));
      assertThat(ripe.reason().basis()).isEqualTo(Basis.RECORD);
    }
  }

  /** A cucumber is eaten long before its seed is full; a marked one hangs till then. */
  @Test
  void whereSeedFillsLaterOnlyMarkedFruitTellsOfIt() {
    Season season =
        season(
            "2026-07-05 sibbed pickle-26 plant 1 by plant 2, tag P1",
            "2026-07-20 picked pickle-26, 6 fruits, 0.8 kg",
            "2026-08-28 picked P1");
    assertThat(date(season, "pickle-26", Event.RIPE).orElseThrow().value().usual())
        .contains(LocalDate.of(2026, 7, 20));
    assertThat(date(season, "pickle-26", Event.SEED_RIPE).orElseThrow().value().usual())
        .contains(LocalDate.of(2026, 8, 28));
  }

  @Test
  void aMarkedFruitIsExpectedFromItsOwnPollination() {
    Season season =
        season(
            "2026-07-05 selfed amber-f3 plant 1, tag 1A",
            "2026-07-25 selfed amber-f3 plant 2, tag 2A",
            "2026-07-06 sibbed pickle-26 plant 1 by plant 2, tag P1");
    assertThat(season.fruits()).extracting(MarkedFruit::tag).containsExactly("1A", "P1", "2A");
    // Muskmelon: ripe 35 to 46 days after pollination, by calendar days without weather.
    for (MarkedFruit fruit : List.of(season.fruits().get(0), season.fruits().get(2))) {
      DateSpread spread = fruit.expected().value();
      assertThat(spread.early()).contains(fruit.pollinated().plusDays(35));
      assertThat(spread.usual()).contains(fruit.pollinated().plusDays(41));
      assertThat(lines(fruit.expected().reason()).get(1)).contains("selfed amber-f3");
    }
    MarkedFruit cucumber = season.fruits().get(1);
    assertThat(cucumber.ripens()).isEqualTo(Event.SEED_RIPE);
    assertThat(cucumber.expected().value().early()).contains(LocalDate.of(2026, 8, 15));
  }

  @Test
  void aPickedFruitIsNoMoreExpected() {
    Season before = season("2026-07-05 selfed amber-f3 plant 1, tag 1A", "2026-07-12 took 1A");
    assertThat(chores(before, ChoreKind.LOOK_AT_FRUIT, "amber-f3").get(0).description())
        .anyMatch(s -> s.contains("1A, pollinated 5 July, from 9 August, usually 15 August"));
    Season after =
        season(
            "2026-07-05 selfed amber-f3 plant 1, tag 1A",
            "2026-07-12 took 1A",
            "2026-08-08 picked 1A, full slip");
    assertThat(after.fruits()).noneMatch(MarkedFruit::hangs);
    assertThat(chores(after, ChoreKind.LOOK_AT_FRUIT, "amber-f3").get(0).description())
        .noneMatch(s -> s.contains("1A"));
  }

  @Test
  void whatWaitsForItsTakeIsSoManyFlowersLess() {
    PollinationPlan none = plan(season(), "amber-f3");
    PollinationPlan two =
        plan(
            season(
                "2026-07-05 selfed amber-f3 plant 1, tag 1A",
                "2026-07-05 selfed amber-f3 plant 2, tag 2A"),
            "amber-f3");
    assertThat(two.waiting()).isEqualTo(2);
    assertThat(two.left()).isEqualTo(4);
    assertThat(two.flowersLikely()).isEqualTo(none.flowersLikely() - 2);
    // The figure of the crop, 15 %: 4 - 2 x 0.15.
    assertThat(two.stillWanted()).isCloseTo(3.7, within(1e-9));
  }

  @Test
  void pollinationGoesOnAfterTheLastThatWasDone() {
    PollinationPlan plan = plan(season("2026-07-20 selfed amber-f3 plant 1, tag 1A"), "amber-f3");
    assertThat(plan.from()).contains(LocalDate.of(2026, 7, 21));
    assertThat(plan.flowersOn(LocalDate.of(2026, 7, 20))).isZero();
    assertThat(plan.flowersOn(LocalDate.of(2026, 7, 21))).isEqualTo(plan.aMorning());
    assertThat(plan.flowersOn(plan.until().orElseThrow().plusDays(1))).isZero();
  }

  /** Four fruits set, on so many plants. */
  private static String[] set(int... plants) {
    Stream.Builder<String> lines = Stream.builder();
    for (int i = 0; i < plants.length; i++) {
      lines.add("2026-07-0" + (5 + i) + " selfed amber-f3 plant " + plants[i] + ", tag T" + i);
      lines.add("2026-07-1" + (3 + i) + " took T" + i);
    }
    return lines.build().toArray(String[]::new);
  }

  private static String[] and(String[] record, String... more) {
    return Stream.concat(Stream.of(record), Stream.of(more)).toArray(String[]::new);
  }

  @Test
  void enoughSetWithdrawsTheChores() {
    Season season = season(set(1, 2, 3, 3));
    assertThat(plan(season, "amber-f3").left()).isZero();
    for (ChoreKind kind :
        List.of(
            ChoreKind.COVER,
            ChoreKind.POLLINATE,
            ChoreKind.UNCOVER,
            ChoreKind.CHECK_TAKE,
            ChoreKind.STOP)) {
      assertThat(chores(season, kind, "amber-f3")).as(kind.id()).isEmpty();
      assertThat(chores(season(), kind, "amber-f3")).as(kind.id()).isNotEmpty();
    }
  }

  @Test
  void enoughFruitsOnTooFewPlantsAreNotEnough() {
    PollinationPlan plan = plan(season(set(1, 1, 2, 2)), "amber-f3");
    assertThat(plan.set()).isEqualTo(4);
    assertThat(plan.left()).isEqualTo(1);
    assertThat(plan.flowersLikely()).isPositive();
  }

  /**
   * The fruit of a plant that is rogued, off-type or bitter is no seed; of a dead one, if green.
   */
  @Test
  void fruitOfALostPlantIsWantedAgain() {
    for (String loss :
        List.of(
            "2026-07-25 rogued amber-f3 plant 3, netted fruit",
            "2026-07-25 off-type seen amber-f3 plant 3, netted fruit",
            "2026-07-25 tasted amber-f3 plant 3, bitter",
            "2026-07-25 died amber-f3 plant 3, wilt")) {
      PollinationPlan plan = plan(season(and(set(1, 2, 3, 3), loss)), "amber-f3");
      assertThat(plan.set()).as(loss).isEqualTo(2);
      assertThat(plan.left()).as(loss).isEqualTo(2);
      assertThat(lines(plan.reason())).as(loss).contains(loss);
    }
    PollinationPlan picked =
        plan(
            season(
                and(
                    set(1, 2, 3, 3),
                    "2026-08-10 picked T2, full slip",
                    "2026-08-11 picked T3, full slip",
                    "2026-08-12 died amber-f3 plant 3, wilt")),
            "amber-f3");
    assertThat(picked.set()).isEqualTo(4);
  }

  @Test
  void aTakeThatWaitsIsCheckedThoughNothingMoreIsPollinated() {
    Season season = season(and(set(1, 2, 3, 3), "2026-07-16 selfed amber-f3 plant 4, tag 4A"));
    assertThat(chores(season, ChoreKind.POLLINATE, "amber-f3")).isEmpty();
    assertThat(chores(season, ChoreKind.CHECK_TAKE, "amber-f3"))
        .singleElement()
        .satisfies(c -> assertThat(c.time().lastDay()).isEqualTo(LocalDate.of(2026, 7, 23)));
  }

  @Test
  void seedThatIsTakenIsNotToBeTaken() {
    String[] picked = {
      "2026-07-05 sibbed pickle-26 plant 1 by plant 2, tag P1", "2026-08-28 picked P1"
    };
    assertThat(chores(season(picked), ChoreKind.TAKE_SEED, "pickle-26")).isNotEmpty();
    Season saved = season(and(picked, "2026-09-05 saved P1, 120 seeds, into pickle-27"));
    assertThat(chores(saved, ChoreKind.TAKE_SEED, "pickle-26")).isEmpty();
  }

  @Test
  void nothingIsExpectedOfPlantsThatAreGone() {
    Season season =
        season(
            "2026-06-05 planted out amber-f3, 5 plants",
            "2026-06-12 died amber-f3, 3 plants, cutworms",
            "2026-06-13 died amber-f3 plant 4, cutworms",
            "2026-06-14 died amber-f3 plant 5, cutworms");
    PlantingSeason amber = season.planting("amber-f3").orElseThrow();
    assertThat(amber.gone().orElseThrow().value()).isEqualTo(LocalDate.of(2026, 6, 14));
    assertThat(amber.dates()).containsKeys(Event.SOW, Event.PLANT_OUT);
    assertThat(amber.dates()).doesNotContainKeys(Event.FIRST_FRUITING, Event.RIPE);
    assertThat(season.pollinations()).noneMatch(p -> p.subject().equals("amber-f3"));
    assertThat(season.exposures()).noneMatch(e -> e.source().name().equals("amber-f3"));
    assertThat(Chores.of(season).chores())
        .noneMatch(
            c -> c.subject().equals("amber-f3") && c.kind().compareTo(ChoreKind.PLANT_OUT) > 0);
    assertThat(Checker.check(season))
        .filteredOn(f -> f.subject().equals("amber-f3"))
        .extracting(Finding::rule)
        .doesNotContain(
            "fruit-not-ripe-before-frost", "seed-not-ripe-before-frost", "too-few-flowers");
  }

  @Test
  void aBloomThatWasCutShortEndsThatDay() {
    Season season =
        season(
            "2026-07-01 first fruiting flowers amber-f3",
            "2026-07-03 selfed amber-f3 plant 1, tag 1A",
            "2026-07-15 died amber-f3, 8 plants, hail");
    assertThat(date(season, "amber-f3", Event.BLOOM_ENDS).orElseThrow().value().usual())
        .contains(LocalDate.of(2026, 7, 14));
    assertThat(date(season, "amber-f3", Event.RIPE)).isEmpty();
    assertThat(season.fruits()).isEmpty();
  }
}
