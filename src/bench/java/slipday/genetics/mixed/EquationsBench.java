package slipday.genetics.mixed;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixSparseCSC;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import slipday.genetics.DrawnPedigree;
import slipday.genetics.Pedigree;
import slipday.genetics.RelationshipInverse;

/**
 * The inverse of the relationships of a garden's plants and the mixed-model equations of two fruits
 * of each, beside scipy on the same system: it is given the very matrix, in our order of rows, and
 * has to come to the same solution.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@org.openjdk.jmh.annotations.Measurement(iterations = 3, time = 2)
@Fork(1)
public class EquationsBench {
  private static final long SEED = 18;
  private static final int FRUITS = 2;
  private static final int BEDS = 4;
  private static final double[] RATIOS = {1.5, 3};
  private static final double[] VARIANCES = {2, 1, 3};

  @Param({"1000", "10000", "100000"})
  public int plants;

  private Pedigree pedigree = Pedigree.begin(0).build();
  private final List<Measurement> figures = new ArrayList<>();
  private MixedModel model;
  private DMatrixSparseCSC equations;
  private double[] right = {};
  private Factor factor;
  private Scipy scipy;

  @Setup
  public void draw() throws IOException {
    pedigree = DrawnPedigree.of(plants, DrawnPedigree.Mating.GARDEN);
    Random random = new Random(SEED);
    int size = plants / DrawnPedigree.GENERATIONS;
    for (int plant = 0; plant < plants; plant++) {
      for (int fruit = 0; fruit < FRUITS; fruit++) {
        figures.add(
            new Measurement(
                plant,
                random.nextGaussian(),
                1,
                Map.of(
                    "season",
                    Integer.toString(plant / size),
                    "bed",
                    Integer.toString(random.nextInt(BEDS))),
                Map.of("inbreeding", pedigree.inbreeding(plant))));
      }
    }
    model = BreedingModel.of(pedigree, figures).model;
    Layout layout = new Layout(model, new boolean[] {true, true});
    equations = layout.equations(RATIOS);
    right = layout.right(model.records);
    factor = Factor.of(equations).orElseThrow();
    System.out.println(layout.size() + " equations, " + Filling.of(equations));
    scipy = new Scipy(equations, right, pedigree);
    double[] theirs = scipy.solution();
    double[] ours = factor.solve(right);
    double apart = 0;
    for (int i = 0; i < ours.length; i++) {
      apart = Math.max(apart, Math.abs(ours[i] - theirs[i]));
    }
    if (!(apart < 1e-8)) {
      throw new IllegalStateException("solutions are apart by " + apart);
    }
    double inverse = pedigree.reducedInverse().entries().stream().mapToDouble(e -> e.value()).sum();
    double other = scipy.ask("inverse");
    if (!(Math.abs(inverse - other) < 1e-6 * Math.abs(other))) {
      throw new IllegalStateException("inverses are apart: " + inverse + ", " + other);
    }
  }

  @TearDown
  public void end() throws IOException {
    scipy.close();
  }

  /** From the pedigree with its inbreeding known, by the rules of one plant at a time. */
  @Benchmark
  public RelationshipInverse inverse() {
    return pedigree.reducedInverse();
  }

  /** The product of the same shares and draws. */
  @Benchmark
  public double inverseByScipy() throws IOException {
    return scipy.ask("inverse");
  }

  /** From the written equations: factor and solution. */
  @Benchmark
  public double[] solution() {
    return Factor.of(equations).orElseThrow().solve(right);
  }

  @Benchmark
  public double solutionByScipyInOurOrder() throws IOException {
    return scipy.ask("natural");
  }

  /** With an order of scipy's own that keeps the factor sparse; minutes for the most plants. */
  @Benchmark
  @Warmup(iterations = 0)
  @org.openjdk.jmh.annotations.Measurement(iterations = 2, time = 1)
  public double solutionByScipyInItsOrder() throws IOException {
    return scipy.ask("ordered");
  }

  /** What accuracies are read from: the numbers of the inverse where the factor has some. */
  @Benchmark
  public Factor.Inverse accuracies() {
    return factor.inverse();
  }

  /** All of it, from figures to breeding values and the accuracy of every plant. */
  @Benchmark
  public double values() {
    BreedingValues values =
        BreedingModel.of(pedigree, figures)
            .values(new Components(VARIANCES[0], VARIANCES[1], VARIANCES[2]));
    double[] accuracies = new double[plants];
    Arrays.setAll(accuracies, values::accuracy);
    return Arrays.stream(accuracies).average().orElseThrow();
  }
}
