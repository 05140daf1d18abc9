package slipday.genetics.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipday.genetics.Pedigree;
import slipday.outside.OutsideTools;

/** Variances by REML, beside R on the same simulated gardens. */
class RemlTest {
  /** Four figures, and so do fixed effects and their errors. */
  private static final double FOUR_FIGURES = 5e-5;

  @TempDir Path folder;

  /** Families and plants that have nothing to do with each other: R's lme4 as second opinion. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void familiesAndPlantsAsLme4HasThem(long seed) throws IOException {
    OutsideTools.Tool r = OutsideTools.rscriptWithLme4();
    Garden garden = Garden.ofFamilies(new Random(seed));
    Map<String, Double> theirs = theirs(r, "families.R", garden.write(folder));
    compare(garden, theirs, "family");
  }

  /** Related plants, some inbred: the restricted likelihood written out in base R. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void relativesAsTheWholeLikelihoodHasThem(long seed) throws IOException {
    OutsideTools.Tool r = OutsideTools.rscriptWithLme4();
    Garden garden = Garden.ofRelatives(new Random(seed));
    Map<String, Double> theirs =
        theirs(r, "relatives.R", garden.write(folder), garden.writeKinship(folder));
    Solution solution = compare(garden, theirs, "genetic");
    for (int plant : garden.plants) {
      double value = solution.random(0, plant);
      assertThat(value).isCloseTo(theirs.get("value" + (plant + 1)), within(2e-4));
    }
  }

  private static Map<String, Double> theirs(OutsideTools.Tool r, String script, Path... tables) {
    List<String> paths = new ArrayList<>();
    for (Path table : tables) {
      paths.add(table.toString());
    }
    String printed = r.run("src/test/resources/outside/" + script, paths.toArray(String[]::new));
    Map<String, Double> figures = new TreeMap<>();
    printed
        .lines()
        .map(line -> line.strip().split("\\s+"))
        .forEach(words -> figures.put(words[0], Double.parseDouble(words[1])));
    return figures;
  }

  private static Solution compare(Garden garden, Map<String, Double> theirs, String first) {
    Reml.Estimate ours = Reml.estimate(garden.model).value().orElseThrow();
    assertFigures(ours.variances()[0], theirs.get(first));
    assertFigures(ours.variances()[1], theirs.get("plant"));
    assertFigures(ours.variances()[2], theirs.get("residual"));
    assertThat(ours.logLikelihood()).isCloseTo(theirs.get("likelihood"), within(1e-6));
    Solution solution = garden.model.solve(ours.variances());
    for (int i = 0; i < garden.model.fixed.columns(); i++) {
      assertFigures(solution.fixed(i), theirs.get("fixed" + (i + 1)));
      assertFigures(solution.fixedError(i), theirs.get("error" + (i + 1)));
    }
    return solution;
  }

  private static void assertFigures(double ours, double theirs) {
    assertThat(ours).isCloseTo(theirs, within(Math.abs(theirs) * FOUR_FIGURES));
  }

  /** Balanced families: the estimate is the analysis of variance's, worked out by hand. */
  @Test
  void balancedFamiliesAreTheAnalysisOfVariance() {
    double[] records = {1, 2, 3, 5, 6, 7, 10, 11, 15, 9, 9, 12};
    Design.Builder mean = Design.of(1);
    Design.Builder family = Design.of(4);
    double[] weights = new double[12];
    for (int i = 0; i < 12; i++) {
      mean.add(0, 1).row();
      family.add(i / 3, 1).row();
      weights[i] = 1;
    }
    MixedModel model =
        new MixedModel(
            records,
            weights,
            mean.build(),
            List.of(new MixedModel.Random(family.build(), Covariance.independent(4))));
    Reml.Estimate found = Reml.estimate(model).value().orElseThrow();
    // Within: 2 + 2 + 14 + 6 over 8. Means 2, 6, 12, 10: squares about 7.5 are 59, times 3 over 3.
    assertThat(found.variances()[1]).isCloseTo(3, within(1e-6));
    assertThat(found.variances()[0]).isCloseTo((59.0 - 3) / 3, within(1e-5));
    assertThat(found.atBoundary()).containsExactly(false, false);
    // At a balanced design the information is exact: var of a mean square is 2 M² over its degrees.
    assertThat(found.error(1)).isCloseTo(Math.sqrt(2 * 9.0 / 8), within(1e-5));
    assertThat(found.error(0))
        .isCloseTo(Math.sqrt((2 * 59.0 * 59 / 3 + 2 * 9.0 / 8) / 9), within(1e-4));
  }

  /** Families more alike than chance: their variance is 0 and not below. */
  @Test
  void theBoundaryIsZero() {
    double[] records = {1, 9, 2, 8, 3, 7, 1, 9.5};
    Design.Builder mean = Design.of(1);
    Design.Builder family = Design.of(4);
    double[] weights = new double[8];
    for (int i = 0; i < 8; i++) {
      mean.add(0, 1).row();
      family.add(i / 2, 1).row();
      weights[i] = 1;
    }
    MixedModel model =
        new MixedModel(
            records,
            weights,
            mean.build(),
            List.of(new MixedModel.Random(family.build(), Covariance.independent(4))));
    Reml.Estimate found = Reml.estimate(model).value().orElseThrow();
    assertThat(found.atBoundary()).containsExactly(true, false);
    assertThat(found.variances()[0]).isZero();
    assertThat(found.error(0)).isZero();
    double average = 40.5 / 8;
    double squares = 0;
    for (double record : records) {
      squares += (record - average) * (record - average);
    }
    assertThat(found.variances()[1]).isCloseTo(squares / 7, within(1e-6));
  }

  @Test
  void recordsAllAlikeAreRefused() {
    Design.Builder mean = Design.of(1);
    Design.Builder family = Design.of(2);
    for (int i = 0; i < 6; i++) {
      mean.add(0, 1).row();
      family.add(i / 3, 1).row();
    }
    MixedModel model =
        new MixedModel(
            new double[] {7, 7, 7, 7, 7, 7},
            new double[] {1, 1, 1, 1, 1, 1},
            mean.build(),
            List.of(new MixedModel.Random(family.build(), Covariance.independent(2))));
    assertThat(Reml.estimate(model).refusal().orElseThrow()).contains("alike");
  }

  /** Fruits of plants in three seasons, some marked, some means of several. */
  private record Garden(
      MixedModel model, List<String> rows, double[][] kinship, List<Integer> plants) {

    static Garden ofFamilies(Random random) {
      Made made = new Made(random);
      int families = 12;
      for (int family = 0; family < families; family++) {
        double ofFamily = 1.2 * random.nextGaussian();
        for (int plant = 0; plant < 4; plant++) {
          made.plant(family, ofFamily + .9 * random.nextGaussian());
        }
      }
      return made.garden(families, Covariance.independent(families), new double[0][0]);
    }

    static Garden ofRelatives(Random random) {
      Pedigree.Builder builder = Pedigree.begin(0);
      double[] value = new double[60];
      for (int i = 0; i < 6; i++) {
        builder.founder("p" + i, 0);
      }
      int[][] parents = new int[60][];
      for (int i = 6; i < 60; i++) {
        int mother = random.nextInt(i);
        int father = random.nextInt(3) == 0 ? mother : random.nextInt(i);
        parents[i] = new int[] {mother, father};
        builder.offspring("p" + i, mother, father);
      }
      Pedigree pedigree = builder.build();
      Made made = new Made(random);
      for (int i = 0; i < 60; i++) {
        double draw = 1;
        double mean = 0;
        if (i >= 6) {
          mean = (value[parents[i][0]] + value[parents[i][1]]) / 2;
          draw = (2 - pedigree.inbreeding(parents[i][0]) - pedigree.inbreeding(parents[i][1])) / 4;
        }
        value[i] = mean + 1.5 * Math.sqrt(draw) * random.nextGaussian();
        made.plant(i, value[i] + .8 * random.nextGaussian());
      }
      double[][] kinship = new double[60][60];
      for (int i = 0; i < 60; i++) {
        for (int j = 0; j < 60; j++) {
          kinship[i][j] = 2 * pedigree.coancestry(i, j);
        }
      }
      return made.garden(60, Covariance.related(pedigree.reducedInverse()), kinship);
    }

    Path write(Path folder) throws IOException {
      return Files.writeString(
          folder.resolve("fruits.csv"),
          "value,weight,season,marked,family,plant\n" + String.join("\n", rows) + "\n");
    }

    Path writeKinship(Path folder) throws IOException {
      StringBuilder text = new StringBuilder();
      for (double[] row : kinship) {
        List<String> cells = new ArrayList<>();
        for (double cell : row) {
          cells.add(Double.toString(cell));
        }
        text.append(String.join(",", cells)).append('\n');
      }
      return Files.writeString(folder.resolve("kinship.csv"), text);
    }
  }

  private static final class Made {
    private final Random random;
    private final List<Double> records = new ArrayList<>();
    private final List<Double> weights = new ArrayList<>();
    private final List<int[]> effects = new ArrayList<>();
    private final List<String> rows = new ArrayList<>();
    private int plants;

    Made(Random random) {
      this.random = random;
    }

    void plant(int family, double value) {
      for (int fruit = 0; fruit < 1 + plants % 4; fruit++) {
        int season = (plants + fruit) % 3;
        int marked = random.nextInt(2);
        double weight = 1 + random.nextInt(3);
        double record =
            12 + season - .5 * marked + value + 1.1 * random.nextGaussian() / Math.sqrt(weight);
        records.add(record);
        weights.add(weight);
        effects.add(new int[] {season, marked, family, plants});
        rows.add(
            record
                + ","
                + weight
                + ",s"
                + season
                + ","
                + marked
                + ",f"
                + family
                + ","
                + (plants + 1));
      }
      plants++;
    }

    Garden garden(int levels, Covariance covariance, double[][] kinship) {
      Design.Builder fixed = Design.of(4);
      Design.Builder family = Design.of(levels);
      Design.Builder plant = Design.of(plants);
      for (int[] each : effects) {
        fixed.add(0, 1);
        if (each[0] > 0) {
          fixed.add(each[0], 1);
        }
        fixed.add(3, each[1]).row();
        family.add(each[2], 1).row();
        plant.add(each[3], 1).row();
      }
      MixedModel model =
          new MixedModel(
              records.stream().mapToDouble(r -> r).toArray(),
              weights.stream().mapToDouble(w -> w).toArray(),
              fixed.build(),
              List.of(
                  new MixedModel.Random(family.build(), covariance),
                  new MixedModel.Random(plant.build(), Covariance.independent(plants))));
      return new Garden(model, rows, kinship, effects.stream().map(e -> e[3]).distinct().toList());
    }
  }
}
