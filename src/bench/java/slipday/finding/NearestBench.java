package slipday.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

/** The time to find the name meant by a misspelt one, as each unknown name in a plan costs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class NearestBench {
  private static final List<String> PLACES =
      List.of("ropewalk", "orchard", "gatehouse", "millpond", "southwall", "hedgerow", "quarry");

  /** Names known: those of a small garden, and of a large one with years of seed lots. */
  @Param({"35", "1400"})
  public int names;

  private final List<String> known = new ArrayList<>();

  @Setup
  public void fill() {
    for (int i = 0; i < names; i++) {
      known.add(PLACES.get(i % PLACES.size()) + "-" + (2000 + i / PLACES.size()));
    }
  }

  @Benchmark
  public Optional<String> misspelt() {
    return Nearest.to("ropewlak-2003", known);
  }

  @Benchmark
  public Optional<String> unlikeAnything() {
    return Nearest.to("verbascum", known);
  }
}
