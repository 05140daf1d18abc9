package slipday.garden;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import slipday.finding.Finding;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.Clause;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;

/** Lines and the seed of them that is in hand. */
final class SeedResolver {
  private final List<Finding> findings;
  private final Optional<SeasonYear> season;
  private final CropResolver crops;
  private final Names<Line> lines;
  private final Names<Lot> lots;

  SeedResolver(List<Finding> findings, Optional<SeasonYear> season, CropResolver crops) {
    this.findings = findings;
    this.season = season;
    this.crops = crops;
    this.lines = new Names<>("line", findings);
    this.lots = new Names<>("lot", findings);
  }

  Names<Line> lines() {
    return lines;
  }

  Names<Lot> lots() {
    return lots;
  }

  void line(Block block) {
    if (block.head().isEmpty()) {
      lines.addMisnamed(block);
      return;
    }
    Bound head = block.head().get();
    String name = head.name("name").text();
    Optional<Crop> crop =
        required(block, PlanClauses.IS_A, () -> "Line `" + name + "` does not say what crop it is.")
            .flatMap(c -> crops.need(c.bound().name("crop")));
    block
        .find(PlanClauses.BEGAN)
        .filter(c -> c.bound().has("unnamed"))
        .ifPresent(c -> crops.need(c.bound().name("unnamed")));
    List<StatedFact> stated = crops.stated(block, "line " + name);
    if (crop.isEmpty()) {
      lines.addSpoilt(block, "name");
      return;
    }
    Facts facts = Facts.of(stated, crop.get().facts());
    lines.add(
        new Line(
            name,
            head.has("title") ? head.text("title") : name,
            crop.get(),
            facts,
            block.find(PlanClauses.PURPOSE).map(SeedResolver::purpose).orElse(Line.Purpose.KEEP),
            block.find(PlanClauses.BEGAN),
            block.find(PlanClauses.LOOKS).map(c -> c.bound().text("text")),
            generation(block, PlanClauses.LINE_GENERATION),
            inbred(block, PlanClauses.LINE_INBRED),
            new Places(block)));
  }

  private Optional<BoundClause> required(Block block, Clause clause, Supplier<String> message) {
    Optional<BoundClause> found = block.find(clause);
    if (found.isEmpty() && !block.damaged()) {
      findings.add(
          Finding.error("clause-missing", block.span(), message.get())
              .withHelp("Add a line such as `" + clause.example() + "`."));
    }
    return found;
  }

  private static Line.Purpose purpose(BoundClause c) {
    return switch (c.bound().choice("purpose")) {
      case "to fix" -> Line.Purpose.FIX;
      case "on trial" -> Line.Purpose.TRIAL;
      default -> Line.Purpose.KEEP;
    };
  }

  void lot(Block block) {
    if (block.head().isEmpty()) {
      lots.addMisnamed(block);
      return;
    }
    String name = block.head().get().name("name").text();
    Optional<Line> line =
        required(
                block, PlanClauses.OF, () -> "Lot `" + name + "` does not say of which line it is.")
            .flatMap(c -> lines.need(c.bound().name("line")));
    Optional<BoundClause> harvest = block.find(PlanClauses.HARVESTED);
    harvest.filter(this::isAhead).ifPresent(this::harvestedAhead);
    block.find(PlanClauses.TESTED).ifPresent(c -> checkTest(c, harvest));
    List<Reasoned<Crop>> exposed = exposed(block);
    if (line.isEmpty()) {
      lots.addSpoilt(block, "name");
      return;
    }
    lots.add(
        new Lot(
            name,
            line.get(),
            generation(block, PlanClauses.GENERATION).or(line.get()::generation),
            block.find(PlanClauses.INBRED).isPresent()
                ? inbred(block, PlanClauses.INBRED)
                : line.get().inbred(),
            block.find(PlanClauses.SEEDS).map(c -> reasoned(c, c.bound().count("count"))),
            block.find(PlanClauses.HARVESTED).map(c -> reasoned(c, c.bound().count("year"))),
            block.find(PlanClauses.TESTED).map(SeedResolver::tested),
            block
                .find(PlanClauses.IDENTITY)
                .map(
                    c ->
                        Lot.Identity.valueOf(c.bound().choice("identity").toUpperCase(Locale.ROOT)))
                .orElse(Lot.Identity.KNOWN),
            exposed,
            Optional.empty(),
            diseases(block),
            Optional.empty(),
            false,
            block.find(PlanClauses.KEEP_BACK).map(c -> reasoned(c, c.bound().count("count"))),
            new Places(block)));
  }

  private List<Reasoned<Crop>> exposed(Block block) {
    // Few lots have any, and a plan may have very many lots.
    return block.find(PlanClauses.EXPOSED).isEmpty()
        ? List.of()
        : block
            .every(PlanClauses.EXPOSED)
            .flatMap(c -> crops.need(c.bound().name("crop")).map(x -> reasoned(c, x)).stream())
            .toList();
  }

  private static List<Reasoned<String>> diseases(Block block) {
    return block.find(PlanClauses.DISEASE).isEmpty()
        ? List.of()
        : block.every(PlanClauses.DISEASE).map(c -> reasoned(c, c.bound().words("what"))).toList();
  }

  private static Optional<Reasoned<String>> generation(Block block, Clause clause) {
    return block.find(clause).map(c -> reasoned(c, c.bound().name("generation").text()));
  }

  private static Optional<Reasoned<Double>> inbred(Block block, Clause clause) {
    return block
        .find(clause)
        .filter(c -> !c.bound().choice("how").equals("unknown"))
        .map(
            c ->
                reasoned(
                    c,
                    c.bound().has("share")
                        ? c.bound().share("share").share()
                        : c.bound().choice("how").equals("fully") ? 1.0 : 0.0));
  }

  /** Whether its year is after the season of the plan. */
  private boolean isAhead(BoundClause c) {
    return season.filter(s -> c.bound().count("year") > s.last().getYear()).isPresent();
  }

  private void harvestedAhead(BoundClause harvest) {
    ahead(harvest, "Seed can't be in hand before it is harvested.", "taken");
  }

  private void ahead(BoundClause c, String message, String done) {
    season.ifPresent(
        s ->
            findings.add(
                Finding.error("date-outside-season", c.span(), message)
                    .also(s.span(), "the season of the plan")
                    .withHelp("Write the year the seed was " + done + ".")));
  }

  /** A test is of seed that was there, and is not foretold; of a year that can't be nothing is. */
  private void checkTest(BoundClause test, Optional<BoundClause> harvest) {
    if (!test.bound().has("year")) {
      return;
    }
    int year = test.bound().count("year");
    if (isAhead(test)) {
      ahead(test, "The test is of a year yet to come.", "tested");
    } else if (harvest.filter(h -> year < h.bound().count("year") && !isAhead(h)).isPresent()) {
      findings.add(
          Finding.error("date-outside-season", test.span(), "The test is older than the seed.")
              .also(harvest.get().span(), "when the seed was taken")
              .withHelp("Mend one of the two years."));
    }
  }

  private static <T> Reasoned<T> reasoned(BoundClause c, T value) {
    return PlaceResolver.reasoned(c, value);
  }

  private static Reasoned<Lot.GerminationTest> tested(BoundClause c) {
    var counts = c.bound().share("counts");
    Optional<Integer> year =
        c.bound().has("year") ? Optional.of(c.bound().count("year")) : Optional.empty();
    return reasoned(c, new Lot.GerminationTest(counts.hits(), counts.of(), year));
  }
}
