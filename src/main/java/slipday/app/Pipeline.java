package slipday.app;

import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.climate.TemperatureUnit;
import slipday.climate.WeatherReader;
import slipday.climate.WeatherRecord;
import slipday.finding.Finding;
import slipday.finding.Folding;
import slipday.finding.Level;
import slipday.finding.Outcome;
import slipday.garden.CropBook;
import slipday.garden.Garden;
import slipday.garden.Resolver;
import slipday.garden.Site;
import slipday.garden.record.Ahead;
import slipday.language.Block;
import slipday.rules.Checker;
import slipday.season.Season;
import slipday.season.SeasonBuilder;
import slipday.season.SiteClimate;
import slipday.source.Source;

/**
 * The one way from a plan to all that is known of its season. Text and names first; where those are
 * mistaken the season is not reckoned, so that one slip gives one message.
 */
public final class Pipeline {
  private final FileTexts texts;
  private final boolean includesOutside;
  private final LocalDate today;

  /**
   * @param includesOutside whether a plan may include files from outside its own folder
   * @param today the last day that can have been: what is recorded of later ones is in the future
   */
  public Pipeline(FileTexts texts, boolean includesOutside, LocalDate today) {
    this.texts = texts;
    this.includesOutside = includesOutside;
    this.today = today;
  }

  /** Checks the plan in a file. */
  public Checked check(Path path, String name) {
    return checked(texts.read(path, name), path, true);
  }

  /** Text and names alone, quick enough for every keystroke: the season is not reckoned. */
  public Checked names(Path path, String name) {
    return checked(texts.read(path, name), path, false);
  }

  /**
   * Checks the plan on a stream.
   *
   * @param path where it would stand as a file: what it includes is looked for beside it
   */
  public Checked check(InputStream in, String name, Path path) {
    Outcome<Optional<Source>> read = FileTexts.read(in, name);
    return checked(read, path, true);
  }

  /**
   * The crop facts in force under the plan in a file, those of crops it does not grow among them.
   *
   * @return empty where its first file can't be read
   */
  public Outcome<Optional<CropBook>> crops(Path path, String name) {
    Path absolute = path.toAbsolutePath().normalize();
    Path folder = absolute.getParent() == null ? absolute : absolute.getParent();
    Outcome<Optional<Source>> read = texts.read(path, name);
    if (read.value().isEmpty()) {
      return new Outcome<>(Optional.empty(), read.findings());
    }
    PlanSource plan = new PlanSource(read.value().get(), folder);
    List<Block> blocks = new ArrayList<>(BuiltInCrops.blocks());
    return Loader.load(texts, plan, absolute, includesOutside)
        .then(
            loaded -> {
              blocks.addAll(loaded.said().blocks());
              Outcome<CropBook> book = Resolver.crops(blocks);
              return new Outcome<>(Optional.of(book.value()), book.findings());
            });
  }

  private Checked checked(Outcome<Optional<Source>> read, Path path, boolean season) {
    Path absolute = path.toAbsolutePath().normalize();
    Path folder = absolute.getParent() == null ? absolute : absolute.getParent();
    return read.value()
        .map(source -> check(new PlanSource(source, folder), absolute, season))
        .orElseGet(() -> unusable(read.findings()));
  }

  private static Checked unusable(List<Finding> findings) {
    return new Checked(false, List.of(), Optional.empty(), Optional.empty(), findings);
  }

  private Checked check(PlanSource plan, Path path, boolean reckoned) {
    Outcome<Loader.Loaded> loaded = Loader.load(texts, plan, path, includesOutside);
    List<Finding> findings = new ArrayList<>(loaded.findings());
    Outcome<Optional<Garden>> garden = garden(loaded.value());
    findings.addAll(garden.findings());
    boolean sound = findings.stream().noneMatch(f -> f.level() == Level.ERROR);
    Optional<Season> season = Optional.empty();
    if (garden.value().isPresent()) {
      Garden g = garden.value().get();
      Ahead.of(g.record(), today).ifPresent(findings::add);
      Optional<Site.WeatherFile> file = g.site().weather();
      Optional<WeatherRecord> record =
          file.filter(f -> reckoned).flatMap(f -> weather(f, plan, findings));
      boolean weatherSound = file.isEmpty() || record.isPresent();
      if (sound && weatherSound && reckoned) {
        season = Optional.of(SeasonBuilder.build(g, SiteClimate.of(g.site(), g.season(), record)));
        findings.addAll(Checker.check(season.get()));
      }
    }
    findings.sort(Finding.ORDER);
    return new Checked(
        true, loaded.value().files(), garden.value(), season, Folding.fold(findings));
  }

  /**
   * With the crops the plan needs; where a name is mistaken with all of them, since the right one
   * may be any.
   */
  private static Outcome<Optional<Garden>> garden(Loader.Loaded plan) {
    Outcome<Optional<Garden>> garden =
        Resolver.resolve(BuiltInCrops.neededBy(plan.files()), plan.said());
    return garden.findings().isEmpty()
        ? garden
        : Resolver.resolve(BuiltInCrops.blocks(), plan.said());
  }

  private Optional<WeatherRecord> weather(
      Site.WeatherFile file, PlanSource plan, List<Finding> findings) {
    String planName = file.span().source().name();
    String prefix = planName.substring(0, planName.lastIndexOf('/') + 1);
    String planPrefix = plan.first().name();
    planPrefix = planPrefix.substring(0, planPrefix.lastIndexOf('/') + 1);
    String below = prefix.startsWith(planPrefix) ? prefix.substring(planPrefix.length()) : "";
    Outcome<Optional<Source>> text =
        texts.read(plan.folder().resolve(below + file.path()), prefix + file.path());
    for (Finding f : text.findings()) {
      findings.add(Finding.error("weather-missing", file.span(), f.message()).withHelp(f.help()));
    }
    if (text.value().isEmpty()) {
      return Optional.empty();
    }
    Outcome<Optional<WeatherRecord>> read =
        WeatherReader.read(text.value().get(), file.unit().map(Pipeline::unit));
    findings.addAll(read.findings());
    return read.value();
  }

  private static TemperatureUnit unit(String word) {
    return switch (word) {
      case "F" -> TemperatureUnit.FAHRENHEIT;
      case "C" -> TemperatureUnit.CELSIUS;
      default -> TemperatureUnit.TENTHS_OF_CELSIUS;
    };
  }
}
