package slipday.genetics;

import java.util.List;
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
 * method.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class InbreedingBench {
  @Param({"1000", "10000", "100000"})
  public int plants;

  @Param({"GARDEN", "AT_RANDOM"})
  public DrawnPedigree.Mating mating;

  private List<int[]> parents = List.of();
  private Pedigree known = Pedigree.begin(0).build();

  @Setup
  public void draw() {
    parents = DrawnPedigree.parents(plants, mating);
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
    int founders = plants / DrawnPedigree.GENERATIONS;
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
    return DrawnPedigree.of(plants, parents);
  }

  @Benchmark
  public double coancestryOfTheYoungest() {
    return known.coancestry(plants - 1, plants - 9);
  }
}
