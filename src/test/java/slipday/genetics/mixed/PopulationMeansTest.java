package slipday.genetics.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PopulationMeansTest {
  private final List<Measurement> measured = new ArrayList<>();
  private final List<String> populations = new ArrayList<>();
  private int plants;

  private void grow(String population, String season, double... values) {
    for (double value : values) {
      measured.add(new Measurement(plants++, value, 1, Map.of("season", season), Map.of()));
      populations.add(population);
    }
  }

  private PopulationMeans means() {
    return PopulationMeans.of(measured, populations);
  }

  /** Side by side, one fruit a plant: the two-sample difference of every textbook. */
  @Test
  void sideBySide() {
    grow("F2", "2026", 10, 11, 12, 13);
    grow("F3", "2026", 12, 14, 13);
    PopulationMeans.Difference found = means().difference("F3", "F2").value().orElseThrow();
    assertThat(found.value()).isCloseTo(1.5, within(1e-9));
    // Pooled variance (5 + 2) / 5, times 1/4 + 1/3.
    assertThat(found.error()).isCloseTo(Math.sqrt(1.4 * (1.0 / 4 + 1.0 / 3)), within(1e-6));
  }

  @Test
  void overTwoSeasonsACheckTellsWeatherFromGain() {
    grow("F2", "2025", 10, 11, 12);
    grow("F3", "2026", 14, 15, 16);
    assertThat(means().difference("F3", "F2").refusal().orElseThrow())
        .contains("not grown beside each other");
    grow("check", "2025", 8, 9);
    grow("check", "2026", 11, 12);
    PopulationMeans.Difference found = means().difference("F3", "F2").value().orElseThrow();
    // Four up, three of them the season's.
    assertThat(found.value()).isCloseTo(1, within(1e-9));
    assertThat(found.error()).isPositive();
  }

  @Test
  void severalFruitsOfAPlantAreNotSeveralPlants() {
    Random random = new Random(2);
    for (int i = 0; i < 8; i++) {
      double own = 3 * random.nextGaussian();
      grow(i < 4 ? "F2" : "F3", "2026", own);
      Measurement first = measured.get(measured.size() - 1);
      for (int fruit = 0; fruit < 9; fruit++) {
        measured.add(
            new Measurement(
                first.plant(), own + .1 * random.nextGaussian(), 1, first.factors(), Map.of()));
        populations.add(populations.get(populations.size() - 1));
      }
    }
    // Eighty fruits, yet the error is that of eight plants.
    assertThat(means().difference("F3", "F2").value().orElseThrow().error()).isGreaterThan(1);
  }

  @Test
  void plantsAllAlikeLeaveNoErrorToJudgeBy() {
    grow("F2", "2026", 10, 10, 10);
    grow("F3", "2026", 12, 12, 12);
    assertThat(means().difference("F3", "F2").refusal().orElseThrow()).contains("alike");
  }
}
