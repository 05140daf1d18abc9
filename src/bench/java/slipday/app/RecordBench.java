package slipday.app;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
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
import slipday.descent.Lineage;
import slipday.garden.Garden;
import slipday.garden.record.Subject;
import slipday.season.Season;
import slipday.season.today.DayAtHand;
import slipday.seed.SeedBox;

/**
 * Ten seasons of record, a thousand entries each, through the language; and the descent of one lot
 * out of twenty-five seasons in which every lot is crossed to another.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class RecordBench {
  private static final int SEASONS = 10;
  private static final int LOTS = 27;
  private static final int FRUITS = 8;

  private byte[] bytes = {};
  private Optional<Season> season = Optional.empty();

  @Setup
  public void write() {
    bytes = RecordYears.of(SEASONS, LOTS, FRUITS, false).getBytes(StandardCharsets.UTF_8);
    season = check(bytes).season();
  }

  private static Checked check(byte[] text) {
    return new Pipeline(FileTexts.onDisk(), false, LocalDate.of(2099, 12, 31))
        .check(new ByteArrayInputStream(text), "years.season", Path.of("."));
  }

  /** Seasons by hundreds of lots, with ten plants of each. */
  @State(Scope.Benchmark)
  public static class Mixed {
    @Param({"6", "12", "25"})
    public int seasons;

    private Optional<Garden> garden = Optional.empty();

    @Setup
    public void write() {
      String text = RecordYears.of(seasons, 400, 10, true);
      garden = check(text.getBytes(StandardCharsets.UTF_8)).garden();
    }
  }

  /** Text to season, with what the record teaches, and the rules. */
  @Benchmark
  public Object wholeCheck() {
    return check(bytes);
  }

  @Benchmark
  public Object today() {
    return DayAtHand.of(season.orElseThrow(), LocalDate.of(2026, 7, 15), 7);
  }

  @Benchmark
  public Object lots() {
    return SeedBox.lots(season.orElseThrow().garden(), OptionalInt.empty());
  }

  @Benchmark
  public Object descentOfOneLot() {
    return descent(season.orElseThrow().garden());
  }

  @Benchmark
  public Object descentOfAMixedLot(Mixed mixed) {
    return descent(mixed.garden.orElseThrow());
  }

  private static Lineage descent(Garden garden) {
    Subject last = new Subject.OfLot(garden.lots().get(garden.lots().size() - 1));
    return Lineage.of(garden, last, Optional.empty());
  }
}
