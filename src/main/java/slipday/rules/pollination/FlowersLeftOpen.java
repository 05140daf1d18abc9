package slipday.rules.pollination;

import java.util.HashSet;
import java.util.Set;
import slipday.finding.Level;
import slipday.garden.Cross;
import slipday.garden.FlowerCare;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.rules.PlanMends;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Flowers are to be pollinated by hand, and stand open to the bees before and after. */
public final class FlowersLeftOpen implements Rule {
  private static final String MEND =
      "Write `flowers cover the chosen`: shut buds of both sexes the evening before, and shut the"
          + " flower again once it is pollinated.";

  @Override
  public String id() {
    return "flowers-left-open";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Set<String> told = new HashSet<>();
    for (Planting planting : season.garden().plantings()) {
      if (planting.pollination().isPresent() && planting.seedSaved() && open(planting)) {
        told.add(planting.name());
        found(planting, reporter);
      }
    }
    season.garden().crosses().stream()
        .filter(c -> open(c.seedParent()) && !told.contains(c.seedParent().name()))
        .forEach(c -> found(c, reporter));
  }

  private static boolean open(Planting planting) {
    FlowerCare.How how = planting.flowers().how();
    return how == FlowerCare.How.OPEN || how == FlowerCare.How.MALES_REMOVED;
  }

  private static void found(Planting planting, Reporter reporter) {
    Reporter.Report report =
        reporter
            .report(
                planting,
                planting.places().of(PlanClauses.POLLINATE),
                "Flowers of "
                    + Words.tick(planting.name())
                    + " are pollinated by hand and left open to every pollen.")
            .concerns(planting.lot())
            .note("A flower that was open for a bee may hold her pollen, whatever is put on it.")
            .help(MEND)
            .mend(PlanMends.cover(planting));
    planting.places().find(PlanClauses.FLOWERS).ifPresent(f -> report.also(f, "left open here"));
    planting.bed().ifPresent(report::concerns);
  }

  private static void found(Cross cross, Reporter reporter) {
    Planting seed = cross.seedParent();
    reporter
        .report(
            cross,
            cross.places().of(PlanClauses.SEED_PARENT),
            "Flowers of "
                + Words.tick(seed.name())
                + ", seed parent of cross "
                + Words.tick(cross.name())
                + ", are left open to every pollen.")
        .also(seed.places().of(PlanClauses.FLOWERS), "left open here")
        .concerns(seed)
        .note("Seed of an open flower is a cross to be proved by growing it out.")
        .help(MEND)
        .mend(PlanMends.cover(seed));
  }
}
