package slipday.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.genetics.Answer;

class ChooserTest {
  private static final String GOAL =
      """
      goal gold
        raise fruit weight to 3 kg
        refuse cracked
        parents 3 or more
        heritability fruit weight 0.4 of a fruit, in moschata, F2
      """;

  /** Eight selfed plants, each heavier than the one before; the best is cracked. */
  private static List<String> record() {
    List<String> record = new ArrayList<>();
    for (int plant = 1; plant <= 8; plant++) {
      record.add("2026-07-0" + plant + " selfed gold-f3 plant " + plant + ", tag " + plant + "A");
      for (int fruit = 0; fruit < 3; fruit++) {
        String subject = fruit == 0 ? plant + "A" : "gold-f3 plant " + plant;
        String fault = plant == 8 && fruit == 0 ? ", fault cracked" : "";
        double kilograms = 1 + Math.sqrt(plant) / 3 + fruit / 50.0;
        record.add(
            String.format(
                Locale.ROOT,
                "2026-09-0%d picked %s, %.3f kg%s",
                fruit + 1,
                subject,
                kilograms,
                fault));
      }
      record.add(
          "2026-10-01 saved " + plant + "A, " + plant * 10 + " seeds, into gold-f4-" + plant);
    }
    return record;
  }

  private static Answer<Chosen> choose(String goal, List<String> record, Wish wish) {
    Garden garden = Gardens.garden(goal, record);
    Line gold =
        garden.lines().stream().filter(l -> l.name().equals("gold")).findFirst().orElseThrow();
    return Chooser.choose(garden, gold, wish);
  }

  private static Chosen chosen(String goal, Wish wish) {
    return choose(goal, record(), wish).value().orElseThrow();
  }

  private static List<String> tags(Chosen chosen) {
    return chosen.parts().stream().map(Chosen.Part::tag).toList();
  }

  private static Wish wish(Optional<Integer> parents, Optional<Integer> plants) {
    return new Wish(parents, Optional.empty(), Optional.empty(), plants, List.of(), List.of());
  }

  private static Wish tagged(List<String> keep, List<String> drop) {
    return new Wish(
        Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(6), keep, drop);
  }

  /** The best is refused, the next three give two plants each: all that the floor leaves free. */
  @Test
  void theBestThatMayBeParentsWithinTheFloor() {
    Chosen chosen = chosen(GOAL, wish(Optional.empty(), Optional.of(6)));
    assertThat(tags(chosen)).containsExactly("7A", "6A", "5A");
    assertThat(chosen.parts()).extracting(Chosen.Part::plants).containsExactly(2, 2, 2);
    assertThat(chosen.proved()).isTrue();
    assertThat(chosen.unlimited().orElseThrow()).isGreaterThan(chosen.index().orElseThrow());
    assertThat(chosen.kinship().parents()).isEqualTo(3);
    assertThat(chosen.kinship().parentsAlike()).isCloseTo(3, within(1e-9));
  }

  @Test
  void theFloorCanBeAskedFor() {
    assertThat(tags(chosen(GOAL, wish(Optional.of(1), Optional.of(6))))).containsExactly("7A");
    assertThat(tags(chosen(GOAL, wish(Optional.of(5), Optional.of(5))))).hasSize(5);
  }

  /** As many plants as the plan gives the line where nothing else is asked: twice twelve. */
  @Test
  void plantsAreThoseOfThePlan() {
    Chosen chosen = chosen(GOAL, Wish.none());
    assertThat(chosen.plants()).isEqualTo(24);
    assertThat(chosen.parts().stream().mapToInt(Chosen.Part::plants).sum()).isEqualTo(24);
  }

  @Test
  void withoutAGoalsFloorAKeptLineHasItsCropsAndOneBeingFixedFourFamilies() {
    String goal = GOAL.replace("  parents 3 or more\n", "");
    assertThat(chosen(goal, wish(Optional.empty(), Optional.of(8))).kinship().parentsAlike())
        .isGreaterThanOrEqualTo(4 - 1e-9);
    List<String> record = new ArrayList<>();
    for (int plant = 1; plant <= 7; plant++) {
      record.add("2026-07-01 sibbed grey-1 plant " + plant + " by plant 8, tag " + plant + "A");
      record.add("2026-09-01 picked " + plant + "A, 1." + plant + " kg");
      record.add("2026-09-02 picked grey-1 plant " + plant + ", 1." + plant + " kg");
    }
    Garden garden =
        Gardens.garden(
            "grow grey-1\n  in north\n  plants 8, 1 m apart\n"
                + "goal grey\n  raise fruit weight to 3 kg\n",
            record);
    Line grey =
        garden.lines().stream().filter(l -> l.name().equals("grey")).findFirst().orElseThrow();
    Chosen chosen =
        Chooser.choose(garden, grey, wish(Optional.empty(), Optional.of(10))).value().orElseThrow();
    assertThat(chosen.limits().get(0).says()).contains("count for 5 used alike");
    assertThat(chosen.release()).isEmpty();
  }

  @Test
  void tooFewParentsAreToldAndAllTaken() {
    Chosen chosen = chosen(GOAL, wish(Optional.of(9), Optional.of(14)));
    assertThat(tags(chosen)).hasSize(7);
    assertThat(chosen.notes())
        .anyMatch(
            n -> n.contains("9 seed parents or more are wanted, and only 7 plants bear seed"));
  }

  /** One seed is sure to give no plant. */
  @Test
  void seedThatThereIsNotIsNotDealt() {
    Chosen chosen =
        choose(GOAL, seeds("7A 1"), wish(Optional.of(1), Optional.of(6))).value().orElseThrow();
    assertThat(tags(chosen)).containsExactly("6A");
    assertThat(chosen.notes())
        .contains(
            "Left out for too little seed, though its value is no less: 7A (1 seed for 1 plant, 3 to"
                + " be sure). Sow it besides if there is room.");
  }

  private static List<String> seeds(String... each) {
    List<String> record = new ArrayList<>(record());
    for (String fruit : each) {
      String tag = fruit.substring(0, fruit.indexOf(' '));
      record.replaceAll(
          r ->
              r.contains("saved " + tag)
                  ? r.replaceFirst("saved .* seeds", "saved " + fruit.replace(" ", ", ") + " seeds")
                  : r);
    }
    return record;
  }

  /** As lots reckon: at 75 % three plants take six seeds or more, so three seeds give one. */
  @Test
  void onlyPlantsThatTheSeedIsSureToGiveAreDealt() {
    Chosen chosen =
        choose(GOAL, seeds("7A 3", "6A 8"), wish(Optional.empty(), Optional.of(6)))
            .value()
            .orElseThrow();
    assertThat(chosen.parts())
        .filteredOn(p -> p.tag().equals("7A"))
        .extracting(Chosen.Part::plants)
        .containsExactly(1);
    assertThat(chosen.notes()).noneMatch(n -> n.startsWith("Too little seed"));
  }

  @Test
  void seedThatFallsShortIsNamed() {
    List<String> record = seeds("1A 1", "2A 1", "3A 1", "4A 1", "5A 1", "6A 3", "7A 3");
    Chosen chosen =
        choose(GOAL, record, wish(Optional.empty(), Optional.of(6))).value().orElseThrow();
    assertThat(chosen.parts()).extracting(Chosen.Part::plants).containsOnly(1);
    assertThat(chosen.notes())
        .anySatisfy(
            n ->
                assertThat(n)
                    .startsWith("Too little seed to count on the plants in 19 of 20 cases: ")
                    .contains("5A (1 seed for 1 plant, 3 to be sure)")
                    .doesNotContain("7A"));
  }

  @Test
  void parentsAreUsedAsEvenlyAsTheirSeedGoes() {
    List<String> record =
        record().stream().filter(r -> r.contains(" 7") || r.contains("6A")).toList();
    record = record.stream().map(r -> r.replace("saved 7A, 70", "saved 7A, 1")).toList();
    Chosen chosen =
        choose(GOAL, record, wish(Optional.of(2), Optional.of(4))).value().orElseThrow();
    assertThat(tags(chosen)).containsExactly("6A", "7A");
    assertThat(chosen.parts()).extracting(Chosen.Part::plants).containsExactly(3, 1);
    assertThat(chosen.notes())
        .anySatisfy(
            n ->
                assertThat(n)
                    .contains("4 plants out to 2 seed parents used alike (7A has 1 seed)"));
  }

  @Test
  void noMorePlantsThanSeeds() {
    List<String> record =
        record().stream()
            .filter(r -> r.contains(" 7") || r.contains("6A"))
            .map(r -> r.replace("saved 7A, 70", "saved 7A, 1").replace("6A, 60", "6A, 2"))
            .toList();
    Chosen chosen =
        choose(GOAL, record, wish(Optional.of(2), Optional.of(4))).value().orElseThrow();
    assertThat(chosen.plants()).isEqualTo(3);
    assertThat(chosen.notes())
        .anyMatch(n -> n.startsWith("Of all that may go on there are 3 seeds, for 4 plants"));
  }

  @Test
  void fewerPlantsThanParentsAreTold() {
    Chosen chosen = chosen(GOAL, wish(Optional.of(3), Optional.of(1)));
    assertThat(chosen.plants()).isEqualTo(3);
    assertThat(chosen.notes())
        .anyMatch(n -> n.startsWith("Asked for: 1 plant; 3 seed parents need 3 plants"));
    assertThat(chosen(GOAL, wish(Optional.of(1), Optional.of(1))).notes())
        .noneMatch(n -> n.startsWith("Asked for"));
  }

  /** Of 7A and 6A in one bag, 70 seeds to 60, no share can be sown. */
  @Test
  void mixedSeedIsTold() {
    List<String> record =
        record().stream().map(r -> r.replaceAll("gold-f4-[67]", "gold-mix")).toList();
    List<String> told =
        choose(GOAL, record, wish(Optional.empty(), Optional.of(6))).value().orElseThrow().notes();
    assertThat(told)
        .filteredOn(n -> n.startsWith("Lot `"))
        .singleElement()
        .satisfies(
            n ->
                assertThat(n)
                    .startsWith("Lot `gold-mix` mixes seed of 2 fruits, all chosen:")
                    .containsPattern("expect, by its seeds, fruit weight 1\\.\\d\\d kg\\.$"));
    List<String> uncounted =
        record.stream().map(r -> r.replace("saved 6A, 60 seeds", "saved 6A")).toList();
    assertThat(
            choose(GOAL, uncounted, wish(Optional.empty(), Optional.of(6)))
                .value()
                .orElseThrow()
                .notes())
        .anyMatch(n -> n.endsWith("nothing can be expected by what is recorded."));
    assertThat(chosen(GOAL, Wish.none()).notes()).noneMatch(n -> n.startsWith("Lot `"));
  }

  /** Plants that were only weighed are measured beside the others, and nothing can come of them. */
  @Test
  void plantsWithoutSeedCountForNoKinship() {
    List<String> record = new ArrayList<>(record());
    for (int plant = 1; plant <= 6; plant++) {
      record.add("2026-09-05 picked early plant " + plant + ", 1." + plant + " kg");
    }
    String early =
        GOAL
            + "lot gold-f2\n  of gold\n  generation F2\n"
            + "grow gold-f2 as early\n  in south\n  plants 6, 20 cm apart\n  seed not saved\n";
    Chosen alone = chosen(GOAL, wish(Optional.empty(), Optional.of(6)));
    Chosen beside =
        choose(early, record, wish(Optional.empty(), Optional.of(6))).value().orElseThrow();
    assertThat(beside.candidates().candidates()).hasSizeGreaterThan(8);
    assertThat(beside.kinship()).isEqualTo(alone.kinship());
    assertThat(beside.release().orElseThrow().shown())
        .isEqualTo(alone.release().orElseThrow().shown());
    assertThat(beside.release().orElseThrow().within())
        .isEqualTo(alone.release().orElseThrow().within());
  }

  @Test
  void whatIsKeptOrDropped() {
    assertThat(tags(chosen(GOAL, tagged(List.of("1a"), List.of())))).contains("1A");
    assertThat(tags(chosen(GOAL, tagged(List.of(), List.of("7A"))))).doesNotContain("7A");
    assertThat(choose(GOAL, record(), tagged(List.of("8A"), List.of())).refusal())
        .contains("`8A` can't be kept: gold-f3 plant 8 may be no parent (cracked (8A)).");
    assertThat(choose(GOAL, record(), tagged(List.of("7B"), List.of())).refusal())
        .hasValueSatisfying(
            why ->
                assertThat(why)
                    .startsWith("No marked fruit of `gold` carries the tag `7B`. Did you mean"));
  }

  @Test
  void withoutAGoalEqualPartsGoOn() {
    Chosen chosen = chosen("", wish(Optional.of(4), Optional.of(8)));
    assertThat(chosen.index()).isEmpty();
    assertThat(chosen.parts()).extracting(Chosen.Part::plants).containsOnly(1);
    assertThat(chosen.notes()).anyMatch(n -> n.startsWith("Nothing can be valued"));
  }

  @Test
  void withoutSeedThereIsNoChoice() {
    assertThat(choose(GOAL, List.of(), Wish.none()).refusal())
        .contains("No plant of `gold` has a fruit marked or measured on record.");
    assertThat(
            choose(GOAL, List.of("2026-09-01 picked gold-f3 plant 1, 1 kg"), Wish.none()).refusal())
        .hasValueSatisfying(
            why -> assertThat(why).startsWith("No marked fruit of `gold` may give"));
  }

  /** What is promised lies beyond the candidates' mean, towards the aim, within its interval. */
  @Test
  void theNextGenerationIsExpectedNearerTheAim() {
    Chosen.Promise weight = chosen(GOAL, wish(Optional.empty(), Optional.of(6))).promises().get(0);
    assertThat(weight.next().value()).isGreaterThan(weight.now());
    assertThat(weight.next().low()).isLessThan(weight.next().value());
    assertThat(weight.unlimited().orElseThrow()).isGreaterThan(weight.next().value());
    assertThat(weight.aimed()).contains(false);
  }

  /** Of a line being fixed the next best families are kept besides, five in all. */
  @Test
  void remnantsOfFiveFamilies() {
    Chosen chosen = chosen(GOAL, wish(Optional.empty(), Optional.of(6)));
    assertThat(chosen.remnants())
        .extracting(r -> r.fruit().fruit().tag() + " " + r.seeds().orElse(-1) + " " + r.chosen())
        .containsExactly("7A 65 true", "6A 55 true", "5A 45 true", "4A 40 false", "3A 30 false");
  }

  /**
   * Additive variance among plants selfed by single seeds out of one F1 is 1, 1.5 and 1.75 times
   * that of the F2 in F2, F3 and F4, and 2 at the end: D. S. Falconer and T. F. C. Mackay 1996,
   * chapter 15 (from memory; worked out again).
   */
  @ParameterizedTest
  @CsvSource({"2024, 1", "2025, 1.5", "2026, 1.75"})
  void whatSelfingStillHides(int year, double timesTheF2) {
    List<String> record = new ArrayList<>();
    String last = "";
    for (int y = 2024; y <= year; y++) {
      for (int plant = 1; plant <= 5; plant++) {
        String stand = y == 2024 ? "seed-f2 plant " + plant : "s" + y + "-" + plant + " plant 1";
        record.add(y + "-07-0" + plant + " selfed " + stand + ", tag " + plant + "A");
        record.add(y + "-09-01 picked " + plant + "A, " + (1 + plant / 10.0) + " kg");
        record.add(y + "-09-02 picked " + stand + ", " + (1.1 + plant / 10.0) + " kg");
        if (y < year) {
          record.add(y + "-10-01 saved " + plant + "A, 50 seeds, into s" + (y + 1) + "-" + plant);
        }
      }
      last = "s" + y + "-";
    }
    StringBuilder plan = new StringBuilder(GOAL + "lot seed-f2\n  of gold\n  generation F2\n");
    if (year == 2024) {
      plan.append("grow seed-f2\n  in south\n  plants 5, 50 cm apart\n");
    }
    for (int plant = 1; plant <= 5 && year > 2024; plant++) {
      plan.append("grow ")
          .append(last)
          .append(plant)
          .append("\n  in south\n  plants 1, 50 cm apart\n");
    }
    Garden garden = Gardens.garden(year, plan.toString(), record);
    Line gold =
        garden.lines().stream().filter(l -> l.name().equals("gold")).findFirst().orElseThrow();
    Chosen.Release release =
        Chooser.choose(garden, gold, Wish.none()).value().orElseThrow().release().orElseThrow();
    assertThat(2 * release.shown()).isCloseTo(timesTheF2, within(1e-9));
    double next = (2 - timesTheF2) / 2;
    assertThat(release.within()).isCloseTo(next / (next + timesTheF2), within(1e-9));
    Chosen.TraitRelease weight = release.traits().get(0);
    // A half, a quarter … of the rest each time: all of it is twice the next.
    assertThat(Math.pow(weight.ceiling() / weight.deviation(), 2)).isCloseTo(2, within(1e-9));
  }
}
