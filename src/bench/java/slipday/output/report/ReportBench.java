package slipday.output.report;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.testing.LargeGarden;

/**
 * The page of a season that is reckoned already, beside the template library alone filling in a
 * bare table of as many bytes.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ReportBench {
  private static final LocalDate DAY = LocalDate.of(2026, 7, 20);
  private static final int ROW = 100;

  /** The example's recorded year, or so many plantings. */
  @Param({"example", "100", "500"})
  public String garden = "example";

  private Optional<ReportPage.Subject> subject = Optional.empty();
  private Template table = Mustache.compiler().compile("");
  private Map<String, List<Map<String, String>>> rows = Map.of();

  @Setup
  public void reckon() {
    boolean example = garden.equals("example");
    Path plan = Path.of(example ? "plans/tern-hollow/recorded.season" : "plan.season");
    Pipeline pipeline = new Pipeline(FileTexts.onDisk(), false, LocalDate.of(2026, 12, 31));
    String text = example ? "" : LargeGarden.plan(Integer.parseInt(garden));
    ByteArrayInputStream in = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    Checked checked =
        example ? pipeline.check(plan, plan.toString()) : pipeline.check(in, "plan.season", plan);
    subject =
        Optional.of(
            new ReportPage.Subject(
                plan.toString(),
                checked.season().orElseThrow(),
                checked.findings(),
                checked.files(),
                DAY,
                true,
                () -> Breeding.of(checked.garden().orElseThrow().asOf(DAY))));
    table =
        Mustache.compiler()
            .compile("<table>{{#rows}}<tr><td>{{a}}</td><td>{{b}}</td></tr>{{/rows}}");
    int bare = "<tr><td></td><td></td></tr>".length();
    Map<String, String> row = Map.of("a", "x".repeat(ROW / 2), "b", "y".repeat(ROW / 2 - bare));
    rows = Map.of("rows", IntStream.range(0, page().length() / ROW).mapToObj(i -> row).toList());
  }

  @Benchmark
  public String page() {
    return ReportPage.html(subject.orElseThrow());
  }

  @Benchmark
  public String bareTable() {
    return table.execute(rows);
  }
}
