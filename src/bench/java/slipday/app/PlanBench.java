package slipday.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import slipday.language.Binder;
import slipday.source.Source;
import slipday.syntax.SeasonFile;
import slipday.syntax.SeasonParser;
import slipday.syntax.grammar.SeasonLexer;

/**
 * A plan of 200,000 lines: ANTLR's bare parse of it, our lines, their meaning, and the whole check.
 *
 * <p>With as much heap as Java takes by itself on a machine of 24 GiB: with less, a collection
 * meets each check halfway, which a single run never sees.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(
    value = 2,
    jvmArgsAppend = {"-Xms6g", "-Xmx6g", "-XX:+AlwaysPreTouch"})
public class PlanBench {
  private String text = "";
  private Path file = Path.of("");

  @Setup
  public void write() throws IOException {
    text = LargePlan.of(200_000, 300);
    file = Files.createTempFile("large", ".season");
    Files.writeString(file, text);
  }

  @TearDown
  public void tidy() throws IOException {
    Files.delete(file);
  }

  /** The rival: the generated parser alone, with its tree, as anybody would call it. */
  @Benchmark
  public Object bareParse() {
    SeasonLexer lexer = new SeasonLexer(CharStreams.fromString(text));
    lexer.removeErrorListeners();
    var parser = new slipday.syntax.grammar.SeasonParser(new CommonTokenStream(lexer));
    parser.removeErrorListeners();
    parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
    return parser.file();
  }

  @Benchmark
  public SeasonFile lines() {
    return SeasonParser.parse(Source.of("large.season", text)).value();
  }

  @Benchmark
  public Object meaning() {
    return SeasonParser.parse(Source.of("large.season", text)).then(Binder::bind);
  }

  @Benchmark
  public List<?> wholeCheck() {
    return new Pipeline(FileTexts.onDisk(), false, LocalDate.of(2035, 12, 31))
        .check(file, "large.season")
        .findings();
  }
}
