package slipday.genetics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The time to work out the inbreeding of a whole pedigree, beside walks alone and the plain tabular
 * method, and the inverse of its relationships.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class InbreedingBench {
  private static final int GENERATIONS = 20;
  private static final long SEED = 17;

  /** How seed is made: a gardener's way, or every plant of two drawn at random. */
  public enum Mating {
    /** Half of the fruits selfed, a third of sibs, the others crossed; eight plants a fruit. */
    GARDEN(8, 0.5, 0.83),
    /** Each plant of parents of its own, any two of the generation before. */
    AT_RANDOM(1, 0, 0);

    private final int plants;
    private final double selfed;
    private final double selfedOrSib;

    Mating(int plants, double selfed, double selfedOrSib) {
      this.plants = plants;
      this.selfed = selfed;
      this.selfedOrSib = selfedOrSib;
    }
  }

  @Param({"1000", "10000", "100000"})
  public int plants;

  @Param({"GARDEN", "AT_RANDOM"})
  public Mating mating;

  private final List<int[]> parents = new ArrayList<>();
  private Pedigree known = Pedigree.begin(0).build();

  /** Twenty generations of one size. */
  @Setup
  public void draw() {
    Random random = new Random(SEED);
    int size = plants / GENERATIONS;
    int[] made = new int[2];
    for (int i = size; i < plants; i++) {
      if (i % mating.plants == 0) {
        int from = (i / size - 1) * size;
        int seed = from + random.nextInt(size);
        double kind = random.nextDouble();
        int pollen = from + random.nextInt(size);
        if (kind < mating.selfed) {
          pollen = seed;
        } else if (kind < mating.selfedOrSib) {
          pollen = Math.min(from + size - 1, seed + 1);
        }
        made = new int[] {seed, pollen};
      }
      parents.add(made);
    }
    known = inbreeding();
  }

  @Benchmark
  public Pedigree inbreeding() {
    return builder().build();
  }

  /** A walk through the ancestors of each pair of parents, however long. */
  @Benchmark
  public Pedigree byWalksAlone() {
    return builder().build(Descent.Way.WALKS);
  }

  /** All relationships of all plants, which for 10,000 take most of the heap; left out there. */
  @Benchmark
  public double tabular() {
    if (plants > 2000) {
      return 0;
    }
    int founders = plants / GENERATIONS;
    double[][] table = new double[plants][plants];
    for (int i = 0; i < plants; i++) {
      table[i][i] = 1;
      if (i >= founders) {
        int[] two = parents.get(i - founders);
        for (int j = 0; j < i; j++) {
          table[i][j] = (table[j][two[0]] + table[j][two[1]]) / 2;
          table[j][i] = table[i][j];
        }
        table[i][i] += table[two[0]][two[1]] / 2;
      }
    }
    return table[plants - 1][plants - 1];
  }

  private Pedigree.Builder builder() {
    Pedigree.Builder builder = Pedigree.begin(0);
    for (int i = 0; i < plants / GENERATIONS; i++) {
      builder.founder("founder", 0);
    }
    parents.forEach(two -> builder.offspring("plant", two[0], two[1]));
    return builder;
  }

  @Benchmark
  public RelationshipInverse inverse() {
    return known.reducedInverse();
  }

  @Benchmark
  public double coancestryOfTheYoungest() {
    return known.coancestry(plants - 1, plants - 9);
  }
}
