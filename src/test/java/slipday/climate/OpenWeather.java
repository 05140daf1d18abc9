package slipday.climate;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import slipday.source.Source;

/** The two open records; where they are from is in {@code src/test/resources/weather/README.md}. */
final class OpenWeather {
  private OpenWeather() {}

  static WeatherRecord seattle() {
    return read("seattle.csv");
  }

  static WeatherRecord newYork() {
    return read("new-york.csv");
  }

  static Source source(String name) {
    try {
      return Source.of(name, Files.readString(Path.of("src/test/resources/weather", name)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static WeatherRecord read(String name) {
    var outcome = WeatherReader.read(source(name), Optional.of(TemperatureUnit.CELSIUS));
    if (!outcome.findings().isEmpty()) {
      throw new IllegalStateException(outcome.findings().toString());
    }
    return outcome.value().orElseThrow();
  }
}
