package slipday.genetics.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import slipday.genetics.Pedigree;

/** The mixed-model equations against a worked example and against matrices written out in full. */
class MixedModelTest {
  /**
   * R. A. Mrode 2014, Linear Models for the Prediction of Animal Breeding Values, 3rd edition,
   * example 3.1: five calves of two sexes, error over genetic variance 2. Data read; solutions and
   * accuracies worked out again in three ways.
   */
  @Test
  void mrodesCalves() {
    Pedigree.Builder calves = Pedigree.begin(0);
    for (int i = 1; i <= 3; i++) {
      calves.founder("" + i, 0);
    }
    calves.offspring("4", 0);
    calves.offspring("5", 2, 1);
    calves.offspring("6", 0, 1);
    calves.offspring("7", 3, 4);
    calves.offspring("8", 2, 5);
    Covariance related = Covariance.related(calves.build().reducedInverse());
    Design.Builder sex = Design.of(2);
    Design.Builder own = Design.of(8);
    int[] sexes = {0, 1, 1, 0, 0};
    for (int i = 0; i < 5; i++) {
      sex.add(sexes[i], 1).row();
      own.add(i + 3, 1).row();
    }
    MixedModel model =
        new MixedModel(
            new double[] {4.5, 2.9, 3.9, 3.5, 5.0},
            new double[] {1, 1, 1, 1, 1},
            sex.build(),
            List.of(new MixedModel.Random(own.build(), related)));
    Solution solution = model.solve(20, 40);
    assertThat(solution.fixed(0)).isCloseTo(4.358502, within(5e-7));
    assertThat(solution.fixed(1)).isCloseTo(3.404430, within(5e-7));
    double[] values = {.098445, -.018770, -.041084, -.008663, -.185732, .176872, -.249459, .182615};
    double[] accuracies = {.24044, .12573, .29510, .38032, .37919, .33976, .34101, .39405};
    for (int i = 0; i < 8; i++) {
      assertThat(solution.random(0, i)).isCloseTo(values[i], within(5e-7));
      double reliability = 1 - solution.errorVariance(0, i) / 20;
      assertThat(Math.sqrt(reliability)).isCloseTo(accuracies[i], within(5e-6));
      assertThat(solution.errorVariance(0, Map.of(i, 1.0)))
          .isCloseTo(solution.errorVariance(0, i), within(1e-9));
    }
  }

  /** Best linear unbiased prediction and likelihood by V⁻¹, with V written out in full. */
  @Property(tries = 60)
  void asWithTheWholeCovariance(
      @ForAll long seed, @ForAll @IntRange(min = 4, max = 12) int plants) {
    Drawn drawn = new Drawn(new Random(seed), plants);
    Solution solution = drawn.model.solve(2, .7, 1.5);
    Full full = new Full(drawn, 2, .7, 1.5);
    assertThat(solution.logLikelihood()).isCloseTo(full.logLikelihood(), within(1e-7));
    for (int i = 0; i < plants; i++) {
      assertThat(solution.random(0, i)).isCloseTo(full.genetic(i), within(1e-8));
      assertThat(solution.errorVariance(0, i)).isCloseTo(full.errorVariance(i), within(1e-7));
    }
    for (int j = 0; j < 2; j++) {
      assertThat(solution.fixed(j)).isCloseTo(full.fixed(j), within(1e-8));
      assertThat(solution.fixedError(j)).isCloseTo(full.fixedError(j), within(1e-8));
    }
  }

  @Test
  void whatFollowsFromOthersIsAliased() {
    Design.Builder fixed = Design.of(4);
    for (int i = 0; i < 6; i++) {
      fixed.add(0, 1).add(1 + i % 2, 1).add(3, i).row();
    }
    MixedModel model =
        new MixedModel(
            new double[] {1, 2, 3, 5, 8, 13},
            new double[] {1, 1, 1, 1, 1, 1},
            fixed.build(),
            List.of());
    assertThat(model.isAliased(2)).isTrue();
    assertThat(model.rank()).isEqualTo(3);
    assertThat(model.solve(1).fixed(2)).isZero();
    assertThat(model.solve(1).fixedError(2)).isZero();
  }

  @Test
  void aVarianceOfNothingLeavesTheEffectOut() {
    Drawn drawn = new Drawn(new Random(5), 6);
    Solution solution = drawn.model.solve(0, 0, 1);
    assertThat(solution.random(0, 1)).isZero();
    assertThat(solution.equations()).isEqualTo(2);
    assertThatThrownBy(() -> drawn.model.solve(1, 1, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Plants out of a garden-like pedigree, one to three records each, two fixed effects. */
  static final class Drawn {
    final List<Integer> owner = new ArrayList<>();
    final List<Double> covariate = new ArrayList<>();
    final List<Double> records = new ArrayList<>();
    final List<Double> weights = new ArrayList<>();
    final Pedigree pedigree;
    final MixedModel model;

    Drawn(Random random, int plants) {
      Pedigree.Builder builder = Pedigree.begin(0);
      builder.founder("a", 0);
      builder.founder("b", .5);
      for (int i = 2; i < plants; i++) {
        int mother = random.nextInt(i);
        builder.offspring("p" + i, mother, random.nextBoolean() ? mother : random.nextInt(i));
      }
      pedigree = builder.build();
      Design.Builder fixed = Design.of(2);
      Design.Builder genetic = Design.of(plants);
      Design.Builder permanent = Design.of(plants);
      for (int i = 0; i < plants; i++) {
        for (int k = random.nextInt(3); k >= 0; k--) {
          double x = random.nextInt(5);
          owner.add(i);
          covariate.add(x);
          records.add(10 + .3 * x + random.nextGaussian());
          weights.add(1.0 + random.nextInt(3));
          fixed.add(0, 1).add(1, x).row();
          genetic.add(i, 1).row();
          permanent.add(i, 1).row();
        }
      }
      model =
          new MixedModel(
              records.stream().mapToDouble(r -> r).toArray(),
              weights.stream().mapToDouble(w -> w).toArray(),
              fixed.build(),
              List.of(
                  new MixedModel.Random(
                      genetic.build(), Covariance.related(pedigree.reducedInverse())),
                  new MixedModel.Random(permanent.build(), Covariance.independent(plants))));
    }
  }

  /** The same by plain elimination. */
  private static final class Full {
    private final Drawn drawn;
    private final double genetic;
    private final double[][] inverse;
    private final double[][] information;
    private final double[] fixed = new double[2];
    private double logLikelihood;

    Full(Drawn drawn, double genetic, double permanent, double residual) {
      this.drawn = drawn;
      this.genetic = genetic;
      int n = drawn.records.size();
      double[][] v = new double[n][n];
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          int one = drawn.owner.get(i);
          int other = drawn.owner.get(j);
          v[i][j] =
              genetic * 2 * drawn.pedigree.coancestry(one, other)
                  + (one == other ? permanent : 0)
                  + (i == j ? residual / drawn.weights.get(i) : 0);
        }
      }
      double[] log = new double[1];
      inverse = inverse(v, log);
      double[][] square = new double[2][2];
      double[] right = new double[2];
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          for (int a = 0; a < 2; a++) {
            right[a] += x(i, a) * inverse[i][j] * drawn.records.get(j);
            for (int b = 0; b < 2; b++) {
              square[a][b] += x(i, a) * inverse[i][j] * x(j, b);
            }
          }
        }
      }
      logLikelihood = log[0] + (n - 2) * Math.log(2 * Math.PI);
      log[0] = 0;
      information = inverse(square, log);
      logLikelihood += log[0];
      for (int a = 0; a < 2; a++) {
        fixed[a] = information[a][0] * right[0] + information[a][1] * right[1];
      }
      for (int i = 0; i < n; i++) {
        logLikelihood += left(i) * weighted(i);
      }
      logLikelihood /= -2;
    }

    private double x(int row, int column) {
      return column == 0 ? 1 : drawn.covariate.get(row);
    }

    private double left(int row) {
      return drawn.records.get(row) - fixed[0] - fixed[1] * x(row, 1);
    }

    private double weighted(int row) {
      double sum = 0;
      for (int j = 0; j < drawn.records.size(); j++) {
        sum += inverse[row][j] * left(j);
      }
      return sum;
    }

    private double covariance(int plant, int row) {
      return genetic * 2 * drawn.pedigree.coancestry(plant, drawn.owner.get(row));
    }

    double logLikelihood() {
      return logLikelihood;
    }

    double fixed(int column) {
      return fixed[column];
    }

    double fixedError(int column) {
      return Math.sqrt(information[column][column]);
    }

    double genetic(int plant) {
      double sum = 0;
      for (int i = 0; i < drawn.records.size(); i++) {
        sum += covariance(plant, i) * weighted(i);
      }
      return sum;
    }

    /** G − C′·P·C. */
    double errorVariance(int plant) {
      int n = drawn.records.size();
      double known = 0;
      double[] sums = new double[2];
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          known += covariance(plant, i) * inverse[i][j] * covariance(plant, j);
          sums[0] += covariance(plant, i) * inverse[i][j];
          sums[1] += covariance(plant, i) * inverse[i][j] * x(j, 1);
        }
      }
      double estimated = 0;
      for (int a = 0; a < 2; a++) {
        for (int b = 0; b < 2; b++) {
          estimated += sums[a] * information[a][b] * sums[b];
        }
      }
      return genetic * (1 + drawn.pedigree.inbreeding(plant)) - known + estimated;
    }

    private static double[][] inverse(double[][] matrix, double[] log) {
      int n = matrix.length;
      double[][] work = new double[n][2 * n];
      for (int i = 0; i < n; i++) {
        System.arraycopy(matrix[i], 0, work[i], 0, n);
        work[i][n + i] = 1;
      }
      for (int k = 0; k < n; k++) {
        log[0] += Math.log(work[k][k]);
        for (int i = 0; i < n; i++) {
          double factor = work[i][k] / work[k][k];
          for (int j = 0; i != k && j < 2 * n; j++) {
            work[i][j] -= factor * work[k][j];
          }
        }
        double pivot = work[k][k];
        for (int j = 0; j < 2 * n; j++) {
          work[k][j] /= pivot;
        }
      }
      double[][] inverse = new double[n][n];
      for (int i = 0; i < n; i++) {
        System.arraycopy(work[i], n, inverse[i], 0, n);
      }
      return inverse;
    }
  }
}
