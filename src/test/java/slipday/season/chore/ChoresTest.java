package slipday.season.chore;

import static org.assertj.core.api.Assertions.assertThat;
import static slipday.season.chore.Gardens.lot;
import static slipday.season.chore.Gardens.north;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which chores a planting has, and what they say. */
class ChoresTest {
  private static final Set<ChoreKind> BY_HAND =
      EnumSet.of(
          ChoreKind.REMOVE_ANTHERS,
          ChoreKind.COVER,
          ChoreKind.POLLINATE,
          ChoreKind.UNCOVER,
          ChoreKind.THIN,
          ChoreKind.CHECK_TAKE,
          ChoreKind.STOP);

  private static final String SELFED =
      """
        flowers cover the chosen
        pollinate self by hand, for 3 fruits from 2 plants or more
        seed saved
      """;

  @Test
  void aPlantingForTheKitchenIsSownPlantedAndPicked() {
    ChoreBook book = north(lot("pip", "muskmelon") + "  seed not saved\n  flowers open\n");
    assertThat(kinds(book))
        .containsExactlyInAnyOrder(
            ChoreKind.TEST_GERMINATION,
            ChoreKind.SOW,
            ChoreKind.HARDEN_OFF,
            ChoreKind.PLANT_OUT,
            ChoreKind.LOOK_AT_FRUIT);
  }

  @Test
  void whatIsSownInPlaceIsNotPlantedOut() {
    ChoreBook book = north(lot("pip", "butternut") + "  start outdoors\n");
    assertThat(kinds(book))
        .contains(ChoreKind.SOW)
        .doesNotContain(ChoreKind.HARDEN_OFF, ChoreKind.PLANT_OUT, ChoreKind.POT_ON);
    assertThat(one(book, ChoreKind.SOW).title()).isEqualTo("Sow pip in long-bed");
  }

  /** Sown in place, it is under its cover from that day, whichever word the plan has. */
  @ParameterizedTest
  @CsvSource({
    "outdoors, sowing, SOW",
    "outdoors, planting out, SOW",
    "indoors, planting out, PLANT_OUT",
  })
  void aCoverGoesOnWithThePlantsAndComesOffOnItsDay(String start, String from, ChoreKind kind) {
    ChoreBook book =
        north(
            lot("pip", "butternut")
                + "  start %s\n  plant out on 1 June\n".formatted(start)
                + "  cover fleece, 4 weeks from %s, air 1 C warmer\n".formatted(from));
    Chore chore = one(book, kind);
    assertThat(chore.time().lastDay()).hasToString("2026-06-01");
    assertThat(chore.description())
        .anyMatch(d -> d.startsWith("Put the fleece on the same day; it comes off on 29 June,"));
    Chore off = one(book, ChoreKind.LIFT_COVER);
    assertThat(off.title()).isEqualTo("Take the fleece off pip");
    assertThat(off.time().start().toLocalDate()).hasToString("2026-06-29");
  }

  /** As corn is bred by hand: bags on shoots and tassels (common practice, no source). */
  @Test
  void cornIsBaggedAndItsPollenPoured() {
    ChoreBook book =
        north(
            lot("pale", "sweet-corn")
                + """
                  start outdoors
                  flowers cover the chosen
                  pollinate sib by hand, for 3 fruits
                  seed saved
                """);
    Chore cover = first(book, ChoreKind.COVER);
    Chore pollinate = first(book, ChoreKind.POLLINATE);
    assertThat(cover.title()).matches("Cover tonight: \\d+ ears? for pale");
    assertThat(String.join(" ", cover.description()))
        .contains("tassels of other plants of it")
        .contains("before its silks show");
    assertThat(String.join(" ", pollinate.description()))
        .contains("pour it over the silks")
        .contains("The cover stays for 10 to 14 days.")
        .doesNotContain("petals")
        .doesNotContain("lobe");
    assertThat(kinds(book)).doesNotContain(ChoreKind.THIN);
  }

  private static Chore first(ChoreBook book, ChoreKind kind) {
    return book.chores().stream().filter(c -> c.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void seedFromOpenFlowersIsTakenWithoutPollinationByHand() {
    ChoreBook book = north(lot("pip", "muskmelon") + "  flowers open\n  seed saved\n");
    assertThat(kinds(book)).contains(ChoreKind.TAKE_SEED).doesNotContainAnyElementsOf(BY_HAND);
    assertThat(one(book, ChoreKind.TAKE_SEED).description()).noneMatch(d -> d.contains("marked"));
  }

  @Test
  void cagedFlowersAreOnlyWatched() {
    ChoreBook book = north(lot("pip", "muskmelon") + "  flowers caged\n  seed saved\n");
    assertThat(kinds(book)).contains(ChoreKind.WATCH_FLOWERS).doesNotContainAnyElementsOf(BY_HAND);
    assertThat(one(book, ChoreKind.WATCH_FLOWERS).description())
        .contains("Before any of them opens the cage is shut.");
  }

  /** A perfect flower that is selfed keeps its anthers; only a cross needs them off. */
  @Test
  void aSelfKeepsItsAnthers() {
    ChoreBook book = north(lot("pip", "muskmelon") + SELFED);
    Set<ChoreKind> expected = EnumSet.copyOf(BY_HAND);
    expected.remove(ChoreKind.REMOVE_ANTHERS);
    assertThat(kinds(book))
        .containsAll(expected)
        .contains(ChoreKind.WATCH_FLOWERS, ChoreKind.TAKE_SEED)
        .doesNotContain(ChoreKind.REMOVE_ANTHERS);
  }

  @Test
  void aCrossOnPerfectFlowersTakesTheirAnthersOffTheEveningBefore() {
    ChoreBook book = north(cross("muskmelon", "casaba"));
    List<Chore> anthers = all(book, ChoreKind.REMOVE_ANTHERS);
    List<Chore> covers = all(book, ChoreKind.COVER);
    List<Chore> mornings = all(book, ChoreKind.POLLINATE);
    assertThat(anthers).isNotEmpty().hasSameSizeAs(covers).hasSameSizeAs(mornings);
    for (int i = 0; i < anthers.size(); i++) {
      LocalDate evening = mornings.get(i).time().lastDay().minusDays(1);
      assertThat(anthers.get(i).time().lastDay()).isEqualTo(evening);
      assertThat(covers.get(i).time().start())
          .isEqualTo(((ChoreTime.Hours) anthers.get(i).time()).to());
    }
    assertThat(anthers.get(0).description().get(0)).startsWith("On pip, in buds that open");
    assertThat(covers.get(0).description().get(0))
        .contains("perfect flowers of pip, and ", " males of pulp");
    assertThat(mornings.get(0).description().get(0)).contains("Take male flowers");
    assertThat(all(book, ChoreKind.TAKE_SEED))
        .extracting(Chore::title)
        .containsExactly("Take seed of the cross pip-pulp");
  }

  @Test
  void aCrossOnFemaleFlowersLeavesNothingToTakeOff() {
    ChoreBook book = north(cross("butternut", "cheese-pumpkin"));
    assertThat(kinds(book)).contains(ChoreKind.COVER).doesNotContain(ChoreKind.REMOVE_ANTHERS);
    assertThat(all(book, ChoreKind.COVER).get(0).description())
        .anyMatch(d -> d.startsWith("Tape shut "))
        .anyMatch(d -> d.contains("still shut"));
  }

  @Test
  void budsThatHardlyShowAreBagged() {
    ChoreBook book = north(lot("pip", "muskmelon") + SELFED);
    assertThat(all(book, ChoreKind.COVER).get(0).description())
        .anyMatch(d -> d.startsWith("Bag ") && d.contains("males of the same plants"));
  }

  /** Number and stop rule stand where the work is done. */
  @Test
  void descriptionsSayHowManyAreWanted() {
    ChoreBook book = north(lot("pip", "muskmelon") + SELFED);
    for (ChoreKind kind : List.of(ChoreKind.POLLINATE, ChoreKind.CHECK_TAKE, ChoreKind.STOP)) {
      assertThat(all(book, kind).get(0).description())
          .anyMatch(d -> d.startsWith("Wanted: 3 fruits, from 2 plants or more."))
          .anyMatch(d -> d.contains("Stop when 3 marked fruits have set"));
    }
  }

  /** The heat at which set suffers and ends, as the crop has it: 32 and 35 °C. */
  @Test
  void morningsEndSoonerInHeatAndAreLeftInRain() {
    ChoreBook book = north(lot("pip", "muskmelon") + SELFED);
    assertThat(all(book, ChoreKind.POLLINATE).get(0).description())
        .anyMatch(d -> d.contains("32 °C (90 °F)") && d.contains("35 °C (95 °F)"))
        .anyMatch(d -> d.startsWith("Not in rain.") && d.contains("bee"));
  }

  @Test
  void ripenessIsToldByTheSignsOfItsType() {
    Chore netted = one(north(lot("pip", "muskmelon") + SELFED), ChoreKind.LOOK_AT_FRUIT);
    assertThat(netted.description())
        .anyMatch(d -> d.startsWith("Ripe at full slip"))
        .anyMatch(d -> d.startsWith("Signs: ") && d.contains("slips from the vine"));
    Chore casaba = one(north(lot("pip", "casaba") + SELFED), ChoreKind.LOOK_AT_FRUIT);
    assertThat(casaba.description().get(0))
        .isEqualTo(
            "Count the days since the pollination on the tag: usually ripe after 45 to 65 days.");
    assertThat(casaba.description().get(1)).contains("never slips");
    Chore acorn = one(north(lot("pip", "acorn-squash") + SELFED), ChoreKind.LOOK_AT_FRUIT);
    assertThat(acorn.description()).noneMatch(d -> d.contains("slip"));
  }

  /** A cucumber for seed stays on the vine long after the eating stage. */
  @Test
  void fruitForSeedIsLeftPastTheEatingStage() {
    ChoreBook book = north(lot("pip", "slicing-cucumber") + SELFED);
    assertThat(one(book, ChoreKind.LOOK_AT_FRUIT).description())
        .anyMatch(d -> d.startsWith("Fruit for seed is left on the plant past that, till "));
    assertThat(one(book, ChoreKind.TAKE_SEED).time().lastDay())
        .isAfter(one(book, ChoreKind.LOOK_AT_FRUIT).time().lastDay());
    Chore eaten =
        one(north(lot("pip", "slicing-cucumber") + "  seed not saved\n"), ChoreKind.LOOK_AT_FRUIT);
    assertThat(eaten.description()).noneMatch(d -> d.contains("for seed is left"));
  }

  /** The last flower pollinated ripens last: its days end the look-out. */
  @Test
  void theLastMarkedFruitIsLookedForToo() {
    ChoreBook book = north(lot("pip", "casaba") + SELFED);
    List<Chore> mornings = all(book, ChoreKind.POLLINATE);
    LocalDate last = mornings.get(mornings.size() - 1).time().lastDay();
    assertThat(one(book, ChoreKind.LOOK_AT_FRUIT).time().lastDay())
        .isAfterOrEqualTo(last.plusDays(65));
  }

  @Test
  void cutFruitIsKeptCold() {
    assertThat(one(north(lot("pip", "muskmelon")), ChoreKind.LOOK_AT_FRUIT).cautions())
        .anyMatch(c -> c.startsWith("Once cut, the fruit is kept at 5 °C"));
    assertThat(one(north(lot("pip", "butternut")), ChoreKind.LOOK_AT_FRUIT).cautions()).isEmpty();
  }

  @Test
  void seedOfUnknownFatherIsTastedFirstWhereItHasBitterKin() {
    String plan = lot("pip", "acorn-squash").replace("seeds 200", "seeds 200\n  identity unknown");
    ChoreBook book = north(plan + "  flowers open\n  seed saved\n");
    assertThat(one(book, ChoreKind.LOOK_AT_FRUIT).cautions())
        .anyMatch(c -> c.contains("touch a small piece to the tongue and spit it out"));
    assertThat(one(book, ChoreKind.TAKE_SEED).cautions())
        .anyMatch(c -> c.startsWith("No seed from a plant that was not tasted"));
  }

  @Test
  void seedOpenToABitterNeighbourIsSaidToBe() {
    String gourd = "neighbour allotments\n  grows pepo-gourd\n  distance 140 m\n";
    ChoreBook open = north(gourd + lot("pip", "acorn-squash") + "  flowers open\n  seed saved\n");
    assertThat(one(open, ChoreKind.TAKE_SEED).cautions())
        .anyMatch(c -> c.contains("pollen of allotments") && c.contains("poison"));
    ChoreBook covered = north(gourd + lot("pip", "acorn-squash") + SELFED);
    assertThat(one(covered, ChoreKind.TAKE_SEED).cautions())
        .noneMatch(c -> c.contains("allotments"));
  }

  @Test
  void aLotWithAFreshTestIsNotTestedAgain() {
    String tested =
        lot("pip", "muskmelon").replace("seeds 200", "seeds 200\n  tested 44 of 50 in 2025");
    assertThat(kinds(north(tested + "  seed not saved\n")))
        .doesNotContain(ChoreKind.TEST_GERMINATION);
    String old =
        lot("pip", "muskmelon").replace("seeds 200", "seeds 200\n  tested 44 of 50 in 2022");
    Chore test = one(north(old + "  seed not saved\n"), ChoreKind.TEST_GERMINATION);
    assertThat(test.subject()).isEqualTo("pip-lot");
    assertThat(test.description().get(0)).startsWith("40 seeds between moist paper");
    String few = lot("pip", "muskmelon").replace("seeds 200", "seeds 20");
    assertThat(kinds(north(few + "  seed not saved\n"))).doesNotContain(ChoreKind.TEST_GERMINATION);
  }

  @Test
  void seedSavedIsTestedInWinter() {
    ChoreBook book = north(lot("pip", "muskmelon") + "  flowers open\n  seed saved\n");
    Chore winter =
        all(book, ChoreKind.TEST_GERMINATION).stream()
            .filter(c -> c.subject().equals("quince-end"))
            .findFirst()
            .orElseThrow();
    assertThat(winter.time().start()).isEqualTo(LocalDateTime.of(2026, 12, 1, 0, 0));
    assertThat(winter.description().get(0)).contains("pip");
  }

  @Test
  void twoPollinationsOnOnePlantingThinItOnce() {
    String selfedToo =
        cross("muskmelon", "casaba")
            .replaceFirst("flowers cover the chosen\n", "pollinate self by hand, for 2 fruits\n$0");
    ChoreBook book = north(selfedToo);
    assertThat(all(book, ChoreKind.POLLINATE))
        .extracting(Chore::subject)
        .contains("pip", "pip-pulp");
    assertThat(all(book, ChoreKind.THIN)).hasSize(1);
  }

  @Test
  void everyChoreHasAKeyOfItsOwnAndStandsInOrder() {
    ChoreBook book = north(cross("muskmelon", "casaba") + lot("pop", "acorn-squash") + SELFED);
    assertThat(book.chores()).extracting(Chore::key).doesNotHaveDuplicates();
    assertThat(book.chores()).isSortedAccordingTo(Chore.ORDER);
    assertThat(book.chores())
        .allSatisfy(
            c -> {
              assertThat(c.description()).isNotEmpty();
              assertThat(Stream.concat(c.description().stream(), c.cautions().stream()))
                  .allMatch(p -> p.endsWith("."))
                  .noneMatch(p -> p.contains("  ") || p.contains("null") || p.contains(".."));
              assertThat(c.reason().from()).isNotEmpty();
            });
  }

  /** A key has no day in it: a season a week later has the same keys. */
  @Test
  void keysStayWhenDaysMove() {
    String early = lot("pip", "muskmelon") + SELFED;
    ChoreBook before = north(early + "  plant out on 1 June\n");
    ChoreBook after = north(early + "  plant out on 5 June\n");
    assertThat(keys(after, ChoreKind.SOW)).isEqualTo(keys(before, ChoreKind.SOW));
    assertThat(keys(before, ChoreKind.POLLINATE)).first().isEqualTo("pip:pollinate:own:1");
    assertThat(one(after, ChoreKind.PLANT_OUT).time().start())
        .isEqualTo(LocalDateTime.of(2026, 6, 5, 0, 0));
  }

  @Test
  void aSouthernSeasonCrossesTheNewYear() {
    ChoreBook book = Gardens.south(lot("pip", "muskmelon") + SELFED);
    assertThat(book.season()).isEqualTo("2026-27");
    assertThat(one(book, ChoreKind.PLANT_OUT).time().lastDay())
        .isBetween(LocalDate.of(2026, 10, 1), LocalDate.of(2027, 1, 31));
    assertThat(all(book, ChoreKind.TEST_GERMINATION))
        .extracting(c -> c.time().lastDay())
        .contains(LocalDate.of(2027, 6, 30));
  }

  private static String cross(String seedParent, String pollenParent) {
    return lot("pip", seedParent)
        + "  flowers cover the chosen\n"
        + lot("pulp", pollenParent)
        + "  flowers cover the chosen\n"
        + "cross pip-pulp\n  seed parent pip\n  pollen parent pulp\n  fruits 2\n";
  }

  private static Set<ChoreKind> kinds(ChoreBook book) {
    return book.chores().stream().map(Chore::kind).collect(Collectors.toSet());
  }

  private static List<Chore> all(ChoreBook book, ChoreKind kind) {
    return book.chores().stream().filter(c -> c.kind() == kind).toList();
  }

  private static List<String> keys(ChoreBook book, ChoreKind kind) {
    return all(book, kind).stream().map(Chore::key).toList();
  }

  private static Chore one(ChoreBook book, ChoreKind kind) {
    List<Chore> found = all(book, kind);
    assertThat(found).hasSize(1);
    return found.get(0);
  }
}
