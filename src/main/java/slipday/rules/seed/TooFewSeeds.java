package slipday.rules.seed;

import java.util.List;
import slipday.finding.Level;
import slipday.garden.Lot;
import slipday.garden.record.Fact;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Stock;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.seed.SeedsToSow;

/** Fewer seeds are sown, or are in hand, than the plants wanted need. */
public final class TooFewSeeds implements Rule {
  @Override
  public String id() {
    return "too-few-seeds";
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
    GardenRecord record = season.garden().record();
    Sowing.byLot(season)
        .forEach(
            (lot, sowings) -> {
              sowings.forEach(s -> sown(s, reporter));
              List<Fact> told = Stock.told(record, lot);
              Stock.of(record, lot)
                  .seeds()
                  .ifPresent(left -> inHand(lot, left, unsown(sowings, told), told, reporter));
            });
  }

  /** What is sown by the record takes no more of the lot. */
  private static List<Sowing> unsown(List<Sowing> sowings, List<Fact> told) {
    return sowings.stream()
        .filter(
            s ->
                told.stream()
                    .noneMatch(
                        f ->
                            f instanceof Fact.Sowed sowed
                                && sowed.stand().name().equals(s.planting().name())))
        .toList();
  }

  private static String told(Fact fact) {
    if (fact instanceof Fact.Sowed) {
      return "sown";
    }
    if (fact instanceof Fact.Germinated) {
      return "the test took some";
    }
    return fact instanceof Fact.Counted ? "counted" : "given away";
  }

  private static void sown(Sowing sowing, Reporter reporter) {
    int seeds = sowing.planting().seedsToSow().map(Reasoned::value).orElse(sowing.needed());
    if (seeds >= sowing.needed()) {
      return;
    }
    String plants = Words.count(sowing.plants(), "plant", "plants");
    String chance =
        seeds < sowing.plants()
            ? " can't give " + plants + "."
            : " give " + plants + " in " + Words.percent(sowing.chance(seeds)) + " of cases.";
    reporter
        .report(
            seeds < sowing.plants(),
            sowing.planting(),
            sowing.planting().places().of(PlanClauses.SOW_SEEDS),
            Sowing.seeds(seeds) + " of " + Words.tick(sowing.planting().lot().name()) + chance)
        .also(sowing.planting().places().of(PlanClauses.PLANTS), "plants wanted")
        .concerns(sowing.planting().lot())
        .note(sowing.how())
        .help("Sow " + Sowing.seeds(sowing.needed()) + " to be sure in 19 of 20 cases.");
  }

  /**
   * @param left seeds there are, by the plan less what the record tells
   * @param told what the record tells of them
   */
  private static void inHand(
      Lot lot, int left, List<Sowing> sowings, List<Fact> told, Reporter reporter) {
    int back = lot.keepBack().map(Reasoned::value).orElse(0);
    int there = Math.max(0, left - back);
    long wanted = sowings.stream().mapToLong(Sowing::taken).sum();
    long plants = sowings.stream().mapToLong(Sowing::plants).sum();
    if (wanted <= there) {
      return;
    }
    boolean dead = wanted > SeedsToSow.HARDLY_ANY * plants;
    Reporter.Report report =
        reporter.report(
            plants > left,
            lot,
            lot.places().of(PlanClauses.SEEDS),
            "Lot "
                + Words.tick(lot.name())
                + " has "
                + Sowing.seeds(there)
                + " to sow, and "
                + (dead
                    ? "hardly any of it comes up: no packet is sure to give the plants wanted."
                    : "the plants wanted take " + Sowing.seeds((int) wanted) + "."));
    report.marked(back > 0 ? back + " of them are kept back" : "seeds in hand");
    told.forEach(f -> report.also(f.span(), told(f)));
    for (Sowing sowing : sowings) {
      sowing.tell(report, dead ? "to be grown from it" : sowing.takes());
    }
    if (dead) {
      report.help("Grow another lot, or sow all of it and call each seedling luck.");
      return;
    }
    report.help(
        "Grow fewer plants, or sow in pots one by one and count on fewer; "
            + (back > 0
                ? "or keep fewer back."
                : "a lot this small is best grown for seed first."));
  }
}
