package slipday.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import slipday.climate.Climate;
import slipday.climate.TemperatureUnit;
import slipday.climate.WeatherReader;
import slipday.climate.WeatherRecord;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.garden.SeasonYear;
import slipday.garden.Site;
import slipday.season.SiteClimate;
import slipday.source.Source;

/**
 * The weather of a site and its climate, begun as soon as the site is known, while the names of the
 * rest of the plan are looked up: the two take about as long.
 */
final class ClimateAhead {
  private final FileTexts texts;
  private final PlanSource plan;
  private @Nullable Begun begun;
  private @Nullable WeatherBegun weatherBegun;

  private record WeatherBegun(
      Site.WeatherFile file, Meanwhile<Outcome<Optional<WeatherRecord>>> weather) {}

  private record Begun(
      Site site,
      SeasonYear season,
      Meanwhile<Outcome<Optional<WeatherRecord>>> weather,
      Meanwhile<Climate> climate) {}

  ClimateAhead(FileTexts texts, PlanSource plan) {
    this.texts = texts;
    this.plan = plan;
  }

  /** Begins to read the file, before the site is known in whole. */
  void beginWeather(Site.WeatherFile file) {
    weatherBegun = new WeatherBegun(file, Meanwhile.begin(() -> read(file)));
  }

  void begin(SeasonYear season, Site site) {
    of(season, site);
  }

  private Begun begun(SeasonYear season, Site site) {
    WeatherBegun known = weatherBegun;
    Meanwhile<Outcome<Optional<WeatherRecord>>> weather =
        known != null && site.weather().filter(known.file::equals).isPresent()
            ? known.weather
            : Meanwhile.later(() -> read(site));
    Meanwhile<Climate> climate =
        Meanwhile.begin(() -> SiteClimate.of(site, season, weather.get().value()));
    return new Begun(site, season, weather, climate);
  }

  private Begun of(SeasonYear season, Site site) {
    Begun known = begun;
    if (known == null || !known.site.equals(site) || !known.season.equals(season)) {
      known = begun(season, site);
      begun = known;
    }
    return known;
  }

  /** The record of the site's weather file; empty where it has none, or none that can be used. */
  Outcome<Optional<WeatherRecord>> weather(SeasonYear season, Site site) {
    return of(season, site).weather.get();
  }

  /** To be asked of a sound plan alone, whose weather file can be used. */
  Climate climate(SeasonYear season, Site site) {
    return of(season, site).climate.get();
  }

  private Outcome<Optional<WeatherRecord>> read(Site site) {
    return site.weather().map(this::read).orElse(Outcome.of(Optional.empty()));
  }

  private Outcome<Optional<WeatherRecord>> read(Site.WeatherFile file) {
    Source from = file.span().source();
    Path path = plan.folder().resolve(plan.seenFromPlan(from, file.path()));
    Outcome<Optional<Source>> text = texts.read(path, from.folder() + file.path());
    List<Finding> missing =
        text.findings().stream()
            .map(f -> texts.named("weather-missing", file.span(), path, f))
            .toList();
    return new Outcome<>(text.value(), missing)
        .then(
            source ->
                source.isEmpty()
                    ? Outcome.of(Optional.empty())
                    : WeatherReader.read(source.get(), file.unit().map(ClimateAhead::unit)));
  }

  private static TemperatureUnit unit(String word) {
    return switch (word) {
      case "F" -> TemperatureUnit.FAHRENHEIT;
      case "C" -> TemperatureUnit.CELSIUS;
      default -> TemperatureUnit.TENTHS_OF_CELSIUS;
    };
  }
}
