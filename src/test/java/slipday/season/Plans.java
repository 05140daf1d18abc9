package slipday.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import slipday.app.BuiltInCropsForTests;
import slipday.climate.WeatherReader;
import slipday.climate.WeatherRecord;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.garden.Garden;
import slipday.garden.Resolver;
import slipday.language.Binder;
import slipday.language.BoundFile;
import slipday.source.Source;
import slipday.syntax.SeasonParser;

/** Seasons of plans written in a test, with weather made for it. */
final class Plans {
  /** An invented site; its beds lie wide apart. */
  static final String SITE =
      """
      season 2026
      site somewhere
        place 44 N, 72 W
        time zone America/New_York
      bed one
        size 10 m x 1 m
        corner 0 m east, 0 m north
      bed two
        size 10 m x 1 m
        corner 0 m east, 5 m north
      bed far
        size 10 m x 1 m
        corner 900 m east, 0 m north
      """;

  private Plans() {}

  static Garden garden(String text) {
    Source source = Source.of("test.season", text);
    Outcome<BoundFile> bound = SeasonParser.parse(source).then(Binder::bind);
    Outcome<Optional<Garden>> garden =
        Resolver.resolve(BuiltInCropsForTests.blocks(), bound.value());
    List<Finding> all = new ArrayList<>(bound.findings());
    all.addAll(garden.findings());
    if (!all.isEmpty()) {
      throw new AssertionError("the test's plan is mistaken: " + all);
    }
    return garden.value().orElseThrow();
  }

  static Season season(String text) {
    Garden garden = garden(text);
    return SeasonBuilder.build(
        garden, SiteClimate.of(garden.site(), garden.season(), Optional.empty()));
  }

  static Season season(String text, WeatherRecord record) {
    Garden garden = garden(text);
    return SeasonBuilder.build(
        garden, SiteClimate.of(garden.site(), garden.season(), Optional.of(record)));
  }

  /** Twenty years, 2001 to 2020, of lows and highs given by the date, °C. */
  static WeatherRecord weather(ToDoubleFunction<LocalDate> low, ToDoubleFunction<LocalDate> high) {
    StringBuilder csv = new StringBuilder("date,low C,high C\n");
    LocalDate last = LocalDate.of(2020, 12, 31);
    for (LocalDate d = LocalDate.of(2001, 1, 1); !d.isAfter(last); d = d.plusDays(1)) {
      csv.append(
          String.format(
              Locale.ROOT, "%s,%.2f,%.2f%n", d, low.applyAsDouble(d), high.applyAsDouble(d)));
    }
    return read("made.csv", csv.toString());
  }

  static WeatherRecord read(String name, String csv) {
    return WeatherReader.read(Source.of(name, csv), Optional.empty()).value().orElseThrow();
  }
}
