package slipday.rules.record;

import java.util.Map;
import slipday.descent.Births;
import slipday.finding.Level;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** A perfect flower was crossed, and nothing says that its own anthers were removed. */
public final class SelfOrCross implements Rule {
  @Override
  public String id() {
    return "self-or-cross";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    GardenRecord record = season.garden().record();
    Births births = new Births(record);
    Map<Fruit.Key, Fact.SetChecked> sets = record.sets();
    record
        .every(Fruit.class)
        .filter(f -> f.year() == record.season() && births.mayBeSelf(f))
        .filter(f -> !sets.containsKey(f.key()) || sets.get(f.key()).took())
        .filter(f -> lots(f, record).allMatch(s -> births.verdict(s.lot()).isEmpty()))
        .forEach(f -> found(f, record, reporter));
  }

  private static java.util.stream.Stream<Fact.Saved> lots(Fruit fruit, GardenRecord record) {
    return record
        .every(Fact.Saved.class)
        .filter(s -> s.from() instanceof Fruit f && f.key().equals(fruit.key()));
  }

  private static void found(Fruit fruit, GardenRecord record, Reporter reporter) {
    Reporter.Report report =
        OfFruit.report(
                fruit,
                Words.tick(fruit.tag())
                    + " is a cross on a perfect flower that kept its anthers on record: self or"
                    + " cross, to be proved by growing out.",
                reporter)
            .marked("crossed here")
            .concerns(fruit.pollenParent().stand().lot());
    lots(fruit, record)
        .forEach(s -> report.concerns(s.lot()).also(s.span(), "its seed went in here"));
    report
        .note(
            "A perfect flower sheds its own pollen on its own stigma; the anthers come off the"
                + " evening before it is crossed.")
        .help(
            "If they came off, record it (`"
                + fruit.date().minusDays(1)
                + " emasculated "
                + fruit.seedParent()
                + "`); if not, grow some of the seed out and record what it proved to be (`grown"
                + " out LOT, a cross`).");
  }
}
