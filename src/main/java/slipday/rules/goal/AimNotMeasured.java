package slipday.rules.goal;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import slipday.finding.Level;
import slipday.garden.Goal;
import slipday.garden.record.Fact;
import slipday.garden.record.Figures;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.KnownTraits;
import slipday.garden.record.Plants;
import slipday.garden.record.Subject;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Fruit of a line is being picked, and a trait it is bred for is not measured. */
public final class AimNotMeasured implements Rule {
  /** So many picked without a figure are no longer a beginning. */
  private static final int PICKED = 3;

  @Override
  public String id() {
    return "aim-not-measured";
  }

  @Override
  public Level level() {
    return Level.NOTE;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    for (Goal goal : season.garden().goals()) {
      Harvest harvest = new Harvest(season.garden().record(), goal);
      if (harvest.picked >= PICKED) {
        for (Goal.Aim aim : goal.aims()) {
          if (!harvest.measured.contains(KnownTraits.key(aim.trait()))) {
            found(goal, aim, harvest, reporter);
          }
        }
      }
    }
  }

  /** What was picked and measured of a line this season. */
  private static final class Harvest {
    private final Goal goal;
    private final int year;
    private final Set<String> measured = new HashSet<>();
    private int picked;
    private Optional<Fact> last = Optional.empty();

    Harvest(GardenRecord record, Goal goal) {
      this.goal = goal;
      this.year = record.season();
      record.facts().forEach(this::read);
    }

    private void read(Fact fact) {
      if (fact instanceof Fact.Picked pick && isOfLine(pick.subject())) {
        picked++;
        last = Optional.of(fact);
        figures(pick.figures());
        if (pick.subject() instanceof Fruit) {
          measured.add(KnownTraits.DAYS_TO_RIPE);
        }
        plant(pick.subject()).plant().ifPresent(n -> measured.add(KnownTraits.FRUITS_PER_PLANT));
      } else if (fact instanceof Fact.Measured measuredFact && isOfLine(measuredFact.subject())) {
        figures(measuredFact.figures());
      }
    }

    private void figures(Figures figures) {
      figures.kilograms().ifPresent(kg -> measured.add(KnownTraits.FRUIT_WEIGHT));
      figures.brix().ifPresent(b -> measured.add(KnownTraits.SWEETNESS));
      figures.traits().forEach(t -> measured.add(KnownTraits.key(t.name())));
    }

    private boolean isOfLine(Subject subject) {
      if (!(subject instanceof Fruit) && !(subject instanceof Plants)) {
        return false;
      }
      Plants plant = plant(subject);
      return plant.stand().year() == year
          && plant.stand().lot().line().name().equals(goal.line().name());
    }

    private static Plants plant(Subject subject) {
      return subject instanceof Fruit fruit ? fruit.seedParent() : (Plants) subject;
    }
  }

  private static void found(Goal goal, Goal.Aim aim, Harvest harvest, Reporter reporter) {
    Reporter.Report report =
        reporter
            .report(
                goal,
                aim.span(),
                Words.tick(aim.trait())
                    + " is aimed at, and of "
                    + harvest.picked
                    + " pickings of "
                    + Words.tick(goal.line().name())
                    + " this season none tells it.")
            .concerns(goal.line())
            .help(
                "Measure the fruits that are left, each with its plant's number, or take the aim"
                    + " out: a trait that is not measured is not chosen for.");
    harvest.last.ifPresent(f -> report.also(f.span(), "the last picked"));
  }
}
