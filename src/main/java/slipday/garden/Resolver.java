package slipday.garden;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.KnownTraits;
import slipday.garden.record.Planned;
import slipday.garden.record.RecordResolver;
import slipday.language.Block;
import slipday.language.BoundFile;
import slipday.language.Declaration;
import slipday.language.PlanClauses;
import slipday.language.RecordClauses;
import slipday.language.UnitsUsed;
import slipday.language.Value;

/** From blocks of text to the garden: every name found, every unit understood, nothing guessed. */
public final class Resolver {
  private final Map<Declaration, List<Block>> blocks = new EnumMap<>(Declaration.class);
  private final List<Finding> findings = new ArrayList<>();

  private final BoundFile said;

  private Resolver(List<Block> crops, BoundFile said) {
    this.said = said;
    take(crops);
    take(said.blocks());
  }

  private void take(List<Block> more) {
    for (Block block : more) {
      blocks.computeIfAbsent(block.declaration(), d -> new ArrayList<>()).add(block);
    }
  }

  /**
   * @param crops the blocks of the built-in crop files
   * @param plan what the plan and all it includes say
   * @return the garden; empty where season or site are missing, and findings say so
   */
  public static Outcome<Optional<Garden>> resolve(List<Block> crops, BoundFile plan) {
    return resolve(crops, plan, (season, site) -> {});
  }

  /**
   * @param found told of season and site as soon as these are known, while the rest is looked up
   */
  public static Outcome<Optional<Garden>> resolve(
      List<Block> crops, BoundFile plan, BiConsumer<SeasonYear, Site> found) {
    return new Resolver(crops, plan).run(found);
  }

  /** The weather file of the first site, for whoever wants to read it meanwhile. */
  public static Optional<Site.WeatherFile> weather(BoundFile plan) {
    for (Block block : plan.blocks()) {
      if (block.declaration() == Declaration.SITE) {
        return block.find(PlanClauses.WEATHER).map(PlaceResolver::weather);
      }
    }
    return Optional.empty();
  }

  /** The crop facts alone, for a plan's or for none. */
  public static Outcome<CropBook> crops(List<Block> blocks) {
    Resolver resolver = new Resolver(blocks, BoundFile.EMPTY);
    CropResolver crops = resolver.cropResolver();
    return new Outcome<>(crops.book(), resolver.findings);
  }

  private CropResolver cropResolver() {
    return new CropResolver(
        findings, of(Declaration.SOURCE), of(Declaration.SPECIES), of(Declaration.CROP));
  }

  private Outcome<Optional<Garden>> run(BiConsumer<SeasonYear, Site> found) {
    CropResolver crops = cropResolver();
    Optional<SeasonYear> season = season();
    PlaceResolver places = new PlaceResolver(findings, crops, UnitsUsed.in(said));
    Optional<Site> site = only(Declaration.SITE).flatMap(places::site);
    season.ifPresent(s -> site.ifPresent(p -> found.accept(s, p)));
    of(Declaration.BED).forEach(places::bed);
    of(Declaration.NEIGHBOUR).forEach(b -> places.outsider(b, false));
    of(Declaration.VOLUNTEER).forEach(b -> places.outsider(b, true));
    SeedResolver seed = new SeedResolver(findings, season, crops);
    of(Declaration.LINE).forEach(seed::line);
    of(Declaration.LOT).forEach(seed::lot);
    Planned planned =
        Planned.of(of(Declaration.GROW).toList(), places.beds().map(), places.outsiders());
    Optional<RecordResolver> record =
        season.map(y -> new RecordResolver(said, y, seed.lines().map(), planned));
    record.ifPresentOrElse(r -> bear(r, seed.lots()), () -> spoilBorn(seed.lots()));
    List<Block> grown = of(Declaration.GROW).toList();
    PlantingResolver plantings =
        new PlantingResolver(
            findings, season, places.beds(), seed.lots(), new Cages(grown, findings));
    grown.forEach(plantings::planting);
    of(Declaration.CROSS).forEach(plantings::cross);
    plantings.checkNamesOfPlantings();
    GoalResolver goals =
        new GoalResolver(
            findings,
            seed.lines(),
            crops.species(),
            KnownTraits.of(of(Declaration.TRAIT).toList()));
    of(Declaration.GOAL).forEach(goals::goal);
    Optional<GardenRecord> recorded =
        record
            .map(
                r ->
                    r.facts(
                        plantings.plantings(),
                        seed.lots().map(),
                        places.beds().all(),
                        name -> seed.lots().isSpoilt(name) || plantings.isSpoilt(name),
                        name -> seed.lots().isSpoilt(name),
                        of(Declaration.TRAIT).toList()))
            .map(this::heard);
    // Names are looked up all the same, so that one mistake hides no other.
    season.ifPresent(s -> site.ifPresent(p -> checkHalf(s, p)));
    if (season.isEmpty() || site.isEmpty() || recorded.isEmpty()) {
      return new Outcome<>(Optional.empty(), findings);
    }
    Garden garden =
        new Garden(
            season.get(),
            site.get(),
            Collections.unmodifiableMap(crops.species().map()),
            Collections.unmodifiableMap(crops.crops().map()),
            places.beds().all(),
            places.outsiders(),
            seed.lines().all(),
            seed.lots().all(),
            plantings.plantings(),
            plantings.crosses(),
            goals.goals(),
            of(Declaration.ALLOW).map(GoalResolver::allowance).flatMap(Optional::stream).toList(),
            recorded.get());
    return new Outcome<>(Optional.of(garden), findings);
  }

  /** A season runs from winter to winter: over the new year in the south alone. */
  private void checkHalf(SeasonYear season, Site site) {
    boolean south = site.place().value().isSouthern();
    if (south != season.acrossNewYear()) {
      int year = season.year();
      String other =
          south
              ? String.format(Locale.ROOT, "%d-%02d", year, (year + 1) % 100)
              : String.valueOf(year);
      findings.add(
          Finding.error(
                  "season-of-other-half",
                  season.span(),
                  south
                      ? "South of the equator a season runs over the new year."
                      : "North of the equator a season is one calendar year.")
              .also(site.places().of(PlanClauses.PLACE), "where the garden lies")
              .withHelp("Write `season " + other + "`, or mend the latitude."));
    }
  }

  private <T> T heard(Outcome<T> outcome) {
    findings.addAll(outcome.findings());
    return outcome.value();
  }

  /** Adds the lots born in the record, and to all of them what the record says. */
  private void bear(RecordResolver record, Names<Lot> lots) {
    heard(record.births(lots.map()))
        .forEach((name, lot) -> lot.ifPresentOrElse(lots::add, () -> lots.addSpoilt(name)));
    record.savedIntoDeclared(lots.map()).forEach(findings::add);
    lots.all().forEach(lot -> lots.replace(record.asRecorded(lot)));
  }

  /** Without a season the record is not understood, and nobody is blamed for using its lots. */
  private void spoilBorn(Names<Lot> lots) {
    said.entries().stream()
        .filter(e -> e.is(RecordClauses.SAVED))
        .forEach(e -> lots.addSpoilt(e.bound().name("lot").text()));
  }

  private Stream<Block> of(Declaration declaration) {
    return blocks.getOrDefault(declaration, List.of()).stream();
  }

  /** The one block of its kind; where there are more, the first, and the others are told. */
  private Optional<Block> only(Declaration declaration) {
    List<Block> found = of(declaration).toList();
    if (found.isEmpty()) {
      findings.add(
          Finding.placeless(
                  "nothing-begun",
                  slipday.finding.Level.ERROR,
                  "The plan has no `" + declaration.word() + "`.")
              .withHelp("Begin it with a line such as `" + declaration.example() + "`."));
    }
    for (Block again : found.stream().skip(1).toList()) {
      findings.add(
          Finding.error(
                  "said-twice", again.span(), "The plan has a second `" + declaration.word() + "`.")
              .labelled("said again")
              .also(found.get(0).span(), "said first")
              .withHelp("Keep one of the two."));
    }
    return found.stream().findFirst();
  }

  private Optional<SeasonYear> season() {
    return only(Declaration.SEASON).flatMap(b -> b.head().map(h -> season(h.season("season"))));
  }

  private static SeasonYear season(Value.SeasonName name) {
    return new SeasonYear(name.year(), name.acrossNewYear(), name.span());
  }
}
