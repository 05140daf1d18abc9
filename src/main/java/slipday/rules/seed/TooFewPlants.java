package slipday.rules.seed;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Line;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** A line that is to be kept is saved from too few plants. A line being fixed is another matter. */
public final class TooFewPlants implements Rule {
  @Override
  public String id() {
    return "too-few-plants";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Map<String, List<Planting>> lines = new LinkedHashMap<>();
    season.garden().plantings().stream()
        .filter(p -> p.seedSaved() && p.line().purpose() == Line.Purpose.KEEP)
        .forEach(p -> lines.computeIfAbsent(p.line().name(), l -> new ArrayList<>()).add(p));
    lines
        .values()
        .forEach(
            all ->
                all.get(0)
                    .facts()
                    .get(CropFacts.POPULATION)
                    .ifPresent(population -> judge(all, population, reporter)));
  }

  /** Of all plantings of a line: each is a part of what it goes on from. */
  private static Optional<Integer> bearers(List<Planting> plantings) {
    List<Optional<Integer>> each = plantings.stream().map(TooFewPlants::bearers).toList();
    return each.stream().allMatch(Optional::isPresent)
        ? Optional.of(each.stream().mapToInt(b -> b.orElse(0)).sum())
        : Optional.empty();
  }

  /** Plants that bear the seed: no more than there are, nor than fruits are pollinated. */
  private static Optional<Integer> bearers(Planting planting) {
    return planting
        .plants()
        .map(Reasoned::value)
        .map(
            plants ->
                planting
                    .pollination()
                    .map(w -> Math.min(plants, w.value().fruits()))
                    .orElse(plants));
  }

  private static void judge(
      List<Planting> all, Reasoned<CropFacts.Population> population, Reporter reporter) {
    Planting planting = all.get(0);
    int least = (int) Math.round(population.value().toKeep().low());
    Optional<Integer> bearers = bearers(all);
    if (bearers.filter(b -> b < least).isEmpty()) {
      return;
    }
    // What keeps the number of mothers down is what there is less of.
    boolean byFruits = planting.plants().filter(p -> p.value() > bearers.get()).isPresent();
    Reporter.Report report =
        reporter
            .report(
                planting,
                planting.places().of(byFruits ? PlanClauses.POLLINATE : PlanClauses.PLANTS),
                "Seed to keep "
                    + Words.tick(planting.line().name())
                    + " comes from "
                    + Words.count(bearers.get(), "plant", "plants")
                    + (byFruits ? " at most" : "")
                    + "; it takes "
                    + population.value().toKeep()
                    + ".")
            .marked(
                byFruits
                    ? "so many fruits come of so many plants at most"
                    : "so many plants, and no more, bear the seed")
            .also(planting.line().places().of(PlanClauses.PURPOSE), "a line to keep")
            .concerns(planting.line())
            .concerns(planting.lot())
            .fact(population.reason())
            .help(
                "Save seed from "
                    + least
                    + " plants or more, or mix in seed of earlier years; a line being made is"
                    + " `purpose to fix`.");
    planting.bed().ifPresent(report::concerns);
    all.stream()
        .skip(1)
        .forEach(
            p ->
                report
                    .also(p.places().of(PlanClauses.PLANTS), "counted with these")
                    .concerns(p.lot()));
  }
}
