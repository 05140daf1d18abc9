package slipday.app;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import slipday.climate.Climate;
import slipday.climate.WeatherReader;
import slipday.climate.WeatherRecord;
import slipday.garden.Garden;
import slipday.garden.Resolver;
import slipday.language.Binder;
import slipday.language.BoundFile;
import slipday.season.Season;
import slipday.season.SeasonBuilder;
import slipday.season.SiteClimate;
import slipday.source.Source;
import slipday.syntax.SeasonParser;

/** 100 plantings, no two of one kind, through 87 weather years; and reading those years. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class EnsembleBench {
  private String csv = "";
  private Optional<Garden> garden = Optional.empty();
  private Optional<WeatherRecord> record = Optional.empty();

  @Setup
  public void make() {
    csv = weather();
    record = WeatherReader.read(Source.of("weather.csv", csv), Optional.empty()).value();
    // A fact of its own makes each line a kind of its own, so that none is reckoned for another.
    String text =
        LargePlan.of(3_000, 100).replaceAll("looks .*number (\\d+)\"", "fruits a plant 1 to 1$1");
    BoundFile plan = SeasonParser.parse(Source.of("large.season", text)).then(Binder::bind).value();
    garden = Resolver.resolve(BuiltInCrops.blocks(), plan).value();
  }

  private static String weather() {
    SplittableRandom random = new SplittableRandom(3);
    StringBuilder text = new StringBuilder("date,low C,high C\n");
    LocalDate last = LocalDate.of(2020, 12, 31);
    for (LocalDate d = LocalDate.of(1934, 1, 1); !d.isAfter(last); d = d.plusDays(1)) {
      double mean = 7 - 14 * Math.cos((d.getDayOfYear() - 20) * 2 * Math.PI / 365);
      double noise = 6 * (random.nextDouble() - 0.5);
      text.append(
          String.format(Locale.ROOT, "%s,%.1f,%.1f%n", d, mean + noise - 5, mean + noise + 6));
    }
    return text.toString();
  }

  @Benchmark
  public Optional<WeatherRecord> readWeather() {
    return WeatherReader.read(Source.of("weather.csv", csv), Optional.empty()).value();
  }

  @Benchmark
  public Climate climate() {
    return climateOf(garden.orElseThrow());
  }

  private Climate climateOf(Garden g) {
    return SiteClimate.of(g.site(), g.season(), record);
  }

  @Benchmark
  public Season season() {
    Garden g = garden.orElseThrow();
    return SeasonBuilder.build(g, climateOf(g));
  }
}
