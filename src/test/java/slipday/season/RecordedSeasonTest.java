package slipday.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import slipday.measure.Basis;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/** A fact takes the place of a forecast, and what follows from it moves. */
class RecordedSeasonTest {
  private static final String PLAN =
      Plans.SITE.replace(
              "  time zone America/New_York\n",
              "  time zone America/New_York\n"
                  + "  last frost 18 May, 1 in 10 after 30 May\n"
                  + "  first frost 27 September, 1 in 10 before 14 September\n")
          + """
          line amber
            is a muskmelon
          line rope
            is a muskmelon
          lot amber-f3
            of amber
          lot rope-2023
            of rope
          grow amber-f3
            in one
            plants 12, 60 cm apart
            start indoors, 3 weeks before planting out
            flowers cover the chosen
            pollinate self by hand, for 8 fruits
          grow rope-2023
            in two
            plants 6, 60 cm apart
            start indoors, 3 weeks before planting out
            flowers cover the chosen
          cross rope-amber
            seed parent rope-2023
            pollen parent amber-f3
            fruits 2
          """;

  private static final List<String> RECORD =
      List.of(
          "2026-05-14 sowed amber-f3, 16 seeds",
          "2026-05-22 emerged amber-f3, 14 seedlings",
          "2026-06-09 planted out amber-f3, 12 plants",
          "2026-06-30 died amber-f3, 2 plants, cutworms",
          "2026-07-04 first male flowers amber-f3",
          "2026-07-15 first fruiting flowers amber-f3",
          "2026-07-16 selfed amber-f3 plant 3, tag 3A",
          "2026-07-16 selfed amber-f3 plant 4, tag 4A",
          "2026-07-17 selfed amber-f3 plant 4, tag 4B",
          "2026-07-16 emasculated rope-2023 plant 1",
          "2026-07-17 crossed rope-2023 plant 1 by amber-f3 plant 3, tag 1C",
          "2026-07-23 took 3A",
          "2026-07-23 failed 4A",
          "2026-07-24 took 4B",
          "2026-07-24 failed 1C",
          "2026-08-22 picked 3A, full slip, 1.62 kg less 0.17 kg, 12.4 brix");

  private static Season season(String... record) {
    return Plans.season(PLAN + String.join("\n", record) + "\n");
  }

  private static Season recorded() {
    return season(RECORD.toArray(String[]::new));
  }

  private static Reasoned<DateSpread> date(Season season, String planting, Event event) {
    return season.planting(planting).orElseThrow().date(event).orElseThrow();
  }

  private static LocalDate usual(Season season, String planting, Event event) {
    return date(season, planting, event).value().usual().orElseThrow();
  }

  @Example
  void recordedDaysStandForTheForecastAndGiveTheirLine() {
    Season season = recorded();
    Map<Event, String> told =
        Map.of(
            Event.SOW, "2026-05-14",
            Event.EMERGED, "2026-05-22",
            Event.PLANT_OUT, "2026-06-09",
            Event.FIRST_MALE, "2026-07-04",
            Event.FIRST_FRUITING, "2026-07-15");
    told.forEach(
        (event, day) -> {
          Reasoned<DateSpread> date = date(season, "amber-f3", event);
          assertThat(date.value()).isEqualTo(DateSpread.decided(LocalDate.parse(day)));
          assertThat(date.reason().basis()).isEqualTo(Basis.RECORD);
          assertThat(date.reason().says()).startsWith(day);
          assertThat(date.reason().place()).isPresent();
        });
    assertThat(season.planting("amber-f3").orElseThrow().choice().fixed()).isTrue();
  }

  /** By calendar days, what follows first flowers moves by as many days as they do. */
  @Example
  void theDaysAfterRecordedFlowersMoveWithThem() {
    Season early = season("2026-07-10 first fruiting flowers amber-f3");
    Season late = season("2026-07-15 first fruiting flowers amber-f3");
    for (Event event : List.of(Event.RIPE, Event.BLOOM_ENDS)) {
      assertThat(usual(late, "amber-f3", event))
          .as(event.words())
          .isEqualTo(usual(early, "amber-f3", event).plusDays(5));
    }
    assertThat(usual(early, "rope-2023", Event.RIPE))
        .isEqualTo(usual(late, "rope-2023", Event.RIPE));
  }

  @Example
  void aPollinatedFlowerHadOpenedByThen() {
    Season early = season("2026-06-12 crossed rope-2023 plant 1 by amber-f3 plant 3, tag 1C");
    LocalDate day = LocalDate.of(2026, 6, 12);
    assertThat(usual(season(), "rope-2023", Event.FIRST_FRUITING)).isAfter(day);
    assertThat(date(early, "rope-2023", Event.FIRST_FRUITING).value().late()).contains(day);
    assertThat(date(early, "amber-f3", Event.FIRST_MALE).value().late()).contains(day);
    assertThat(date(early, "rope-2023", Event.FIRST_FRUITING).reason().from())
        .anyMatch(r -> r.says().startsWith("2026-06-12 crossed"));
    Season late = season("2026-08-01 selfed amber-f3 plant 3, tag 3A");
    assertThat(usual(late, "amber-f3", Event.FIRST_FRUITING))
        .isEqualTo(usual(season(), "amber-f3", Event.FIRST_FRUITING));
  }

  @Example
  void flowersFollowTheMalesThatWereSeen() {
    Season early = season("2026-06-28 first male flowers amber-f3");
    Season late = season("2026-07-02 first male flowers amber-f3");
    assertThat(usual(late, "amber-f3", Event.FIRST_FRUITING))
        .isEqualTo(usual(early, "amber-f3", Event.FIRST_FRUITING).plusDays(4));
  }

  @Example
  void seedSownOnRecordIsPlantedOutAtItsAge() {
    Season season = season("2026-05-14 sowed amber-f3");
    assertThat(usual(season, "amber-f3", Event.PLANT_OUT)).isEqualTo(LocalDate.of(2026, 6, 4));
  }

  private static PollinationPlan selfs(Season season) {
    return season.pollinations().stream()
        .filter(PollinationPlan::selfing)
        .findFirst()
        .orElseThrow();
  }

  private static PollinationPlan cross(Season season) {
    return season.pollinations().stream()
        .filter(p -> p.cross().isPresent())
        .findFirst()
        .orElseThrow();
  }

  /**
   * Counts added to a beta prior: (prior takes + takes) ÷ (prior flowers + flowers); Gelman and
   * others, Bayesian Data Analysis, section 2.4, from memory.
   */
  @Example
  void takesAndFailuresAreAddedToTheCropsTake() {
    double usual = selfs(season()).take().value();
    PollinationPlan plan = selfs(recorded());
    double worth = (2 - 3 * plan.take().value()) / (plan.take().value() - usual);
    assertThat(worth).isCloseTo(Math.rint(worth), within(1e-6)).isBetween(1.0, 200.0);
    assertThat(plan.take().reason().says()).contains("2 of 3 tagged flowers took here");
    assertThat(lines(plan.take().reason()))
        .contains("2026-07-23 took 3A", "2026-07-23 failed 4A", "2026-07-24 took 4B")
        .doesNotContain("2026-07-24 failed 1C");
    assertThat(cross(recorded()).take().value()).isLessThan(cross(season()).take().value());
  }

  @Example
  void whatHasSetIsNoMoreWanted() {
    PollinationPlan before = selfs(season());
    PollinationPlan after = selfs(recorded());
    assertThat(after.wanted()).isEqualTo(8);
    assertThat(after.set()).isEqualTo(2);
    assertThat(after.left()).isEqualTo(6);
    assertThat(after.flowersLikely()).isLessThan(before.flowersLikely());
    assertThat(cross(recorded()).set()).isZero();
  }

  @Example
  void enoughIsEnough() {
    List<String> lines = new ArrayList<>();
    for (int i = 1; i <= 8; i++) {
      lines.add("2026-07-16 selfed amber-f3 plant " + i + ", tag " + i + "A");
      lines.add("2026-07-23 took " + i + "A");
    }
    PollinationPlan plan = selfs(season(lines.toArray(String[]::new)));
    assertThat(plan.left()).isZero();
    assertThat(plan.flowersLikely()).isZero();
    assertThat(plan.flowersSure()).isEqualTo(Optional.of(0));
    assertThat(plan.aMorning()).isZero();
    assertThat(plan.chance()).isEqualTo(1);
  }

  @Example
  void aFruitThatDroppedLaterIsWantedAgain() {
    PollinationPlan plan =
        selfs(
            season(
                "2026-07-16 selfed amber-f3 plant 3, tag 3A",
                "2026-07-23 took 3A",
                "2026-07-30 failed 3A"));
    assertThat(plan.set()).isZero();
  }

  @Example
  void aFruitThatMiceAteTookAndIsWantedAgain() {
    List<String> lines = new ArrayList<>(RECORD.subList(0, RECORD.size() - 1));
    lines.add("2026-08-10 lost 3A, mice");
    PollinationPlan before = selfs(recorded());
    PollinationPlan after = selfs(season(lines.toArray(String[]::new)));
    assertThat(after.take().value()).isEqualTo(before.take().value());
    assertThat(after.left()).isEqualTo(before.left() + 1);
  }

  @Example
  void plantsThatDiedBearNoFlowers() {
    PollinationPlan all = selfs(season());
    PollinationPlan fewer = selfs(season("2026-07-01 died amber-f3, 6 plants, wilt"));
    assertThat(fewer.canCarry() * 2).isEqualTo(all.canCarry());
    assertThat(lines(fewer.reason())).contains("2026-07-01 died amber-f3, 6 plants, wilt");
    Season none = season("2026-07-01 died amber-f3, 12 plants, wilt");
    assertThat(none.pollinations()).noneMatch(PollinationPlan::selfing);
  }

  private static List<String> lines(Reason reason) {
    return Stream.concat(
            Stream.of(reason.says()), reason.from().stream().flatMap(r -> lines(r).stream()))
        .toList();
  }

  @Provide
  Arbitrary<List<String>> shuffled() {
    return Arbitraries.shuffle(RECORD);
  }

  @Property(tries = 40)
  void theOrderOfTheLinesMeansNothing(@ForAll("shuffled") List<String> lines) {
    assertThat(shown(season(lines.toArray(String[]::new)))).isEqualTo(shown(recorded()));
  }

  /** Two people's copies of the record, joined line by line, say what both of them wrote. */
  @Property(tries = 40)
  void joinedRecordsLoseNothing(@ForAll("shuffled") List<String> lines, @ForAll long seed) {
    Random random = new Random(seed);
    List<String> one = lines.stream().filter(l -> random.nextInt(3) > 0).toList();
    List<String> other =
        lines.stream().filter(l -> !one.contains(l) || random.nextBoolean()).toList();
    List<String> joined = new ArrayList<>(one);
    other.forEach(l -> joined.add(random.nextInt(joined.size() + 1), l));
    assertThat(shown(season(joined.toArray(String[]::new)))).isEqualTo(shown(recorded()));
  }

  private static String shown(Season season) {
    Map<String, String> shown = new TreeMap<>();
    season
        .plantings()
        .forEach(
            p -> p.dates().forEach((e, d) -> shown.put(p.name() + " " + e, d.value().toString())));
    season
        .pollinations()
        .forEach(
            p ->
                shown.put(
                    p.subject(),
                    Stream.of(p.wanted(), p.set(), p.take().value(), p.flowersSure(), p.chance())
                        .map(String::valueOf)
                        .collect(Collectors.joining(" "))));
    return shown.toString();
  }
}
