package slipday.genetics.mixed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slipday.genetics.Pedigree;

class FillingTest {
  private static final int GENERATIONS = 20;
  private static final int AT_A_TIME = 40;

  @Test
  void countsWhatTheFactorThenHolds() {
    MixedModel model = BreedingModel.of(atRandom(AT_A_TIME), figures(AT_A_TIME)).model;
    boolean[] both = {true, true};
    double[] ratios = {2, 3};
    Filling told = Filling.of(new Layout(model, both).equations(ratios));

    assertThat(told.numbers()).isEqualTo(model.solve(1.5, 1, 3).filled());
    assertThat(told.tooMuch()).isEmpty();
  }

  /** 60,000 plants, each of two of 3,000 drawn at random: no garden, and far too much. */
  @Test
  void refusesWhatCouldNotBeWorkedOut() {
    int many = 3000;
    BreedingModel model = BreedingModel.of(atRandom(many), figures(many));

    assertThat(model.stated(0.3, 1, 1).refusal().orElseThrow())
        .contains("million numbers")
        .contains("include fewer seasons");
    assertThat(model.estimate().refusal()).isEqualTo(model.stated(0.3, 1, 1).refusal());
  }

  private static Pedigree atRandom(int atATime) {
    Random random = new Random(17);
    Pedigree.Builder plants = Pedigree.begin(0);
    for (int i = 0; i < atATime; i++) {
      plants.founder("founder", 0);
    }
    for (int g = 1; g < GENERATIONS; g++) {
      int from = (g - 1) * atATime;
      for (int i = 0; i < atATime; i++) {
        plants.offspring("plant", from + random.nextInt(atATime), from + random.nextInt(atATime));
      }
    }
    return plants.build();
  }

  private static List<Measurement> figures(int atATime) {
    Random random = new Random(18);
    List<Measurement> figures = new ArrayList<>();
    for (int plant = 0; plant < GENERATIONS * atATime; plant++) {
      for (int fruit = 0; fruit < 2; fruit++) {
        figures.add(
            new Measurement(
                plant,
                random.nextGaussian(),
                1,
                Map.of("season", Integer.toString(plant / atATime)),
                Map.of()));
      }
    }
    return figures;
  }
}
