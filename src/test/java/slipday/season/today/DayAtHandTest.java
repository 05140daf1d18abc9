package slipday.season.today;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slipday.output.Ink;
import slipday.output.Json;
import slipday.output.TodayText;
import slipday.output.data.TodayData;
import slipday.season.Event;
import slipday.season.MarkedFruit;
import slipday.season.PollinationPlan;
import slipday.season.chore.ChoreKind;
import slipday.season.chore.Gardens;

/** One day's work out of plan and record. The garden is invented. */
class DayAtHandTest {
  private static final String PLAN =
      """
      season 2026
      site heath
        place 44.21 N, 72.58 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      line amber
        is a muskmelon
      line rope
        is a muskmelon
      line keel
        is a butternut
      line stray
        is a acorn-squash
      lot amber-f3
        of amber
      lot rope-25
        of rope
      lot keel-25
        of keel
      lot stray-26
        of stray
        identity unknown
      grow amber-f3
        plants 6, 60 cm apart
        start indoors, 3 weeks before planting out
        flowers cover the chosen
        pollinate self by hand, for 4 fruits from 3 plants or more
        seed saved
      grow rope-25
        plants 4, 60 cm apart
        start indoors, 3 weeks before planting out
        flowers cover the chosen
        seed saved
      grow keel-25
        plants 4, 1 m apart
        start indoors, 3 weeks before planting out
        flowers cover the chosen
        pollinate sib by hand, for 2 fruits
        seed saved
      grow stray-26
        plants 3, 1 m apart
        start indoors, 3 weeks before planting out
      cross rope-amber
        seed parent rope-25
        pollen parent amber-f3
        fruits 1
      """;

  private static TodayList on(String date, String... record) {
    return on(date, 0, record);
  }

  private static TodayList on(String date, int days, String... record) {
    String plan = PLAN + String.join("\n", record) + "\n";
    return DayAtHand.of(Gardens.season(plan), LocalDate.parse(date), days);
  }

  private static String json(TodayList list) {
    return Json.text(TodayData.of("plan.season", list));
  }

  private static TodayList.Pollination pollination(TodayList list, String subject) {
    return list.pollinations().stream()
        .filter(p -> p.plan().subject().equals(subject))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> tags(List<MarkedFruit> fruits) {
    return fruits.stream().map(MarkedFruit::tag).toList();
  }

  private static final String[] IN_FLOWER = {
    "2026-05-12 sowed amber-f3",
    "2026-05-12 sowed rope-25",
    "2026-05-12 sowed keel-25",
    "2026-06-04 planted out amber-f3, 6 plants",
    "2026-06-04 planted out rope-25, 4 plants",
    "2026-06-04 planted out keel-25, 4 plants",
    "2026-07-01 first fruiting flowers amber-f3",
    "2026-07-02 first fruiting flowers rope-25",
    "2026-07-03 selfed amber-f3 plant 1, tag 1A",
    "2026-07-03 selfed amber-f3 plant 2, tag 2A",
    "2026-07-08 selfed amber-f3 plant 3, tag 3A",
    "2026-07-10 took 1A"
  };

  private static String[] and(String... more) {
    return Stream.concat(Stream.of(IN_FLOWER), Stream.of(more)).toArray(String[]::new);
  }

  /** Wanted 4, set 1, waiting 2 at a take of (3 + 1) of (20 + 1): 4 - 1 - 2 x 4/21. */
  @Test
  void saysHowManyAreStillWanted() {
    TodayList.Pollination self = pollination(on("2026-07-10", IN_FLOWER), "amber-f3");
    assertThat(self.plan().set()).isEqualTo(1);
    assertThat(self.plan().waiting()).isEqualTo(2);
    assertThat(self.plan().stillWanted()).isCloseTo(3 - 2 * 4.0 / 21, within(1e-9));
    assertThat(self.inFlower()).isTrue();
    assertThat(self.flowers()).isPositive();
    // Two or three males for a flower, by the crop file.
    assertThat(self.males().orElseThrow().low()).isEqualTo(2.0 * self.flowers());
  }

  /**
   * Sunset and sunrise at 44.2 N, 72.6 W in daylight time about 10 July: 20:34 and 05:14, by the
   * sunrise equation (Meeus, Astronomical Algorithms, chapter 15, from memory), to some minutes. A
   * perfect flower opens an hour after the males.
   */
  @Test
  void theHoursAreTheSuns() {
    TodayList.Pollination self = pollination(on("2026-07-10", IN_FLOWER), "amber-f3");
    assertThat(self.cover().start())
        .isBetween(LocalDateTime.of(2026, 7, 10, 20, 25), LocalDateTime.of(2026, 7, 10, 20, 45));
    assertThat(self.pollinate().start())
        .isBetween(LocalDateTime.of(2026, 7, 11, 6, 5), LocalDateTime.of(2026, 7, 11, 6, 25));
    assertThat(self.anthers()).isEmpty();
    TodayList.Pollination cross = pollination(on("2026-07-10", IN_FLOWER), "rope-amber");
    assertThat(cross.anthers().orElseThrow().start())
        .isEqualTo(cross.cover().start().minusHours(1));
  }

  @Test
  void whatIsCoveredIsPollinatedNextMorningAndElseUncovered() {
    String[] record = and("2026-07-10 covered amber-f3 plant 4, 3 flowers");
    assertThat(pollination(on("2026-07-10", record), "amber-f3").covered()).isEqualTo(3);
    assertThat(on("2026-07-11", record).thisMorning())
        .singleElement()
        .satisfies(c -> assertThat(c.flowers()).isEqualTo(3));
    String[] one =
        and(
            "2026-07-10 covered amber-f3 plant 4, 3 flowers",
            "2026-07-11 selfed amber-f3 plant 4, tag 4A");
    assertThat(on("2026-07-11", one).thisMorning().get(0).flowers()).isEqualTo(2);
    assertThat(on("2026-07-12", one).thisMorning()).isEmpty();
    assertThat(on("2026-07-13", one).uncover())
        .singleElement()
        .satisfies(
            u -> {
              assertThat(tags(u.fruits())).containsExactly("4A");
              // Covered three evenings ago, two of them idle.
              assertThat(u.idle()).isEqualTo(2);
            });
    assertThat(on("2026-07-15", one).uncover()).isEmpty();
  }

  @Test
  void takesAreCheckedAfterAWeek() {
    assertThat(tags(on("2026-07-09", IN_FLOWER).unchecked())).isEmpty();
    assertThat(tags(on("2026-07-10", IN_FLOWER).unchecked())).containsExactly("2A");
    assertThat(tags(on("2026-07-15", IN_FLOWER).unchecked())).containsExactly("2A", "3A");
    assertThat(tags(on("2026-07-15", and("2026-07-11 failed 2A")).unchecked()))
        .containsExactly("3A");
  }

  /** After five weeks its size tells, and it is asked after when it should be ripe. */
  @Test
  void takesAreNotAskedAfterForEver() {
    assertThat(tags(on("2026-08-05", IN_FLOWER).unchecked())).contains("2A");
    assertThat(tags(on("2026-09-26", IN_FLOWER).unchecked())).isEmpty();
  }

  @Test
  void whatWasPlannedLongAgoIsNotAskedForAnyMore() {
    String sown = "2026-05-12 sowed amber-f3";
    assertThat(on("2026-06-20", sown).unrecorded()).isNotEmpty();
    assertThat(on("2026-10-20", sown).unrecorded()).isEmpty();
  }

  @Test
  void thatNoMoreCanBePollinatedIsTold() {
    LocalDate until =
        pollination(on("2026-07-10", IN_FLOWER), "amber-f3").plan().until().orElseThrow();
    assertThat(on(until.toString(), IN_FLOWER).closed())
        .extracting(PollinationPlan::subject)
        .doesNotContain("amber-f3");
    TodayList after = on(until.plusDays(1).toString(), IN_FLOWER);
    assertThat(after.closed()).extracting(PollinationPlan::subject).contains("amber-f3");
    assertThat(new TodayText(TodayData.of("plan", after), Ink.of(false)).text())
        .containsPattern("(?s)Too late to pollinate more\n.*- amber-f3, since ");
    assertThat(on(until.plusDays(40).toString(), IN_FLOWER).closed()).isEmpty();
  }

  /** Young fruit holds back the flowers that are pollinated as long as too few have set. */
  @Test
  void unmarkedFruitComesOffTillTheWindowCloses() {
    LocalDate until =
        pollination(on("2026-07-10", IN_FLOWER), "amber-f3").plan().until().orElseThrow();
    assertThat(on(until.toString(), IN_FLOWER).chores())
        .anyMatch(c -> c.kind() == ChoreKind.THIN && c.subject().equals("amber-f3"));
  }

  @Test
  void fruitsAreWantedWhole() {
    assertThat(
            new TodayText(TodayData.of("plan", on("2026-07-10", IN_FLOWER)), Ink.of(false)).text())
        .doesNotContainPattern("\\d\\.\\d\\s+still");
  }

  /** Muskmelon, 35 to 46 days: the one furthest past its day first; past 46 days it is overdue. */
  @Test
  void theMostUrgentFruitComesFirst() {
    String[] record = and("2026-07-11 took 2A", "2026-07-16 took 3A");
    assertThat(on("2026-08-06", record).ripe()).isEmpty();
    assertThat(on("2026-08-07", record).ripe())
        .extracting(r -> r.fruit().tag())
        .containsExactly("1A", "2A");
    List<TodayList.RipeFruit> late = on("2026-08-19", record).ripe();
    assertThat(late).extracting(r -> r.fruit().tag()).containsExactly("1A", "2A", "3A");
    assertThat(late).extracting(TodayList.RipeFruit::overdue).containsExactly(true, true, false);
    assertThat(on("2026-08-19", and("2026-08-18 picked 1A, full slip")).ripe())
        .extracting(r -> r.fruit().tag())
        .doesNotContain("1A");
  }

  @Test
  void aDayIsToldAsItWasKnownThen() {
    String[] later = and("2026-07-20 took 2A", "2026-08-08 picked 1A, full slip");
    assertThat(json(on("2026-07-10", later))).isEqualTo(json(on("2026-07-10", IN_FLOWER)));
    assertThat(json(on("2026-08-08", later))).isNotEqualTo(json(on("2026-08-08", IN_FLOWER)));
    assertThat(tags(on("2026-07-10", later).unchecked())).containsExactly("2A");
  }

  @Test
  void whatWasPlannedAndIsNotRecordedIsTold() {
    List<TodayList.Unrecorded> early = on("2026-05-20", "2026-05-12 sowed amber-f3").unrecorded();
    assertThat(early)
        .extracting(u -> u.planting().name() + " " + u.event())
        .contains("rope-25 SOW", "stray-26 SOW")
        .doesNotContain("amber-f3 SOW");
    TodayList june =
        on("2026-06-20", "2026-05-12 sowed amber-f3", "2026-05-19 emerged amber-f3, 6 seedlings");
    assertThat(june.unrecorded())
        .filteredOn(u -> u.planting().name().equals("amber-f3"))
        .extracting(TodayList.Unrecorded::event)
        .containsExactly(Event.PLANT_OUT);
    assertThat(on("2026-02-01").unrecorded()).isEmpty();
  }

  /** Nothing of keel-25 is recorded though a record is kept, and it is long too late to sow it. */
  @Test
  void nothingIsAskedOfWhatWasNeverSown() {
    String[] others =
        Stream.of(IN_FLOWER).filter(l -> !l.contains("keel-25")).toArray(String[]::new);
    TodayList list = on("2026-07-20", others);
    assertThat(list.pollinations()).noneMatch(p -> p.plan().subject().equals("keel-25"));
    assertThat(list.unrecorded())
        .filteredOn(u -> u.planting().name().equals("keel-25"))
        .singleElement()
        .satisfies(u -> assertThat(u.tooLate()).isPresent());
    assertThat(list.chores()).noneMatch(c -> c.subject().equals("keel-25"));
    assertThat(on("2026-07-20", IN_FLOWER).chores()).anyMatch(c -> c.subject().equals("keel-25"));
    assertThat(on("2026-07-20", IN_FLOWER).pollinations())
        .anyMatch(p -> p.plan().subject().equals("keel-25"));
  }

  @Test
  void plantsOfDoubtfulSeedAreTastedFirst() {
    String[] record =
        and(
            "2026-06-04 planted out stray-26, 3 plants",
            "2026-08-10 tasted stray-26 plant 1, clean",
            "2026-08-11 tasted stray-26 plant 2, bitter");
    TodayList.Taste taste = on("2026-08-28", record).taste().get(0);
    assertThat(taste.planting().name()).isEqualTo("stray-26");
    assertThat(taste.clean()).containsExactly(1);
    assertThat(taste.bitter()).containsExactly(2);
    String[] gone =
        Stream.concat(
                Stream.of(record),
                Stream.of(
                    "2026-08-12 rogued stray-26 plant 2, bitter",
                    "2026-08-13 tasted stray-26 plant 3, clean"))
            .toArray(String[]::new);
    assertThat(on("2026-08-28", gone).taste()).isEmpty();
    assertThat(on("2026-07-01", record).taste()).isEmpty();
  }

  /** A butternut rests some weeks before it is opened; a melon is opened at once. */
  @Test
  void seedIsTakenWhenTheFruitHasRested() {
    String[] record =
        and(
            "2026-07-05 sibbed keel-25 plant 1 by plant 2, tag K1",
            "2026-07-12 took K1",
            "2026-08-10 picked 1A, full slip",
            "2026-09-10 picked K1");
    assertThat(on("2026-09-11", record).seed())
        .extracting(s -> s.story().fruit().tag())
        .containsExactly("1A");
    TodayList.SeedFruit rested =
        on("2026-11-20", record).seed().stream()
            .filter(s -> s.story().fruit().tag().equals("K1"))
            .findFirst()
            .orElseThrow();
    assertThat(rested.ready()).isAfter(rested.picked());
    assertThat(on("2026-09-11", 60, record).coming())
        .anyMatch(c -> c.kind() == ChoreKind.TAKE_SEED && c.subjects().contains("K1"));
    String[] saved =
        Stream.concat(Stream.of(record), Stream.of("2026-08-12 saved 1A, into amber-f4-1A"))
            .toArray(String[]::new);
    assertThat(on("2026-09-11", saved).seed()).isEmpty();
    assertThat(on("2026-09-11", saved).seedDone())
        .containsExactly(
            new TodayList.SeedLeft("amber-f4-1A", LocalDate.of(2026, 8, 12), true, true));
  }

  @Test
  void whereNothingIsToBeDoneTheNextIsTold() {
    TodayList list = on("2026-01-20");
    TodayData data = TodayData.of("plan.season", list);
    assertThat(data.nothingToDo()).isTrue();
    assertThat(list.kept()).isFalse();
    assertThat(list.next()).isNotEmpty();
    LocalDate next = list.next().get(0).date();
    assertThat(next).isAfter(LocalDate.of(2026, 1, 20));
    assertThat(new TodayText(data, Ink.of(false)).text())
        .contains("Nothing is to be done.\nNext, on ");
    assertThat(DayAtHand.of(list.season(), next, 0).chores()).isNotEmpty();
  }

  /** Forty columns for a phone; a longer name runs over, never past eighty. */
  @Test
  void itFitsAPhone() {
    String[] record = and("2026-08-10 tasted stray-26 plant 1, clean", "2026-07-16 took 3A");
    for (String date : List.of("2026-05-20", "2026-07-10", "2026-08-20", "2026-10-01")) {
      String text = new TodayText(TodayData.of("plan", on(date, 30, record)), Ink.of(false)).text();
      assertThat(text.lines()).allMatch(l -> l.length() <= 40);
    }
    String name = "a-line-with-a-name-that-no-phone-can-show-" + "x".repeat(60);
    String plan = PLAN.replace("amber-f3", name);
    TodayList list = DayAtHand.of(Gardens.season(plan), LocalDate.of(2026, 7, 10), 0);
    String text = new TodayText(TodayData.of("plan", list), Ink.of(false)).text();
    assertThat(text.lines()).allMatch(l -> l.length() <= 80).anyMatch(l -> l.length() > 40);
    assertThat(text.replaceAll("\\s+", "")).contains(name);
  }
}
