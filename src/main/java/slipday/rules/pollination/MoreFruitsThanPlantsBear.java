package slipday.rules.pollination;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.PollinationPlan;
import slipday.season.Season;

/** More marked fruits are wanted than the plants carry, or from more plants than there are. */
public final class MoreFruitsThanPlantsBear implements Rule {
  @Override
  public String id() {
    return "more-fruits-than-plants-bear";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public Level milderLevel() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Map<String, List<PollinationPlan>> bySeedParent =
        season.pollinations().stream()
            .collect(
                Collectors.groupingBy(
                    p -> p.seedParent().name(), LinkedHashMap::new, Collectors.toList()));
    bySeedParent.values().forEach(plans -> load(plans, reporter));
    season.garden().plantings().forEach(p -> plants(p, reporter));
  }

  private static void load(List<PollinationPlan> plans, Reporter reporter) {
    PollinationPlan first = plans.get(0);
    Planting seed = first.seedParent();
    int wanted = plans.stream().mapToInt(PollinationPlan::wanted).sum();
    if (seed.plants().isEmpty() || wanted <= first.canCarry()) {
      return;
    }
    Reporter.Report report =
        reporter
            .mild(
                seed,
                TooFewFlowers.wish(first),
                Words.count(wanted, "marked fruit is", "marked fruits are")
                    + " wanted of "
                    + Words.tick(seed.name())
                    + ", and its plants carry "
                    + first.canCarry()
                    + ".")
            .also(seed.places().of(PlanClauses.PLANTS), "so many plants");
    plans.stream()
        .skip(1)
        .forEach(p -> report.also(TooFewFlowers.wish(p), p.wanted() + " more wanted here"));
    plans.forEach(p -> p.cross().ifPresent(report::concerns));
    seed.facts().get(CropFacts.FRUITS_PER_PLANT).ifPresent(f -> report.fact(f.reason()));
    report
        .concerns(seed.lot())
        .help("Want fewer fruits, or grow more plants; an overloaded vine ripens none well.");
  }

  /** A fruit hangs on one plant. */
  private static void fewFruits(
      Planting planting, Planting.HandPollination wish, Reporter reporter) {
    if (wish.fromPlants().isEmpty() || wish.fromPlants().get() <= wish.fruits()) {
      return;
    }
    int plants = wish.fromPlants().get();
    reporter
        .report(
            planting,
            planting.places().of(PlanClauses.POLLINATE),
            Words.count(wish.fruits(), "fruit", "fruits")
                + " of "
                + Words.tick(planting.name())
                + " can't be from "
                + plants
                + " plants: a fruit hangs on one.")
        .concerns(planting.lot())
        .help("Want " + plants + " fruits or more, or ask for fewer plants.");
  }

  private static void plants(Planting planting, Reporter reporter) {
    planting.pollination().ifPresent(p -> fewFruits(planting, p.value(), reporter));
    Optional<Integer> from = planting.pollination().flatMap(p -> p.value().fromPlants());
    Optional<Integer> there = planting.plants().map(Reasoned::value);
    if (from.isEmpty() || there.isEmpty() || from.get() <= there.get()) {
      return;
    }
    reporter
        .report(
            planting,
            planting.places().of(PlanClauses.POLLINATE),
            "Fruits of "
                + Words.tick(planting.name())
                + " are wanted from "
                + from.get()
                + " plants or more, and it has "
                + there.get()
                + ".")
        .also(planting.places().of(PlanClauses.PLANTS), "so many plants")
        .concerns(planting.lot())
        .help("Ask for " + asked(planting, there.get()) + " or more, or grow " + from.get() + ".");
  }

  /** As many plants as there are, and no more than fruits: one hangs on each. */
  private static String asked(Planting planting, int there) {
    int fruits = planting.pollination().map(p -> p.value().fruits()).orElse(there);
    return Words.count(Math.min(there, fruits), "plant", "plants");
  }
}
