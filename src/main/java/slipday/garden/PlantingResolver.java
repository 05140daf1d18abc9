package slipday.garden;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.finding.Nearest;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.Clause;
import slipday.language.PlanClauses;
import slipday.language.Value;
import slipday.measure.Reasoned;

/** Plantings and crosses. */
final class PlantingResolver {
  private static final double LONGEST_INDOORS = 183;
  private static final String ONE_FRUIT = "A pollination is for 1 fruit or more.";

  private final List<Finding> findings;
  private final Optional<SeasonYear> season;
  private final Names<Bed> beds;
  private final Names<Lot> lots;
  private final Names<Planting> plantings;
  private final Names<Cross> crosses;
  private final Cages cages;
  private final List<Value.Name> mentioned = new ArrayList<>();

  PlantingResolver(
      List<Finding> findings,
      Optional<SeasonYear> season,
      Names<Bed> beds,
      Names<Lot> lots,
      Cages cages) {
    this.cages = cages;
    this.findings = findings;
    this.season = season;
    this.beds = beds;
    this.lots = lots;
    this.plantings = new Names<>("planting", findings);
    this.crosses = new Names<>("cross", findings);
  }

  List<Planting> plantings() {
    return plantings.all();
  }

  /** Whether a planting of this name is declared, and mistaken. */
  boolean isSpoilt(String name) {
    return plantings.isSpoilt(name);
  }

  List<Cross> crosses() {
    return crosses.all();
  }

  void planting(Block block) {
    if (block.head().isEmpty()) {
      plantings.addMisnamed(block);
      return;
    }
    Bound head = block.head().get();
    Optional<Lot> lot = lots.need(head.name("lot"));
    String name = Cages.name(head);
    Optional<Bed> bed = block.find(PlanClauses.IN).flatMap(c -> beds.need(c.bound().name("bed")));
    block.find(PlanClauses.START).ifPresent(this::checkAge);
    Optional<Reasoned<LocalDate>> sownOn = day(block, PlanClauses.SOW_ON);
    Optional<Reasoned<LocalDate>> outOn = day(block, PlanClauses.PLANT_OUT_ON);
    checkOrder(block, sownOn, outOn);
    notItself(block, name);
    Optional<Reasoned<Integer>> plants =
        atLeastOne(block, PlanClauses.PLANTS, "count", "A planting has 1 plant or more.");
    FlowerCare care =
        block.find(PlanClauses.FLOWERS).map(c -> care(name, c.bound())).orElse(FlowerCare.open());
    Optional<Reasoned<Planting.HandPollination>> byHand =
        atLeastOne(block, PlanClauses.POLLINATE, "fruits", ONE_FRUIT)
            .flatMap(n -> value(block, PlanClauses.POLLINATE, PlantingResolver::pollination));
    List<Reasoned<String>> apart = block.every(PlanClauses.BLOOM_APART).map(this::mention).toList();
    if (lot.isEmpty()) {
      plantings.addSpoilt(name);
      // What else is said of the planting names it as its lot was meant to be named.
      Nearest.to(name, lots.map().keySet()).ifPresent(plantings::addSpoilt);
      return;
    }
    plantings.add(
        new Planting(
            name,
            lot.get(),
            bed,
            plants,
            block
                .find(PlanClauses.PLANTS)
                .filter(c -> c.bound().has("apart"))
                .map(c -> PlaceResolver.reasoned(c, c.bound().base("apart"))),
            block.find(PlanClauses.START).map(c -> start(c.bound())),
            sownOn,
            outOn,
            value(block, PlanClauses.SOW_SEEDS, b -> b.count("count")),
            value(block, PlanClauses.MULCH, PlantingResolver::warmth),
            value(block, PlanClauses.COVER, PlantingResolver::cover),
            care,
            byHand,
            block
                .find(PlanClauses.SEED)
                .filter(c -> c.bound().choice("kept").equals("saved"))
                .isPresent(),
            apart,
            new Places(block)));
  }

  private void checkOrder(
      Block block, Optional<Reasoned<LocalDate>> sownOn, Optional<Reasoned<LocalDate>> outOn) {
    if (sownOn.isEmpty() || outOn.isEmpty() || !sownOn.get().value().isAfter(outOn.get().value())) {
      return;
    }
    findings.add(
        Finding.error(
                "impossible-date",
                block.find(PlanClauses.SOW_ON).orElseThrow().span(),
                "The sowing comes after the planting out of the same plants.")
            .also(block.find(PlanClauses.PLANT_OUT_ON).orElseThrow().span(), "the planting out")
            .withHelp("Fix one of the two days and leave the other to be worked out."));
  }

  private void checkAge(BoundClause start) {
    if (start.bound().has("age") && start.bound().base("age") > LONGEST_INDOORS) {
      findings.add(
          Finding.error(
                  "impossible-count",
                  start.span(),
                  "Plants raised indoors for half a year and more are not of this season.")
              .withHelp("Most are planted out at 2 to 10 weeks; see `slipday crops` for each."));
    }
  }

  private Optional<Reasoned<Integer>> atLeastOne(
      Block block, Clause clause, String count, String message) {
    Optional<Reasoned<Integer>> found = value(block, clause, b -> b.count(count));
    if (found.filter(n -> n.value() < 1).isEmpty()) {
      return found;
    }
    findings.add(
        Finding.error("impossible-count", block.find(clause).orElseThrow().span(), message)
            .withHelp("Write 1 or more, or leave the line out."));
    return Optional.empty();
  }

  private static <T> Optional<Reasoned<T>> value(
      Block block, Clause clause, java.util.function.Function<Bound, T> reader) {
    return block.find(clause).map(c -> PlaceResolver.reasoned(c, reader.apply(c.bound())));
  }

  private Reasoned<String> mention(BoundClause c) {
    Value.Name name = c.bound().name("planting");
    mentioned.add(name);
    return PlaceResolver.reasoned(c, name.text());
  }

  private static Planting.Start start(Bound b) {
    return new Planting.Start(
        b.choice("where").equals("indoors"),
        b.has("temperature") ? Optional.of(b.base("temperature")) : Optional.empty(),
        b.has("age") ? Optional.of(b.base("age")) : Optional.empty());
  }

  private Optional<Reasoned<LocalDate>> day(Block block, Clause clause) {
    Optional<BoundClause> found = block.find(clause);
    return season.flatMap(
        s -> found.flatMap(c -> day(c, s).map(date -> PlaceResolver.reasoned(c, date))));
  }

  private Optional<LocalDate> day(BoundClause clause, SeasonYear year) {
    Value.Day day = clause.bound().day("day");
    LocalDate date = day.date().orElseGet(() -> year.on(day.day()));
    if (!MonthDay.from(date).equals(day.day())) {
      findings.add(
          Finding.error(
                  "impossible-date",
                  day.span(),
                  "There is no `" + day.span().text() + "` in the season " + year.label() + ".")
              .withHelp("February has 29 days in a leap year only."));
      return Optional.empty();
    }
    // Seed for an early start may be sown some months before the season's first day.
    boolean near = !date.isBefore(year.first().minusMonths(6)) && !date.isAfter(year.last());
    if (near) {
      return Optional.of(date);
    }
    findings.add(
        Finding.error(
                "date-outside-season",
                day.span(),
                "`" + day.span().text() + "` does not lie in the season " + year.label() + ".")
            .also(year.span(), "the season of the plan")
            .withHelp("The season runs from " + year.first() + " to " + year.last() + "."));
    return Optional.empty();
  }

  private static double warmth(Bound b) {
    return b.difference("warmth") * (b.choice("way").equals("warmer") ? 1 : -1);
  }

  private static Planting.Cover cover(Bound b) {
    return new Planting.Cover(
        b.name("what").text(),
        b.base("time"),
        b.choice("from").equals("sowing"),
        b.difference("warmth"),
        b.has("temperature") ? Optional.of(b.base("temperature")) : Optional.empty());
  }

  private static Planting.HandPollination pollination(Bound b) {
    return new Planting.HandPollination(
        b.choice("how").equals("self"),
        b.count("fruits"),
        b.has("plants") ? Optional.of(b.count("plants")) : Optional.empty());
  }

  /** A cage or a bloom apart is from or with others. */
  private void notItself(Block block, String name) {
    Stream.of(PlanClauses.FLOWERS, PlanClauses.BLOOM_APART)
        .flatMap(block::every)
        .flatMap(c -> c.bound().names("planting").stream())
        .filter(n -> n.text().equals(name))
        .forEach(
            n ->
                findings.add(
                    Finding.error(
                            "with-itself",
                            n.span(),
                            "`" + name + "` can't be with or apart from itself.")
                        .withHelp(
                            "Name another planting; a cage of its own is written `flowers"
                                + " caged`.")));
  }

  private FlowerCare care(String planting, Bound b) {
    String how = b.choice("how");
    mentioned.addAll(b.names("planting"));
    for (FlowerCare.How each : FlowerCare.How.values()) {
      if (how.startsWith(each.words())) {
        boolean caged = each == FlowerCare.How.CAGED;
        return new FlowerCare(each, caged ? cages.with(planting) : Set.of());
      }
    }
    throw new IllegalStateException("no flower care `" + how + "`");
  }

  void cross(Block block) {
    if (block.head().isEmpty()) {
      return;
    }
    String name = block.head().get().name("name").text();
    Optional<Planting> seed = parent(block, PlanClauses.SEED_PARENT, name);
    Optional<Planting> pollen = parent(block, PlanClauses.POLLEN_PARENT, name);
    if (seed.isEmpty() || pollen.isEmpty()) {
      crosses.addSpoilt(block, "name");
      return;
    }
    crosses.add(
        new Cross(
            name,
            seed.get(),
            pollen.get(),
            atLeastOne(block, PlanClauses.FRUITS, "count", ONE_FRUIT),
            new Places(block)));
  }

  private Optional<Planting> parent(Block block, Clause clause, String cross) {
    Optional<BoundClause> found = block.find(clause);
    if (found.isEmpty() && !block.damaged()) {
      findings.add(
          Finding.error(
                  "clause-missing",
                  block.span(),
                  "Cross `" + cross + "` does not name its " + clause.name() + ".")
              .withHelp("Add a line such as `" + clause.example() + "`."));
    }
    return found.flatMap(c -> plantings.need(c.bound().name("planting")));
  }

  /** Cages and `bloom apart` may name plantings declared further down; so they are checked last. */
  void checkNamesOfPlantings() {
    mentioned.forEach(plantings::need);
  }
}
