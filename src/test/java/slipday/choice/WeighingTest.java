package slipday.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WeighingTest {
  private static final String HERITABILITIES =
      "  heritability fruit weight 0.4 of a fruit, in moschata, F2\n"
          + "  heritability sweetness 0.4 of a fruit, in moschata, F2\n";
  private static final String GOAL =
      "goal gold\n"
          + "  raise fruit weight to 3 kg, matters 2\n"
          + "  raise sweetness to 14 brix, matters 1\n"
          + HERITABILITIES;

  /** Ten plants: weight in one order, sweetness in another, all points for flavour on most. */
  private static List<String> record() {
    List<String> record = new ArrayList<>();
    double[] weights = {1.0, 1.4, 1.2, 1.9, 1.6, 1.3, 1.7, 1.1, 1.5, 1.8};
    double[] sweet = {11.0, 10.2, 12.1, 10.4, 11.6, 9.9, 10.8, 12.4, 11.2, 10.0};
    for (int plant = 1; plant <= weights.length; plant++) {
      for (int fruit = 0; fruit < 2; fruit++) {
        record.add(
            String.format(
                Locale.ROOT,
                "2026-09-0%d picked gold-f3 plant %d, %.2f kg, %.1f brix, flavour %d of 10",
                fruit + 1,
                plant,
                weights[plant - 1] + fruit * 0.1,
                sweet[plant - 1] - fruit * 0.2,
                plant <= 6 ? 10 : 7));
      }
    }
    return record;
  }

  private static Candidates candidates(String goal) {
    return Gardens.candidates(goal, record());
  }

  /** What the studies say of aims and weights is all that an index is made of. */
  @ParameterizedTest
  @ValueSource(strings = {"per standard deviation", "per unit", "by what is lacking"})
  void theIndexIsTheSumOfWhatEachTraitIsWorth(String weights) {
    Candidates found = candidates(GOAL + "  weights " + weights + "\n");
    assertThat(found.candidates()).hasSize(10);
    for (Candidate candidate : found.candidates()) {
      double sum = 0;
      for (Candidates.Study study : found.traits()) {
        if (study.wanted().isPresent()) {
          sum += study.wanted().get().worth(value(candidate, study.trait().name()));
        }
      }
      assertThat(candidate.index().orElseThrow()).isNegative().isCloseTo(sum, within(1e-9));
    }
  }

  private static Predicted predicted(Candidates found, int plant, String trait) {
    return found.candidates().stream()
        .filter(c -> c.name().equals("gold-f3 plant " + plant))
        .flatMap(c -> c.figures().stream())
        .filter(f -> f.trait().name().equals(trait))
        .findFirst()
        .orElseThrow()
        .predicted()
        .orElseThrow();
  }

  private static double value(Candidate candidate, String trait) {
    return candidate.figures().stream()
        .filter(f -> f.trait().name().equals(trait))
        .findFirst()
        .orElseThrow()
        .predicted()
        .orElseThrow()
        .value();
  }

  private static double weight(Candidates found, String trait) {
    return found.traits().stream()
        .filter(t -> t.trait().name().equals(trait))
        .findFirst()
        .orElseThrow()
        .weight();
  }

  /**
   * A heavy plant is expected less sweet where the two pull against each other, and surer known.
   */
  @Test
  void aCorrelationThatIsStatedCounts() {
    Candidates alone = candidates(GOAL);
    Candidates against =
        candidates(GOAL + "  genetic correlation -0.6 of sweetness, fruit weight\n");
    Predicted heavy = predicted(against, 4, "sweetness");
    assertThat(heavy.value()).isLessThan(predicted(alone, 4, "sweetness").value() - 0.01);
    assertThat(heavy.accuracy()).isGreaterThan(predicted(alone, 4, "sweetness").accuracy());
    assertThat(heavy.high() - heavy.low())
        .isLessThan(
            predicted(alone, 4, "sweetness").high() - predicted(alone, 4, "sweetness").low());
    assertThat(against.notes()).anyMatch(n -> n.startsWith("Traits that go together by"));
    assertThat(alone.notes()).noneMatch(n -> n.startsWith("Traits that go together"));
  }

  @Test
  void aCorrelationOfNothingChangesNothing() {
    Predicted alone = predicted(candidates(GOAL), 4, "sweetness");
    assertThat(
            predicted(
                candidates(GOAL + "  genetic correlation 0 of sweetness, fruit weight\n"),
                4,
                "sweetness"))
        .isEqualTo(alone);
  }

  /** A plant of which no sweetness is known is expected to be less sweet the heavier it is. */
  @Test
  void aTraitThatWasNotMeasuredIsToldByAnother() {
    List<String> record = record();
    record.replaceAll(l -> l.contains("plant 4,") ? l.replaceAll(", [0-9.]+ brix", "") : l);
    Candidates alone = Gardens.candidates(GOAL, record);
    Candidates told =
        Gardens.candidates(
            GOAL + "  genetic correlation -0.6 of sweetness, fruit weight\n", record);
    assertThat(predicted(told, 4, "sweetness").value())
        .isLessThan(predicted(alone, 4, "sweetness").value() - 0.05);
    assertThat(predicted(told, 4, "sweetness").accuracy())
        .isGreaterThan(predicted(alone, 4, "sweetness").accuracy() + 0.05);
    assertThat(says(told, "sweetness"))
        .contains(
            "Valued together with fruit weight (genetic correlation -0.60, environmental 0.00, as"
                + " the plan states); 1 plant without a figure of sweetness is told by those.");
    assertThat(says(alone, "sweetness")).noneMatch(s -> s.startsWith("Valued together"));
  }

  /** What luck does to both says nothing of what is inherited, and so takes from what both tell. */
  @Test
  void luckTheyShareIsTakenOut() {
    String genetic = "  genetic correlation 0.5 of sweetness, fruit weight\n";
    String luck = "  environmental correlation 0.5 of sweetness, fruit weight\n";
    Candidates without = candidates(GOAL + genetic);
    Candidates with = candidates(GOAL + genetic + luck);
    assertThat(predicted(with, 4, "sweetness").value())
        .isLessThan(predicted(without, 4, "sweetness").value());
    assertThat(without.notes()).anyMatch(n -> n.contains("no environmental correlation is stated"));
    assertThat(with.notes()).noneMatch(n -> n.contains("no environmental"));
  }

  /** Fruits are counted of a plant once, and share what its place does to it with its weights. */
  @Test
  void whatPlacesDoToACountAndToAWeightGoesTogether() {
    String goal =
        GOAL
            + "  keep fruits per plant at 3 or more\n"
            + "  heritability fruits per plant 0.3 of plant means, in moschata, F2\n"
            + "  genetic correlation 0.5 of fruits per plant, fruit weight\n";
    List<String> record = record();
    record.add("2026-09-12 picked gold-f3 plant 4, 3 fruits, 5.7 kg");
    Candidates without = Gardens.candidates(goal, record);
    Candidates with =
        Gardens.candidates(
            goal + "  environmental correlation 0.6 of fruits per plant, fruit weight\n", record);
    // That plant 4 bore many heavy fruits may be due to its place, the more so the closer they go.
    assertThat(predicted(with, 4, "fruit weight").value())
        .isLessThan(predicted(without, 4, "fruit weight").value() - 0.005);
    assertThat(predicted(with, 4, "fruits per plant").value())
        .isLessThan(predicted(without, 4, "fruits per plant").value() - 0.005);
  }

  @Test
  void whereNothingIsKnownOfPlantsTheirPlaceTellsNothing() {
    List<String> record = record();
    record.removeIf(l -> l.startsWith("2026-09-02"));
    String goal =
        GOAL
            + "  keep fruits per plant at 3 or more\n"
            + "  heritability fruits per plant 0.3 of plant means, in moschata, F2\n"
            + "  genetic correlation 0.5 of fruits per plant, fruit weight\n"
            + "  environmental correlation 0.6 of fruits per plant, fruit weight\n";
    record.add("2026-09-12 measured gold-f3 plant 4, length 20 cm");
    record.add("2026-09-13 picked gold-f3 plant 4, 3 fruits");
    assertThat(says(Gardens.candidates(goal, record), "fruit weight"))
        .anyMatch(s -> s.contains("of their own in fruit weight is not known here"));
  }

  private static List<String> says(Candidates found, String trait) {
    return found.traits().stream()
        .filter(t -> t.trait().name().equals(trait))
        .findFirst()
        .orElseThrow()
        .says();
  }

  /**
   * Per unit a kilogram counts as much as a degree of brix does; per deviation it is the spread.
   */
  @Test
  void weightsPerUnit() {
    Candidates perUnit = candidates(GOAL + "  weights per unit\n");
    Candidate first =
        perUnit.candidates().stream()
            .filter(c -> c.rank().equals(Optional.of(1)))
            .findFirst()
            .orElseThrow();
    double lacking = 2 * (3 - value(first, "fruit weight")) + (14 - value(first, "sweetness"));
    assertThat(first.index().orElseThrow()).isCloseTo(-lacking, within(1e-9));
    assertThat(perUnit.counted()).contains("own unit");
  }

  /**
   * With traits that do not go together the weights are what is lacking over the variance of
   * breeding values (J. Pesek and R. J. Baker 1969, from memory): twice the lack, twice the weight.
   */
  @Test
  void weightsByWhatIsLacking() {
    String by = GOAL + "  weights by what is lacking\n";
    Candidates once = candidates(by);
    double mean =
        once.traits().stream()
            .filter(t -> t.trait().name().equals("fruit weight"))
            .findFirst()
            .orElseThrow()
            .mean();
    Candidates twice =
        candidates(by.replace("3 kg", String.format(Locale.ROOT, "%.9f kg", 2 * 3 - mean)));
    assertThat(weight(twice, "fruit weight"))
        .isCloseTo(2 * weight(once, "fruit weight"), within(1e-6));
    assertThat(weight(twice, "sweetness")).isCloseTo(weight(once, "sweetness"), within(1e-9));
    assertThat(weight(once, "sweetness")).isPositive();
    assertThat(once.counted()).contains("lacks");
  }

  @Test
  void whereNothingLacksItIsSaid() {
    String met =
        "goal gold\n  raise fruit weight to 1 kg\n"
            + "  heritability fruit weight 0.4 of a fruit, in moschata, F2\n"
            + "  weights by what is lacking\n";
    assertThat(candidates(met).notes())
        .anyMatch(n -> n.startsWith("No trait that is aimed at lacks"));
  }

  @ParameterizedTest
  @ValueSource(ints = {9, 12})
  void aScaleThatRunsOutIsTold(int aim) {
    Candidates found = candidates("goal gold\n  raise flavour to " + aim + "\n");
    assertThat(found.notes())
        .anyMatch(
            n ->
                n.contains(
                    aim == 9
                        ? "6 of 10 plants have all the points there are for flavour"
                        : "lies beyond the points it was given"));
  }
}
