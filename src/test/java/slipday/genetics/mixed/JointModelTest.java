package slipday.genetics.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipday.genetics.Pedigree;
import slipday.outside.OutsideTools;

/** Several traits valued together. */
class JointModelTest {
  private static final double CLOSE = 1e-8;

  @TempDir Path folder;

  private static double[][] correlations(double one) {
    return new double[][] {{1, one}, {one, 1}};
  }

  /**
   * Five calves with two gains each, one before and one after weaning: data and what comes out (R.
   * A. Mrode 2014, Linear Models for the Prediction of Animal Breeding Values, 3rd ed., chapter 5,
   * from memory; worked out again by generalised least squares in dense matrices).
   */
  @Test
  void theTextbooksCalves() {
    Pedigree.Builder builder = Pedigree.begin(0);
    int[] animal = new int[9];
    for (int i = 1; i <= 3; i++) {
      animal[i] = builder.founder("" + i, 0);
    }
    animal[4] = builder.offspring("4", animal[1]);
    animal[5] = builder.offspring("5", animal[3], animal[2]);
    animal[6] = builder.offspring("6", animal[1], animal[2]);
    animal[7] = builder.offspring("7", animal[4], animal[5]);
    animal[8] = builder.offspring("8", animal[3], animal[6]);
    Pedigree pedigree = builder.build();
    String[] sexes = {"male", "female", "female", "male", "male"};
    double[][] gains = {{4.5, 2.9, 3.9, 3.5, 5.0}, {6.8, 5.0, 6.8, 6.0, 7.5}};
    List<JointModel.Part> parts = new ArrayList<>();
    double[] additive = {20, 40};
    double[] residual = {40, 30};
    for (int t = 0; t < 2; t++) {
      List<Measurement> measured = new ArrayList<>();
      for (int calf = 0; calf < 5; calf++) {
        Map<String, String> sex = Map.of("sex", sexes[calf]);
        measured.add(new Measurement(animal[4 + calf], gains[t][calf], 1, sex, Map.of()));
      }
      parts.add(
          new JointModel.Part(
              BreedingModel.of(pedigree, measured),
              new Components(additive[t], 0, residual[t]),
              List.of(4, 5, 6, 7, 8)));
    }
    List<BreedingValues> values =
        JointModel.values(
                parts,
                new JointModel.Correlations(
                    correlations(18 / Math.sqrt(800)), correlations(11 / Math.sqrt(1200))))
            .value()
            .orElseThrow();
    double[][] expected = {
      {.150916, -.015393, -.078392, -.010239, -.270331, .275808, -.316118, .243756},
      {.279598, -.007610, -.170341, -.012671, -.477830, .517238, -.478984, .391962}
    };
    double[][] accuracies = {
      {.26413, .14206, .32459, .41805, .41587, .37740, .37980, .43102},
      {.32009, .17553, .39372, .50683, .50337, .46089, .46466, .52059}
    };
    for (int t = 0; t < 2; t++) {
      for (int i = 1; i <= 8; i++) {
        assertThat(values.get(t).value(animal[i])).isCloseTo(expected[t][i - 1], within(1e-6));
        assertThat(values.get(t).accuracy(animal[i])).isCloseTo(accuracies[t][i - 1], within(1e-5));
      }
    }
    // Females are the first by name: 3.397 and 5.880; males 4.361 and 6.800.
    assertThat(values.get(0).corrections().get(0).estimate()).isCloseTo(.963605, within(1e-6));
    assertThat(values.get(1).corrections().get(0).estimate()).isCloseTo(.919602, within(1e-6));
  }

  /** Traits that have nothing in common are valued as if each were alone. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void withoutCorrelationsEachIsAsIfAlone(long seed) {
    TwoTraits garden = new TwoTraits(new Random(seed), correlations(0), correlations(0));
    List<BreedingValues> together = garden.values();
    for (int t = 0; t < 2; t++) {
      JointModel.Part part = garden.parts.get(t);
      BreedingValues alone = part.model().values(part.components());
      for (int plant = 0; plant < garden.pedigree.size(); plant++) {
        assertThat(together.get(t).value(plant)).isCloseTo(alone.value(plant), within(CLOSE));
        assertThat(together.get(t).accuracy(plant)).isCloseTo(alone.accuracy(plant), within(CLOSE));
      }
      Map<Integer, Double> beside = Map.of(20, 1.0, 21, -1.0);
      assertThat(together.get(t).value(beside)).isCloseTo(alone.value(beside), within(CLOSE));
      assertThat(together.get(t).accuracy(beside)).isCloseTo(alone.accuracy(beside), within(CLOSE));
      assertThat(together.get(t).corrected(3)).isCloseTo(alone.corrected(3), within(CLOSE));
      assertThat(together.get(t).mean()).isCloseTo(alone.mean(), within(CLOSE));
      assertThat(together.get(t).corrections().get(0).error())
          .isCloseTo(alone.corrections().get(0).error(), within(CLOSE));
    }
  }

  /**
   * The expectation of the values given the records, out of the whole covariances and nothing of
   * the equations; every third plant lacks one of the traits.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void aMissingTraitIsToldByTheOther(long seed) {
    TwoTraits garden = new TwoTraits(new Random(seed), correlations(-.7), correlations(.4));
    List<BreedingValues> together = garden.values();
    Dense dense = new Dense(garden);
    for (int t = 0; t < 2; t++) {
      for (int plant = 0; plant < garden.pedigree.size(); plant++) {
        assertThat(together.get(t).value(plant)).isCloseTo(dense.value(t, plant), within(CLOSE));
        assertThat(together.get(t).errorVariance(plant))
            .isCloseTo(dense.errorVariance(t, plant), within(CLOSE));
      }
    }
    int lacking = garden.lackingFirst.get(0);
    BreedingValues alone = garden.parts.get(0).model().values(garden.parts.get(0).components());
    assertThat(together.get(0).accuracy(lacking)).isGreaterThan(alone.accuracy(lacking) + .005);
  }

  /** The same system, solved by somebody else's algebra. */
  @ParameterizedTest
  @ValueSource(longs = {11, 12})
  void asDenseAlgebraInBaseRHasIt(long seed) throws IOException {
    OutsideTools.Tool r = OutsideTools.rscriptWithLme4();
    TwoTraits garden = new TwoTraits(new Random(seed), correlations(.6), correlations(-.3));
    String printed =
        r.run(
            "src/test/resources/outside/joint.R",
            garden.writeRecords(folder).toString(),
            garden.writeKinship(folder).toString(),
            garden.writeTraits(folder).toString());
    Map<String, Double> theirs = new HashMap<>();
    printed
        .lines()
        .map(line -> line.strip().split("\\s+"))
        .forEach(words -> theirs.put(words[0], Double.parseDouble(words[1])));
    List<BreedingValues> ours = garden.values();
    for (int t = 0; t < 2; t++) {
      for (int plant = 0; plant < garden.pedigree.size(); plant++) {
        String of = (t + 1) + "of" + (plant + 1);
        assertThat(ours.get(t).value(plant)).isCloseTo(theirs.get("value" + of), within(CLOSE));
        assertThat(ours.get(t).errorVariance(plant))
            .isCloseTo(theirs.get("error" + of), within(CLOSE));
      }
    }
  }

  @Test
  void correlationsThatCannotBeAreRefused() {
    TwoTraits garden = new TwoTraits(new Random(5), correlations(0), correlations(0));
    double[][] whole = correlations(1);
    double[][] none = correlations(0);
    assertThat(JointModel.values(garden.parts, new JointModel.Correlations(whole, none)).refusal())
        .hasValueSatisfying(why -> assertThat(why).contains("genetic"));
    assertThat(JointModel.values(garden.parts, new JointModel.Correlations(none, whole)).refusal())
        .hasValueSatisfying(why -> assertThat(why).contains("environmental"));
    assertThat(JointModel.canBe(new double[][] {{1, .9, .9}, {.9, 1, -.9}, {.9, -.9, 1}}))
        .isFalse();
    assertThat(JointModel.canBe(new double[][] {{1, .9, .9}, {.9, 1, .9}, {.9, .9, 1}})).isTrue();
  }

  /** Where nothing stays with plants of one trait, that trait alone has no such effect. */
  @Test
  void nothingMayStayWithThePlant() {
    TwoTraits garden = new TwoTraits(new Random(8), correlations(.5), correlations(.5));
    JointModel.Part first = garden.parts.get(0);
    Components bare = new Components(first.components().additive(), 0, 1.2);
    garden.parts.set(0, new JointModel.Part(first.model(), bare, first.units()));
    Dense dense = new Dense(garden);
    assertThat(garden.values().get(0).value(9)).isCloseTo(dense.value(0, 9), within(CLOSE));
    assertThat(garden.values().get(1).value(9)).isCloseTo(dense.value(1, 9), within(CLOSE));
  }
}
