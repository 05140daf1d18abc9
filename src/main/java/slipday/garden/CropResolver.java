package slipday.garden;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.CropClauses;
import slipday.language.KindClauses;
import slipday.language.Says;
import slipday.language.Value;

/** Species and crops. A plan that declares one again adds to it and overrides it. */
final class CropResolver {
  private static final String PLAN = "the plan";
  private static final String COMMON_PRACTICE = "common practice, no source";

  private final List<Finding> findings;
  private final Map<String, String> sources = new HashMap<>();
  private final Names<Species> species;
  private final Names<Crop> crops;
  private final CropWords words;

  CropResolver(
      List<Finding> findings, Stream<Block> sources, Stream<Block> species, Stream<Block> crops) {
    this.findings = findings;
    this.species = new Names<>("species", findings);
    this.crops = new Names<>("crop", findings);
    sources.forEach(
        b -> b.head().ifPresent(h -> this.sources.put(h.name("name").text(), h.text("title"))));
    List<Block> speciesBlocks = species.toList();
    speciesBlocks.forEach(this::species);
    speciesBlocks.forEach(this::checkSpeciesNames);
    crops.forEach(this::crop);
    words = new CropWords(this.crops.map());
    words.check(findings);
  }

  Names<Species> species() {
    return species;
  }

  Names<Crop> crops() {
    return crops;
  }

  /** The crop a name means, or another word for it; where none does, more is told. */
  Optional<Crop> need(Value.Name name) {
    Optional<Crop> meant =
        crops.find(name.text()).isEmpty() && !crops.isSpoilt(name.text())
            ? words.alone(name.text())
            : Optional.empty();
    return meant.isPresent()
        ? meant
        : crops.need(name, unknown -> words.helped(unknown, name.text()));
  }

  CropBook book() {
    return new CropBook(species.map(), crops.map());
  }

  private void species(Block block) {
    if (block.head().isEmpty()) {
      return;
    }
    Value.Name name = block.head().get().name("name");
    Optional<Species> earlier = species.find(name.text());
    Facts parent = earlier.map(Species::facts).orElse(Facts.none());
    Species made =
        new Species(
            name.text(),
            block.head().get().text("latin"),
            Facts.of(stated(block, "species " + name.text()), parent),
            block.span());
    keep(species, made, earlier.map(Species::span).isPresent(), block);
  }

  private <T extends Named> void keep(Names<T> names, T made, boolean again, Block block) {
    boolean overrides =
        again && !block.span().source().isBuiltIn() && isBuiltIn(names, made.name());
    if (overrides) {
      names.replace(made);
    } else {
      names.add(made);
    }
  }

  private static <T extends Named> boolean isBuiltIn(Names<T> names, String name) {
    return names.find(name).filter(t -> t.span().source().isBuiltIn()).isPresent();
  }

  private void checkSpeciesNames(Block block) {
    block.every(CropClauses.CROSSES_WITH).forEach(c -> species.need(c.bound().name("species")));
    block.every(CropClauses.EMERGES_LIKE).forEach(c -> species.need(c.bound().name("species")));
  }

  private void crop(Block block) {
    if (block.head().isEmpty()) {
      return;
    }
    String name = block.head().get().name("name").text();
    Optional<Crop> earlier = crops.find(name);
    Optional<BoundClause> of = block.find(KindClauses.OF);
    if (of.isEmpty() && earlier.isEmpty()) {
      if (!block.damaged()) {
        findings.add(ofNoSpecies(block, name));
      }
      stated(block, name);
      crops.addSpoilt(block, "name");
      return;
    }
    Optional<Species> kind =
        of.isPresent()
            ? species.need(of.get().bound().name("species"))
            : earlier.map(Crop::species);
    List<StatedFact> stated = stated(block, "crop " + name);
    if (kind.isEmpty()) {
      crops.addSpoilt(block, "name");
      return;
    }
    Facts parent = earlier.map(Crop::facts).orElse(kind.get().facts());
    Crop made =
        new Crop(
            name, otherNames(block, earlier), kind.get(), Facts.of(stated, parent), block.span());
    keep(crops, made, earlier.isPresent(), block);
  }

  private Finding ofNoSpecies(Block block, String name) {
    Finding finding =
        Finding.error(
            "clause-missing",
            block.span(),
            "Crop `" + name + "` does not say of which species it is.");
    return new CropWords(crops.map())
        .alone(name)
        .map(
            crop ->
                finding.withHelp(
                    "It is another word for `"
                        + crop.name()
                        + "`: to say a fact of that anew, write `crop "
                        + crop.name()
                        + "`. A crop of your own wants a line `of SPECIES`."))
        .orElseGet(() -> finding.withHelp("Add a line `of SPECIES`; `slipday crops` lists them."));
  }

  /** What else a crop is called, by this block and by those before it. */
  private static List<OtherName> otherNames(Block block, Optional<Crop> earlier) {
    List<OtherName> names = new ArrayList<>();
    earlier.ifPresent(crop -> names.addAll(crop.otherNames()));
    block.every(KindClauses.ALSO_CALLED).forEach(c -> names.add(otherName(c)));
    return names;
  }

  private static OtherName otherName(BoundClause clause) {
    Bound bound = clause.bound();
    return new OtherName(
        bound.name("word").text(),
        !bound.has("how"),
        bound.has("where") ? bound.words("where") : "",
        clause.span());
  }

  /** The facts a block states, each with where it is from. */
  List<StatedFact> stated(Block block, String owner) {
    List<StatedFact> stated = new ArrayList<>();
    for (BoundClause clause : block.clauses()) {
      if (CropClauses.isFact(clause.clause())) {
        boolean fromMemory = clause.says().filter(Says::fromMemory).isPresent();
        stated.add(new StatedFact(clause, owner, source(clause), fromMemory));
      }
    }
    return stated;
  }

  private String source(BoundClause clause) {
    if (clause.says().isEmpty()) {
      return PLAN;
    }
    Optional<Value.Name> name = clause.says().get().source();
    if (name.isEmpty()) {
      return COMMON_PRACTICE;
    }
    String title = sources.get(name.get().text());
    if (title == null) {
      findings.add(
          Finding.error(
                  "unknown-name",
                  name.get().span(),
                  "There is no source `" + name.get().text() + "`.")
              .nearest(name.get().text(), sources.keySet(), "source"));
      return name.get().text();
    }
    return title;
  }
}
