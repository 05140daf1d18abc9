package slipday.rules.goal;

import java.util.List;
import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.Goal;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** A goal asks for more parents than the season's plants and pollinations can give. */
public final class FewerParentsThanGoal implements Rule {
  @Override
  public String id() {
    return "fewer-parents-than-goal";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    for (Goal goal : season.garden().goals()) {
      List<Planting> plantings =
          season.garden().plantings().stream()
              .filter(p -> p.line().name().equals(goal.line().name()) && p.seedSaved())
              .toList();
      boolean counted = plantings.stream().allMatch(p -> bearers(p).isPresent());
      int most = plantings.stream().mapToInt(p -> bearers(p).orElse(0)).sum();
      if (!plantings.isEmpty() && counted && goal.parents().filter(n -> n > most).isPresent()) {
        found(goal, plantings, most, reporter);
      }
    }
  }

  /** Plants that can bear seed: no more than there are, nor than fruits are pollinated. */
  private static Optional<Integer> bearers(Planting planting) {
    Optional<Integer> plants = planting.plants().map(Reasoned::value);
    Optional<Integer> fruits = planting.pollination().map(w -> w.value().fruits());
    return plants.isPresent() && fruits.isPresent()
        ? Optional.of(Math.min(plants.get(), fruits.get()))
        : plants.or(() -> fruits);
  }

  private static void found(Goal goal, List<Planting> plantings, int most, Reporter reporter) {
    Reporter.Report report =
        reporter.report(
            goal,
            goal.places().of(PlanClauses.PARENTS),
            "The goal of "
                + Words.tick(goal.line().name())
                + " asks for "
                + goal.parents().orElse(0)
                + " parents or more, and this season gives "
                + most
                + " at most.");
    for (Planting planting : plantings) {
      boolean byFruits =
          planting
              .pollination()
              .filter(w -> planting.plants().filter(p -> p.value() <= w.value().fruits()).isEmpty())
              .isPresent();
      report.also(
          planting.places().of(byFruits ? PlanClauses.POLLINATE : PlanClauses.PLANTS),
          Words.count(bearers(planting).orElse(0), "seed parent", "seed parents") + " at most");
      report.concerns(planting);
    }
    report
        .concerns(goal.line())
        .help(
            "Pollinate fruits on more plants, grow more of them, or ask for fewer `parents`; what is"
                + " lost with too few does not come back.");
  }
}
