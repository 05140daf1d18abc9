package slipday.season;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
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
 * The sweep over bloom windows beside comparing all with all. The windows are as many days apart as
 * there are windows, so that each meets about ten others however many there are.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class SweepBench {
  @Param({"1000", "10000", "100000"})
  public int plantings;

  private final List<BloomSweep.Window> windows = new ArrayList<>();

  @Setup
  public void draw() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < plantings; i++) {
      int from = random.nextInt(plantings);
      windows.add(new BloomSweep.Window(from, from + random.nextInt(10)));
    }
  }

  @Benchmark
  public int sweep() {
    int[] count = {0};
    BloomSweep.sweep(windows, (a, b) -> count[0]++);
    return count[0];
  }

  /** The rival, up to 10,000; at 100,000 it would take minutes. */
  @Benchmark
  public int allPairs() {
    int count = 0;
    int n = Math.min(plantings, 10_000);
    for (int a = 0; a < n; a++) {
      for (int b = a + 1; b < n; b++) {
        BloomSweep.Window x = windows.get(a);
        BloomSweep.Window y = windows.get(b);
        count += x.from() <= y.to() && y.from() <= x.to() ? 1 : 0;
      }
    }
    return count;
  }
}
