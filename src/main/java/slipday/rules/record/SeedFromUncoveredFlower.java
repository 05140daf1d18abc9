package slipday.rules.record;

import java.util.List;
import slipday.finding.Level;
import slipday.garden.FlowerCare;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.season.Season;

/** Seed was kept from a flower pollinated by hand that had stood open to the bees. */
public final class SeedFromUncoveredFlower implements Rule {
  /** A bud is covered on the evening before it opens, or a few days ahead. */
  private static final int DAYS_AHEAD = 4;

  @Override
  public String id() {
    return "seed-from-uncovered-flower";
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
    List<Fact.Covered> all = season.garden().record().every(Fact.Covered.class).toList();
    Taking.of(season)
        .filter(t -> t.planting().isPresent())
        .forEach(
            t -> t.fruit().ifPresent(f -> judge(t, f, t.planting().orElseThrow(), all, reporter)));
  }

  private static void judge(
      Taking taking, Fruit fruit, Planting planting, List<Fact.Covered> all, Reporter reporter) {
    List<Fact.Covered> here =
        all.stream().filter(c -> c.plants().stand().equals(taking.stand())).toList();
    boolean onRecord = here.stream().anyMatch(c -> covers(c, fruit));
    boolean planned = planting.flowers().how() == FlowerCare.How.CHOSEN_COVERED;
    boolean othersOnRecord = planned && !here.isEmpty();
    if (!onRecord && (planting.flowers().seedFlowersOpen() || othersOnRecord)) {
      found(taking, fruit, planting, reporter);
    }
  }

  private static boolean covers(Fact.Covered fact, Fruit fruit) {
    Plants mother = fruit.seedParent();
    boolean its =
        fact.plants().plant().isEmpty()
            || mother.plant().isEmpty()
            || fact.plants().plant().equals(mother.plant());
    return its
        && !fact.date().isAfter(fruit.date())
        && !fact.date().isBefore(fruit.date().minusDays(DAYS_AHEAD));
  }

  private static void found(Taking taking, Fruit fruit, Planting planting, Reporter reporter) {
    boolean open = planting.flowers().seedFlowersOpen();
    taking
        .report(
            reporter,
            open,
            "The seed of "
                + taking.name()
                + " is kept, and its flower "
                + (open
                    ? "stood open: neither plan nor record covers it."
                    : "is not among those recorded as covered."))
        .also(fruit.span(), "pollinated here")
        .also(planting.places().of(PlanClauses.FLOWERS), "its flowers")
        .note(
            "A bee that was in an open flower before the hand leaves its pollen there, and the seed"
                + " is of both.")
        .help(
            "If it was covered, record that (`"
                + fruit.date().minusDays(1)
                + " covered "
                + fruit.seedParent()
                + "`); if it was not, keep its seed apart as of doubtful identity.");
  }
}
