package slipday.app;

import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.zone.ZoneRulesProvider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import slipday.climate.WeatherRecord;
import slipday.finding.Finding;
import slipday.finding.Folding;
import slipday.finding.Level;
import slipday.finding.Outcome;
import slipday.garden.CropBook;
import slipday.garden.Garden;
import slipday.garden.Resolver;
import slipday.garden.SeasonYear;
import slipday.garden.Site;
import slipday.garden.record.Ahead;
import slipday.language.Block;
import slipday.language.Declaration;
import slipday.rules.Checker;
import slipday.rules.RuleCatalog;
import slipday.season.Season;
import slipday.season.SeasonBuilder;
import slipday.source.Source;

/**
 * The one way from a plan to all that is known of its season. Text and names first; where those are
 * mistaken the season is not reckoned, so that one slip gives one message.
 */
public final class Pipeline {
  private static final Set<Declaration> OF_CROPS =
      Set.of(Declaration.SOURCE, Declaration.SPECIES, Declaration.CROP);

  private final FileTexts texts;
  private final boolean includesOutside;
  private final LocalDate today;
  private final Consumer<Garden> named;

  /**
   * @param includesOutside whether a plan may include files from outside its own folder
   * @param today the last day that can have been: what is recorded of later ones is in the future
   */
  public Pipeline(FileTexts texts, boolean includesOutside, LocalDate today) {
    this(texts, includesOutside, today, garden -> {});
  }

  /**
   * @param includesOutside as above
   * @param today as above
   * @param named is handed a sound garden before its season is reckoned
   */
  public Pipeline(
      FileTexts texts, boolean includesOutside, LocalDate today, Consumer<Garden> named) {
    this.named = named;
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
    return Loader.load(texts, plan, absolute, includesOutside)
        .then(
            loaded -> {
              Outcome<CropBook> book = crops(loaded.said().blocks());
              return new Outcome<>(Optional.of(book.value()), book.findings());
            });
  }

  /** The same of a plan that was read already. */
  public static CropBook crops(Checked plan) {
    return crops(plan.said().stream().flatMap(f -> f.blocks().stream()).toList()).value();
  }

  /** The crops that ship, with a plan's own laid over them. */
  private static Outcome<CropBook> crops(List<Block> plan) {
    if (plan.stream().noneMatch(b -> OF_CROPS.contains(b.declaration()))) {
      return new Outcome<>(BuiltInCrops.book(), List.of());
    }
    List<Block> blocks = new ArrayList<>(BuiltInCrops.blocks());
    blocks.addAll(plan);
    return Resolver.crops(blocks);
  }

  private Checked checked(Outcome<Optional<Source>> read, Path path, boolean season) {
    Path absolute = path.toAbsolutePath().normalize();
    Path folder = absolute.getParent() == null ? absolute : absolute.getParent();
    return read.value()
        .map(source -> check(new PlanSource(source, folder), absolute, season))
        .orElseGet(() -> unusable(read.findings()));
  }

  private static Checked unusable(List<Finding> findings) {
    return new Checked(false, List.of(), List.of(), Optional.empty(), Optional.empty(), findings);
  }

  private Checked check(PlanSource plan, Path path, boolean reckoned) {
    Meanwhile.begin(() -> madeReady(reckoned));
    Outcome<Loader.Loaded> loaded = Loader.load(texts, plan, path, includesOutside);
    List<Finding> findings = new ArrayList<>(loaded.findings());
    if (loaded.value().files().stream().allMatch(f -> f.lines().isEmpty())) {
      findings.add(sayingNothing(plan.first()));
      return new Checked(
          true,
          loaded.value().files(),
          loaded.value().each(),
          Optional.empty(),
          Optional.empty(),
          Folding.fold(findings));
    }
    ClimateAhead climate = new ClimateAhead(texts, plan);
    if (reckoned) {
      Resolver.weather(loaded.value().said()).ifPresent(climate::beginWeather);
    }
    Outcome<Optional<Garden>> garden =
        garden(loaded.value(), reckoned ? climate::begin : (season, site) -> {});
    findings.addAll(garden.findings());
    boolean sound = findings.stream().noneMatch(f -> f.level() == Level.ERROR);
    Optional<Season> season = Optional.empty();
    if (garden.value().isPresent()) {
      Garden g = garden.value().get();
      Ahead.of(g.record(), today).ifPresent(findings::add);
      findings.addAll(Photos.missing(g.record(), plan, texts));
      if (reckoned) {
        if (sound) {
          named.accept(g);
        }
        season = season(g, sound, climate, findings);
      }
      if (season.isEmpty()) {
        findings.addAll(Checker.allowances(g));
      }
    }
    findings.sort(Finding.ORDER);
    return new Checked(
        true,
        loaded.value().files(),
        loaded.value().each(),
        garden.value(),
        season,
        Folding.fold(findings));
  }

  private static Finding sayingNothing(Source plan) {
    return Finding.error(
            "nothing-begun", plan.span(0, 0), "`" + plan.name() + "` says nothing yet.")
        .withHelp(
            "Begin with two lines such as `"
                + Declaration.SEASON.example()
                + "` and `"
                + Declaration.SITE.example()
                + "`.");
  }

  /**
   * What every plan needs and takes a while the first time, while the plan is read: the crop files,
   * the rules of the zones, and the tool's own.
   *
   * @return the number of zones and rules
   */
  private static int madeReady(boolean reckoned) {
    BuiltInCrops.parts();
    int zones = ZoneRulesProvider.getAvailableZoneIds().size();
    return zones + (reckoned ? RuleCatalog.rules().size() : 0);
  }

  private static Optional<Season> season(
      Garden garden, boolean sound, ClimateAhead climate, List<Finding> findings) {
    Outcome<Optional<WeatherRecord>> weather = climate.weather(garden.season(), garden.site());
    findings.addAll(weather.findings());
    boolean weatherSound = garden.site().weather().isEmpty() || weather.value().isPresent();
    if (!sound || !weatherSound) {
      return Optional.empty();
    }
    Season season = SeasonBuilder.build(garden, climate.climate(garden.season(), garden.site()));
    findings.addAll(Checker.check(season));
    return Optional.of(season);
  }

  /**
   * With the crops the plan needs; where a name is mistaken with all of them, since the right one
   * may be any.
   */
  private static Outcome<Optional<Garden>> garden(
      Loader.Loaded plan, BiConsumer<SeasonYear, Site> found) {
    Outcome<Optional<Garden>> garden =
        Resolver.resolve(BuiltInCrops.neededBy(plan.files()), plan.said(), found);
    return garden.findings().isEmpty()
        ? garden
        : Resolver.resolve(BuiltInCrops.blocks(), plan.said(), found);
  }
}
