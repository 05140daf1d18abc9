package slipday.garden;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.language.Block;
import slipday.language.Declaration;
import slipday.language.Value;

/** From blocks of text to the garden: every name found, every unit understood, nothing guessed. */
public final class Resolver {
  private final List<Block> blocks;
  private final List<Finding> findings = new ArrayList<>();

  private Resolver(List<Block> blocks) {
    this.blocks = blocks;
  }

  /**
   * @param crops the blocks of the built-in crop files
   * @param plan the blocks of the plan and all it includes
   * @return the garden; empty where season or site are missing, and findings say so
   */
  public static Outcome<Optional<Garden>> resolve(List<Block> crops, List<Block> plan) {
    List<Block> all = Stream.concat(crops.stream(), plan.stream()).toList();
    return new Resolver(all).run();
  }

  /** The crop facts alone, for a plan's or for none. */
  public static Outcome<CropBook> crops(List<Block> blocks) {
    Resolver resolver = new Resolver(blocks);
    CropResolver crops = resolver.cropResolver();
    return new Outcome<>(crops.book(), resolver.findings);
  }

  private CropResolver cropResolver() {
    return new CropResolver(
        findings, of(Declaration.SOURCE), of(Declaration.SPECIES), of(Declaration.CROP));
  }

  private Outcome<Optional<Garden>> run() {
    CropResolver crops = cropResolver();
    Optional<SeasonYear> season = season();
    PlaceResolver places = new PlaceResolver(findings, crops.crops());
    Optional<Site> site = only(Declaration.SITE).flatMap(places::site);
    of(Declaration.BED).forEach(places::bed);
    of(Declaration.NEIGHBOUR).forEach(b -> places.outsider(b, false));
    of(Declaration.VOLUNTEER).forEach(b -> places.outsider(b, true));
    SeedResolver seed = new SeedResolver(findings, crops);
    of(Declaration.LINE).forEach(seed::line);
    of(Declaration.LOT).forEach(seed::lot);
    PlantingResolver plantings = new PlantingResolver(findings, season, places.beds(), seed.lots());
    of(Declaration.GROW).forEach(plantings::planting);
    of(Declaration.CROSS).forEach(plantings::cross);
    plantings.checkNamesOfPlantings();
    GoalResolver goals = new GoalResolver(findings, seed.lines());
    of(Declaration.GOAL).forEach(goals::goal);
    // Names are looked up all the same, so that one mistake hides no other.
    if (season.isEmpty() || site.isEmpty()) {
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
            of(Declaration.ALLOW).map(GoalResolver::allowance).flatMap(Optional::stream).toList());
    return new Outcome<>(Optional.of(garden), findings);
  }

  private Stream<Block> of(Declaration declaration) {
    return blocks.stream().filter(b -> b.declaration() == declaration);
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
