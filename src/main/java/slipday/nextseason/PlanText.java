package slipday.nextseason;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import slipday.descent.Births;
import slipday.format.Formatter;
import slipday.garden.Bed;
import slipday.garden.Crop;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.SeasonYear;
import slipday.garden.record.Fact;
import slipday.garden.record.Grounds;
import slipday.genetics.Generation;
import slipday.language.Binder;
import slipday.language.Block;
import slipday.language.BoundClause;
import slipday.language.BoundFile;
import slipday.language.Declaration;
import slipday.language.Entry;
import slipday.language.PlanClauses;
import slipday.measure.Counted;
import slipday.nextseason.NextSeason.LeftOut;
import slipday.nextseason.NextSeason.Resting;
import slipday.source.Source;
import slipday.syntax.SeasonFile;
import slipday.syntax.SeasonParser;
import slipday.syntax.Word;

/**
 * The next season as a plan file. What does not change is taken over word for word with its
 * comments: site, neighbours, crops, lines, goals. Beds say what stood in them, lots what is left.
 */
public final class PlanText {
  private final NextSeason next;
  private final Garden garden;
  private final List<Block> blocks = new ArrayList<>();
  private final List<Entry> entries = new ArrayList<>();
  private final Set<String> recorded = new HashSet<>();
  private final GrowText grow;
  private final Outer outer;
  private final Map<String, Set<Crop>> crops;
  private final List<String> lines = new ArrayList<>();

  /**
   * What only the caller knows.
   *
   * @param called this season's plan, as its user calls it
   * @param includes the paths the new file takes in
   * @param taken whether a file of this season is among those
   * @param moved a path written in this season's plan, as the new file has to write it
   */
  public record Outer(
      String called, List<String> includes, Predicate<Source> taken, UnaryOperator<String> moved) {}

  private PlanText(NextSeason next, List<SeasonFile> files, Outer outer) {
    this.next = next;
    this.garden = next.garden();
    this.grow = new GrowText(next);
    this.outer = outer;
    this.crops = new Grounds(garden).cropsByBed();
    for (SeasonFile file : files) {
      BoundFile bound = Binder.bind(file).value();
      bound
          .entries()
          .forEach(e -> e.line().words().stream().map(Word::text).forEach(recorded::add));
      if (!outer.taken().test(file.source())) {
        blocks.addAll(bound.blocks());
        entries.addAll(bound.entries());
      }
    }
  }

  /**
   * The text, laid out.
   *
   * @param files all that this season's plan takes in
   */
  public static String of(NextSeason next, List<SeasonFile> files, Outer outer) {
    return new PlanText(next, files, outer).text();
  }

  private String text() {
    head();
    copied(Declaration.SOURCE, Declaration.SPECIES, Declaration.CROP, Declaration.TRAIT);
    heading("Beds");
    garden.beds().forEach(this::bed);
    copied(Declaration.NEIGHBOUR);
    heading("Lines");
    blocks(Declaration.LINE).forEach(this::line);
    heading("Seed in hand; what was saved is in the record");
    garden.lots().stream().filter(this::isDeclared).forEach(this::lot);
    Births births = new Births(garden.record());
    garden.lots().forEach(l -> isolated(l, births));
    heading("Season " + label());
    next.plantings().forEach(s -> add(grow.sown(s)));
    next.crosses().forEach(c -> add(grow.cross(c)));
    blocks(Declaration.GOAL)
        .filter(b -> !isDropped(name(b, "line")))
        .forEach(b -> add(BlockText.of(b)));
    garden.allowances().stream().map(grow::allowance).filter(a -> !a.isEmpty()).forEach(this::add);
    leftOut();
    record();
    String text = String.join("\n", lines) + "\n";
    return Formatter.format(SeasonParser.parse(Source.of("next", text)).value()).value();
  }

  private void add(List<String> block) {
    lines.addAll(block);
    lines.add("");
  }

  private void heading(String words) {
    lines.add("# --- " + words + " " + "-".repeat(Math.max(3, 72 - words.length())));
    lines.add("");
  }

  private java.util.stream.Stream<Block> blocks(Declaration declaration) {
    return blocks.stream().filter(b -> b.declaration() == declaration && b.head().isPresent());
  }

  private void copied(Declaration... declarations) {
    for (Declaration declaration : declarations) {
      blocks(declaration).forEach(b -> add(BlockText.of(b)));
    }
  }

  private void head() {
    lines.addAll(
        Comments.of(
            "Out of "
                + outer.called()
                + " and its record, by `slipday next-season`. It is yours to change. What must be"
                + " decided is marked `To decide`. Lines that begin like this one are not taken"
                + " over into the plan after it."));
    add(List.of("season " + label()));
    if (!outer.includes().isEmpty()) {
      add(outer.includes().stream().map(p -> "include \"" + p + "\"").toList());
    }
    blocks(Declaration.SITE)
        .forEach(
            b -> {
              List<String> site = BlockText.comment(b);
              site.addAll(BlockText.body(b, this::siteLine));
              add(site);
            });
  }

  private String label() {
    SeasonYear season = garden.season();
    return season.label(next.year());
  }

  private List<String> siteLine(BoundClause clause) {
    String line = BlockText.line(clause);
    if (!clause.clause().equals(PlanClauses.WEATHER)) {
      return List.of(line);
    }
    String path = clause.bound().text("path");
    return List.of(line.replace(path, outer.moved().apply(path)));
  }

  private void bed(Bed bed) {
    Block block = bed.places().block();
    List<String> of = BlockText.of(block);
    Set<String> said = new LinkedHashSet<>();
    bed.grew().forEach(g -> said.add(g.value().crop().name() + " " + g.value().year()));
    int year = garden.season().year();
    for (Crop crop : crops.getOrDefault(bed.name(), Set.of())) {
      if (said.add(crop.name() + " " + year)) {
        of.add("  grew " + crop.name() + " in " + year);
      }
    }
    add(of);
  }

  private static String name(Block block, String of) {
    return block.head().orElseThrow().name(of).text();
  }

  private Optional<Fact.Dropped> end(String line) {
    return Optional.ofNullable(next.dropped().get(line));
  }

  private boolean isDropped(String line) {
    return end(line).isPresent();
  }

  /** A line given up stands on as long as the record names seed of it. */
  private void line(Block block) {
    String name = name(block, "name");
    Optional<Fact.Dropped> end = end(name);
    if (end.isPresent()
        && garden.lots().stream().noneMatch(l -> l.line().name().equals(name) && isKept(l))) {
      return;
    }
    List<String> of = BlockText.of(block);
    end.ifPresent(
        d ->
            of.addAll(
                0,
                Comments.of(
                    "Dropped on "
                        + d.date()
                        + ": "
                        + d.why()
                        + ". It stands here because the record names its seed.")));
    add(of);
  }

  /** Whether it stands in the plan, and was not born in the record. */
  /** What kept pollen out this season, the next one's plan can't know but by the label. */
  private void isolated(Lot lot, Births births) {
    if (lot.isolated().isPresent() && lot.generation().isEmpty() && !isDropped(lot.line().name())) {
      String told = births.generation(lot).map(Generation::print).orElse("OP, isolated");
      add(
          Comments.of(
              "To decide: open flowers of `"
                  + lot.name()
                  + "` met no other pollen, since "
                  + lot.isolated().get().says()
                  + ". Only the plan of that season tells so: end its `saved` line in the record"
                  + " with `, generation "
                  + told
                  + "`, or its pollen parent counts as unknown."));
    }
  }

  private boolean isDeclared(Lot lot) {
    return blocks(Declaration.LOT).anyMatch(b -> b.span().equals(lot.span()));
  }

  private boolean isKept(Lot lot) {
    boolean gone = next.left().getOrDefault(lot.name(), 1) == 0 || isDropped(lot.line().name());
    return !gone || recorded.contains(lot.name());
  }

  private void lot(Lot lot) {
    if (isKept(lot)) {
      List<String> of = BlockText.comment(lot.places().block());
      of.addAll(grow.lot(lot));
      add(of);
    }
  }

  private void leftOut() {
    List<String> said = new ArrayList<>();
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (LeftOut out : next.leftOut()) {
      byReason.computeIfAbsent(out.why(), w -> new ArrayList<>()).add(out.name());
    }
    byReason.forEach(
        (why, names) -> said.addAll(Comments.of(String.join(", ", names) + ": " + why + ".")));
    next.resting().forEach(r -> said.addAll(Comments.of(resting(r))));
    blocks(Declaration.VOLUNTEER)
        .forEach(
            b ->
                said.addAll(
                    Comments.of(
                        "volunteer "
                            + name(b, "name")
                            + ": declare it again if it comes up again.")));
    if (!said.isEmpty()) {
      heading("Not in this plan");
      add(said);
    }
  }

  private String resting(Resting r) {
    String seeds = r.left().map(n -> Counted.of(n, "seed")).orElse("uncounted seed");
    String until =
        r.growOnBy()
            .map(y -> y <= next.year() ? ", best grown on now" : ", best grown on by " + y)
            .orElse("");
    return r.line().name()
        + ": "
        + seeds
        + " of "
        + r.lot().name()
        + (r.left().equals(Optional.of(1)) ? " rests" : " rest")
        + until
        + ".";
  }

  /** What of the record stood in the plan itself. */
  private void record() {
    if (!entries.isEmpty()) {
      heading("Recorded in " + outer.called());
      add(entries.stream().map(e -> e.span().source().line(e.span().line())).toList());
    }
  }
}
