package slipday.rules.record;

import slipday.finding.Level;
import slipday.garden.FlowerCare;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Seed was kept from fruit that carries no tag, where flowers are chosen and marked. */
public final class SeedFromUnmarkedFruit implements Rule {
  @Override
  public String id() {
    return "seed-from-unmarked-fruit";
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
    Taking.of(season)
        .filter(t -> t.fruit().isEmpty() && t.lot().identity() != Lot.Identity.KNOWN)
        .filter(t -> t.planting().filter(p -> !isMarked(p)).isEmpty())
        .forEach(t -> found(t, reporter));
  }

  /**
   * Where seed is kept from open flowers by the plan, other rules say who may have shed on them.
   */
  private static boolean isMarked(Planting planting) {
    return planting.pollination().isPresent()
        || planting.flowers().how() == FlowerCare.How.CHOSEN_COVERED;
  }

  private static void found(Taking taking, Reporter reporter) {
    Reporter.Report report =
        taking.report(
            reporter,
            taking.planting().isPresent(),
            "The seed of lot "
                + Words.tick(taking.lot().name())
                + " is from unmarked fruit of "
                + taking.name()
                + ".");
    taking
        .planting()
        .flatMap(p -> p.places().find(PlanClauses.FLOWERS))
        .ifPresent(f -> report.also(f, "the chosen flowers are kept apart"));
    report
        .note("Bees visit every open flower, so nobody knows what pollinated an unmarked fruit.")
        .help(
            "Eat unmarked fruit, and save seed from tagged fruit; or keep this seed apart, its"
                + " pollen parent unknown, and do not take it for the line.");
  }
}
