package slipday.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.choice.Candidate.SeedFruit;

class CandidatesTest {
  private static final String GOAL =
      """
      goal gold
        raise sweetness to 14 brix, matters 5
        keep fruit weight at 1.2 kg to 1.8 kg, matters 2
        refuse cracked
        parents 2 or more
      """;

  /** Four plants in one bed, two selfed fruits each, sweetness by plant. */
  private static List<String> plants(double... brix) {
    List<String> record = new ArrayList<>();
    record.add("2026-05-12 sowed gold-f3, 16 seeds");
    for (int i = 0; i < brix.length; i++) {
      int plant = i + 1;
      for (String letter : List.of("A", "B")) {
        String tag = plant + letter;
        double figure = brix[i] + (letter.equals("A") ? .2 : -.2);
        record.add("2026-07-08 selfed gold-f3 plant " + plant + ", tag " + tag);
        record.add(
            String.format(
                Locale.ROOT, "2026-09-01 picked %s, 1.5 kg less 0.1 kg, %.1f brix", tag, figure));
      }
    }
    return record;
  }

  private static Candidate plant(Candidates found, String name) {
    return found.candidates().stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError(name + " is none of " + found.candidates()));
  }

  private static Candidate.Figure figure(Candidate candidate, String trait) {
    return candidate.figures().stream()
        .filter(f -> f.trait().name().equals(trait))
        .findFirst()
        .orElseThrow();
  }

  private static Candidates.Study study(Candidates found, String trait) {
    return found.traits().stream()
        .filter(s -> s.trait().name().equals(trait))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void thePlantIsTheCandidateAndItsSelfedFruitsTie() {
    List<String> record = plants(12, 10, 11, 9);
    record.add("2026-09-10 saved 1A, 100 seeds, into gold-f4-1A");
    record.add("2026-09-10 saved 1B, 240 seeds, into gold-f4-1B");
    record.add("2026-09-02 fault 2A, scarred");
    Candidates found = Gardens.candidates(GOAL, record);
    assertThat(found.candidates().stream().map(Candidate::name))
        .containsExactly(
            "gold-f3 plant 1", "gold-f3 plant 3", "gold-f3 plant 2", "gold-f3 plant 4");
    Candidate best = found.candidates().get(0);
    assertThat(best.speaksFor()).contains("1st for sweetness");
    assertThat(best.fruits()).hasSize(2);
    SeedFruit one = best.fruits().get(0);
    SeedFruit other = best.fruits().get(1);
    assertThat(one.index().orElseThrow()).isEqualTo(other.index().orElseThrow());
    assertThat(one.index()).isEqualTo(best.index());
    // More seed breaks the tie, soundness before it.
    assertThat(one.fruit().tag()).isEqualTo("1B");
    assertThat(one.seeds()).contains(240);
    assertThat(one.generation()).contains("F4");
    SeedFruit sound = plant(found, "gold-f3 plant 2").fruits().get(0);
    assertThat(sound.fruit().tag()).isEqualTo("2B");
    assertThat(found.notes()).anyMatch(n -> n.contains("0.1, 0.3 or 0.5") && n.contains("plant 1"));
  }

  /** The seed of a sibbed fruit is worth the mean of its parents. */
  @Test
  void sibbedSeedIsTheMeanOfItsParents() {
    List<String> record = plants(12, 10, 11, 9);
    record.add("2026-07-09 sibbed gold-f3 plant 1 by plant 2, tag 1S");
    record.add("2026-07-09 crossed gold-f3 plant 1 by grey-1 plant 2, tag 1X");
    record.add("2026-05-12 sowed grey-1 as grey-1, 6 seeds");
    Candidates found = Gardens.candidates(GOAL + "grow grey-1\n  in north\n", record);
    Candidate mother = plant(found, "gold-f3 plant 1");
    double mean = (mother.index().orElseThrow() + index(found, "gold-f3 plant 2")) / 2;
    assertThat(fruit(mother, "1S").index().orElseThrow()).isCloseTo(mean, within(1e-9));
    assertThat(fruit(mother, "1X").ofLine()).isFalse();
    assertThat(fruit(mother, "1X").index()).isEmpty();
    assertThat(fruit(mother, "1X").speaksAgainst()).contains("a cross with grey-1 plant 2");
  }

  private static double index(Candidates found, String plant) {
    return plant(found, plant).index().orElseThrow();
  }

  private static SeedFruit fruit(Candidate plant, String tag) {
    return plant.fruits().stream()
        .filter(f -> f.fruit().tag().equals(tag))
        .findFirst()
        .orElseThrow();
  }

  /** Fruit for the kitchen tells of the plant too, each of several weighed together. */
  @Test
  void kitchenFruitCounts() {
    List<String> record = plants(12, 10, 11, 9);
    double before =
        figure(plant(Gardens.candidates(GOAL, record), "gold-f3 plant 4"), "fruit weight")
            .raw()
            .orElseThrow();
    record.add("2026-09-20 picked gold-f3 plant 4, 2 fruits, 4.2 kg");
    Candidates found = Gardens.candidates(GOAL, record);
    Candidate.Figure weight = figure(plant(found, "gold-f3 plant 4"), "fruit weight");
    assertThat(before).isCloseTo(1.4, within(1e-9));
    assertThat(weight.fruits()).isEqualTo(4);
    assertThat(weight.raw().orElseThrow()).isCloseTo((1.4 + 1.4 + 2.1 + 2.1) / 4, within(1e-9));
    assertThat(study(found, "fruit weight").corrected()).contains(Correction.MARKED);
  }

  /** A bed that makes all of its fruit sweeter makes no plant of it better. */
  @Test
  void theBedIsTakenOff() {
    List<String> record = plants(12, 10, 11, 9);
    List<String> other = new ArrayList<>();
    for (String line : plants(15, 13, 14, 12)) {
      other.add(line.replace("gold-f3", "gold-north").replaceAll("(\\d)([AB])\\b", "1$1$2"));
    }
    record.addAll(other);
    Candidates found = Gardens.candidates(GOAL, record);
    assertThat(study(found, "sweetness").corrected()).contains(Correction.BED);
    for (int i = 1; i <= 4; i++) {
      double south =
          figure(plant(found, "gold-f3 plant " + i), "sweetness").predicted().get().value();
      double north =
          figure(plant(found, "gold-north plant " + i), "sweetness").predicted().get().value();
      assertThat(north).isCloseTo(south, within(1e-6));
    }
  }

  @Test
  void fruitLoadIsCorrectedForOrChosenForNeverBoth() {
    List<String> record = plants(12, 10, 11, 9);
    record.add("2026-09-20 picked gold-f3 plant 4, 5 fruits, 4.2 kg");
    record.add("2026-09-20 picked gold-f3 plant 2, 2 fruits, 2.9 kg");
    Candidates corrected = Gardens.candidates(GOAL, record);
    assertThat(study(corrected, "sweetness").corrected()).contains(Correction.LOAD);
    assertThat(corrected.notes()).anyMatch(n -> n.startsWith("Fruit load is corrected for"));
    Candidates chosen =
        Gardens.candidates(GOAL + "  keep fruits per plant at 3 or more, matters 4\n", record);
    assertThat(chosen.traits()).noneMatch(s -> s.corrected().contains(Correction.LOAD));
    assertThat(chosen.notes()).anyMatch(n -> n.startsWith("Fruits per plant are chosen for"));
    assertThat(figure(plant(chosen, "gold-f3 plant 4"), "fruits per plant").raw()).contains(7.0);
  }

  /** A heritability stated for F2 plant means is turned into one of these plants' fruits. */
  @Test
  void aStatedHeritabilityIsUsed() {
    List<String> record = plants(12, 10, 11, 9);
    String stated = "  heritability sweetness 0.4 of plant means of 2 fruits, in moschata, F2\n";
    Candidates found = Gardens.candidates(GOAL + stated, record);
    Candidates.Study study = study(found, "sweetness");
    assertThat(study.source()).isEqualTo(Source.STATED);
    assertThat(study.heritabilities()).hasSize(1);
    // Plants of one F3 family differ by half as much as F2 plants do.
    assertThat(study.heritabilities().get(0)).isBetween(.15, .4);
    Candidates plot =
        Gardens.candidates(GOAL + stated.replace("plant means of 2 fruits", "plot means"), record);
    assertThat(study(plot, "sweetness").source()).isEqualTo(Source.ASSUMED);
    assertThat(study(plot, "sweetness").says()).anyMatch(s -> s.contains("plot means"));
    assertThat(study(plot, "sweetness").says()).anyMatch(s -> s.contains("write `of plot means"));
    Candidates alike = Gardens.candidates(GOAL + stated.replace("F2", "F1"), record);
    assertThat(study(alike, "sweetness").says()).anyMatch(s -> s.contains("of F1"));
  }

  /**
   * Plots of one plant of F4: what families differ by is that of F3 plants, 0.75, of 0.875 in all;
   * so 0.3 of plots is 0.35 of plants. Of six plants: 0.3 · 0.875 ÷ (0.75 · (0.3 + 6 · 0.7)).
   */
  @ParameterizedTest
  @CsvSource({"1 plants, 0.35", "6 plants, 0.0777778"})
  void plotMeansAreTurnedIntoThoseOfPlants(String plants, double share) {
    List<String> record = plants(12, 10, 11, 9);
    String of = "  heritability sweetness %s of %s, in moschata, F4\n";
    Candidates plots =
        Gardens.candidates(
            GOAL + String.format(Locale.ROOT, of, "0.3", "plot means of " + plants), record);
    Candidates single =
        Gardens.candidates(GOAL + String.format(Locale.ROOT, of, share, "plant means"), record);
    assertThat(study(plots, "sweetness").source()).isEqualTo(Source.STATED);
    assertThat(study(plots, "sweetness").heritabilities().get(0))
        .isCloseTo(study(single, "sweetness").heritabilities().get(0), within(1e-6));
    assertThat(study(plots, "sweetness").says()).anyMatch(s -> s.contains("at the low side"));
  }

  /** Plots of F2 are all of one family, and no plot of one plant can have 0.95. */
  @ParameterizedTest
  @CsvSource({"0.3, F2, are no families", "0.95, F4, can have", "0.3, OP1, are no families"})
  void plotMeansThatTellNothingAreLeftAside(String share, String among, String why) {
    String stated =
        "  heritability sweetness "
            + share
            + " of plot means of 1 plants, in moschata, "
            + among
            + "\n";
    Candidates found = Gardens.candidates(GOAL + stated, plants(12, 10, 11, 9));
    assertThat(study(found, "sweetness").source()).isEqualTo(Source.ASSUMED);
    assertThat(study(found, "sweetness").says()).anyMatch(s -> s.contains(why));
  }

  /** One cracked fruit of two is no more than a half, and more than a third. */
  @ParameterizedTest
  @CsvSource({
    "cracked, cracked (1A)",
    "cracked in more than 1 in 2 fruits, ''",
    "cracked in more than 1 in 3 fruits, cracked in 1 of 2 fruits (1A)",
    "cracked in more than 1 of its fruits, ''",
    "cracked in more than 0 fruits, cracked in 1 of 2 fruits (1A)",
  })
  void aShareOfFruitsMayBeFaulty(String refuse, String refused) {
    List<String> record = plants(12, 10, 11, 9);
    record.add("2026-09-02 fault 1A, cracked");
    record.add("2026-09-03 fault 1A, cracked");
    Candidates found = Gardens.candidates(GOAL.replace("cracked", refuse), record);
    Candidate one = plant(found, "gold-f3 plant 1");
    assertThat(one.refused().orElse("")).isEqualTo(refused);
    if (refused.isEmpty()) {
      assertThat(one.speaksAgainst()).contains("cracked in 1 of 2 fruits (1A)");
      assertThat(one.fruits().get(0).fruit().tag()).isEqualTo("1B");
      assertThat(found.notes())
          .anyMatch(
              n ->
                  n.contains(
                      "`refuse " + refuse + "`, 0 plants are refused and 1 with fewer such"));
    }
  }

  /** Kitchen fruit counts too; what is told of the plant itself refuses it whatever its fruits. */
  @Test
  void faultsOfKitchenFruitAndOfPlantsCount() {
    List<String> record = plants(12, 10, 11, 9);
    record.add("2026-09-20 picked gold-f3 plant 2, 4 fruits, 4.2 kg, fault cracked");
    record.add("2026-09-20 picked gold-f3 plant 3, 4 fruits, 4.2 kg");
    record.add("2026-09-02 fault 3A, cracked");
    record.add("2026-08-02 off-type seen gold-f3 plant 4");
    Candidates found =
        Gardens.candidates(
            GOAL.replace("cracked", "cracked in more than 20 % of its fruits")
                + "  refuse off-type in more than 3 fruits\n",
            record);
    assertThat(plant(found, "gold-f3 plant 2").refused()).contains("cracked in 4 of 6 fruits");
    assertThat(plant(found, "gold-f3 plant 3").refused()).isEmpty();
    assertThat(plant(found, "gold-f3 plant 4").refused()).contains("off-type");
  }

  /** A fault of the plant is none of a fruit; a fault that is told twice is one. */
  @Test
  void aFaultOfAWholePlantIsNotAFruits() {
    List<String> record = plants(12, 10, 11, 9);
    record.add("2026-08-20 fault gold-f3 plant 1, mosaic");
    record.add("2026-08-21 fault gold-f3 plant 1, Mosaic");
    record.add("2026-09-20 picked gold-f3 plant 2, 2 fruits, fault mosaic, fault mosaic");
    Candidates found =
        Gardens.candidates(GOAL.replace("cracked", "mosaic in more than 2 of its fruits"), record);
    assertThat(plant(found, "gold-f3 plant 1").refused()).contains("mosaic");
    assertThat(plant(found, "gold-f3 plant 2").refused()).isEmpty();
    assertThat(plant(found, "gold-f3 plant 2").speaksAgainst()).contains("mosaic in 2 of 4 fruits");
  }

  @Test
  void refusedPlantsAreNoParents() {
    List<String> record = plants(12, 10, 11, 9);
    record.add("2026-09-02 fault 1A, cracked");
    record.add("2026-09-02 tasted gold-f3 plant 3, bitter");
    Candidates found = Gardens.candidates(GOAL, record);
    assertThat(plant(found, "gold-f3 plant 1").refused()).contains("cracked (1A)");
    assertThat(plant(found, "gold-f3 plant 3").refused().orElseThrow()).startsWith("bitter");
    assertThat(found.candidates().get(0).name()).isEqualTo("gold-f3 plant 2");
    assertThat(found.candidates().get(0).rank()).contains(1);
    assertThat(plant(found, "gold-f3 plant 1").rank()).isEmpty();
  }

  /** No eating score counts before the plant was tasted for bitterness. */
  @Test
  void bitternessFirst() {
    List<String> record = plants(12, 10);
    record.replaceAll(l -> l.replace("gold-f3", "gold-x"));
    record.add("2026-09-02 scored 1A, flavour 8 of 10");
    record.add("2026-09-02 scored 2A, flavour 6 of 10");
    record.add("2026-09-01 tasted gold-x plant 2, clean");
    String lot = "lot gold-x\n  of gold\n  exposed to pepo-gourd\ngrow gold-x\n  in south\n";
    Candidates found = Gardens.candidates(GOAL + "  raise flavour to 9, matters 1\n" + lot, record);
    assertThat(plant(found, "gold-x plant 1").refused().orElseThrow()).contains("was not tasted");
    assertThat(plant(found, "gold-x plant 2").refused()).isEmpty();
    assertThat(study(found, "flavour").plants()).isEqualTo(1);
  }

  @Test
  void scoresOfTwoScalesAreHeldOnOne() {
    List<String> record = plants(12, 10);
    record.add("2026-09-02 scored 1A, flavour 4 of 5");
    record.add("2026-09-02 scored 2A, flavour 6 of 10");
    Candidates found = Gardens.candidates(GOAL, record);
    assertThat(figure(plant(found, "gold-f3 plant 1"), "flavour").raw()).contains(8.0);
    assertThat(study(found, "flavour").trait().words(8)).isEqualTo("8.0 of 10");
  }

  @Test
  void whatIsLackingIsSaid() {
    Candidates none = Gardens.candidates(GOAL, List.of());
    assertThat(none.candidates()).isEmpty();
    Candidates one = Gardens.candidates(GOAL, plants(12));
    assertThat(one.candidates()).hasSize(1);
    assertThat(one.notes()).anyMatch(n -> n.startsWith("There is one candidate only"));
    assertThat(one.candidates().get(0).index()).isEmpty();
    Candidates alike = Gardens.candidates(GOAL, plants(12, 12, 12));
    assertThat(study(alike, "fruit weight").source()).isEqualTo(Source.NONE);
    assertThat(study(alike, "fruit weight").says()).anyMatch(s -> s.contains("alike"));
    assertThat(alike.candidates()).extracting(c -> c.rank().orElse(0)).containsOnly(1);
    Candidates noGoal = Gardens.candidates("", plants(12, 10, 11));
    assertThat(noGoal.notes()).anyMatch(n -> n.startsWith("No goal is declared"));
    assertThat(noGoal.candidates()).allMatch(c -> c.rank().isEmpty());
    assertThat(figure(noGoal.candidates().get(0), "sweetness").predicted()).isPresent();
    Candidates missing =
        Gardens.candidates(GOAL + "  raise aroma to 9, matters 1\n", plants(12, 10, 11));
    assertThat(missing.notes()).anyMatch(n -> n.startsWith("`aroma` is aimed at"));
  }

  /** The record's order means nothing, to the last digit. */
  @Test
  void theOrderOfLinesMeansNothing() {
    List<String> record = plants(12, 10, 11, 9, 13);
    Candidates first = Gardens.candidates(GOAL, record);
    Collections.shuffle(record, new Random(3));
    Candidates second = Gardens.candidates(GOAL, record);
    assertThat(second.candidates().stream().map(c -> c.name() + c.index() + c.figures()))
        .isEqualTo(
            first.candidates().stream().map(c -> c.name() + c.index() + c.figures()).toList());
  }

  /**
   * Every fruit of the F3 marked, every one of the F2 for the kitchen: which it is nothing tells.
   */
  @Test
  void markedOrKitchenIsNotCorrectedForWhereItIsTheGeneration() {
    List<String> record = plants(12, 10, 11, 9, 13, 12.4);
    String older =
        "lot gold-f2\n  of gold\n  generation F2\n"
            + "grow gold-f2 as early\n  in south\n  plants 6, 20 cm apart\n";
    for (int plant = 1; plant <= 6; plant++) {
      record.add(
          "2026-09-03 picked early plant " + plant + ", 1.4 kg, " + (9 + plant / 5.0) + " brix");
    }
    Candidates.Study apart = study(Gardens.candidates(GOAL + older, record), "sweetness");
    assertThat(apart.corrected()).doesNotContain(Correction.MARKED, Correction.LOAD);
    assertThat(apart.says())
        .anyMatch(s -> s.startsWith("What is due to marked or kitchen") && s.contains("can't be"));
    for (int plant = 1; plant <= 6; plant++) {
      record.add(
          "2026-09-04 picked gold-f3 plant " + plant + ", 1.4 kg, 1" + plant % 3 + ".5 brix");
    }
    Candidates.Study both = study(Gardens.candidates(GOAL + older, record), "sweetness");
    assertThat(both.corrected()).contains(Correction.MARKED);
    assertThat(both.says()).noneMatch(s -> s.startsWith("What is due to marked or kitchen"));
  }

  @Test
  void aMeanOfUnsaidFruitsIsSaidToBeTakenAsOfOne() {
    String stated = GOAL + "  heritability sweetness 0.4 of plant means%s, in moschata, F2\n";
    assertThat(
            study(Gardens.candidates(String.format(stated, ""), plants(12, 10, 11, 9)), "sweetness")
                .says())
        .anyMatch(s -> s.startsWith("Of how many fruits a plant's mean was is not said"));
    assertThat(
            study(
                    Gardens.candidates(
                        String.format(stated, " of 1 fruits"), plants(12, 10, 11, 9)),
                    "sweetness")
                .says())
        .noneMatch(s -> s.startsWith("Of how many fruits"));
  }
}
