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

/** A lot is sown to its last seed, or nearly, with no remnant kept back. */
public final class LastSeedSown implements Rule {
  @Override
  public String id() {
    return "last-seed-sown";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public Level milderLevel() {
    return Level.NOTE;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    GardenRecord record = season.garden().record();
    Sowing.byLot(season)
        .forEach(
            (lot, sowings) ->
                Stock.of(record, lot)
                    .seeds()
                    .ifPresent(
                        left -> judge(new Box(lot, sowings, sown(record, lot)), left, reporter)));
  }

  private static List<Fact.Sowed> sown(GardenRecord record, Lot lot) {
    return record
        .every(Fact.Sowed.class)
        .filter(s -> s.stand().year() == record.season())
        .filter(s -> s.stand().lot().name().equals(lot.name()))
        .toList();
  }

  /** A lot, what is meant to be sown of it this season, and what was. */
  private record Box(Lot lot, List<Sowing> meant, List<Fact.Sowed> sown) {
    /** Seeds of plantings of which the record counts none sown. */
    long toSow() {
      return meant.stream().filter(m -> !isCounted(m)).mapToLong(Sowing::taken).sum();
    }

    boolean isCounted(Sowing meant) {
      List<Fact.Sowed> its =
          sown.stream().filter(s -> s.stand().name().equals(meant.planting().name())).toList();
      return !its.isEmpty() && its.stream().allMatch(s -> s.seeds().isPresent());
    }

    long taken() {
      return toSow() + sown.stream().mapToLong(s -> s.seeds().orElse(0)).sum();
    }

    int keptBack() {
      return lot.keepBack().map(Reasoned::value).orElse(0);
    }
  }

  /**
   * @param inHand seeds, after what was sown on record
   */
  private static void judge(Box box, int inHand, Reporter reporter) {
    long left = Math.max(0, inHand - box.toSow());
    boolean enough = box.keptBack() == 0 ? left >= box.taken() : left >= box.keptBack();
    // What the plan alone takes of those kept back, or beyond all there are, is another rule's.
    boolean tooFew = box.toSow() > inHand;
    if (enough || (box.sown.isEmpty() && (tooFew || box.keptBack() > 0))) {
      return;
    }
    String what =
        left == 0
            ? " is sown to its last seed."
            : " has "
                + Sowing.seeds((int) left)
                + " left after sowing: "
                + (box.keptBack() == 0
                    ? "too few to sow again."
                    : box.keptBack() + " were to be kept back.");
    Reporter.Report report =
        reporter
            .report(
                left == 0,
                box.lot,
                box.lot.places().of(PlanClauses.SEEDS),
                "Lot " + Words.tick(box.lot.name()) + what)
            .marked("seeds in hand");
    box.sown.forEach(s -> report.also(s.span(), "sown"));
    for (Sowing sowing : box.meant) {
      report.concerns(sowing.planting());
      if (!box.isCounted(sowing)) {
        sowing.tell(report, sowing.takes());
      }
    }
    report.help(
        "Keep some back under the lot (`"
            + PlanClauses.KEEP_BACK.example()
            + "`), so that a lost season does not lose the line.");
  }
}
