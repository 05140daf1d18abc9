package slipday.rules.record;

import java.time.temporal.ChronoUnit;
import slipday.finding.Level;
import slipday.garden.Named;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.FruitStory;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/**
 * A marked fruit was picked long before its kind is ripe, and the record does not say that it was
 * unripe.
 */
public final class PickedTooSoon implements Rule {
  @Override
  public String id() {
    return "picked-too-soon";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    FruitStory.all(season.garden().record()).stream()
        .filter(s -> s.fruit().year() == season.garden().season().year())
        .filter(s -> s.saved().isEmpty() && s.pickedTooSoon())
        .forEach(s -> found(season, s, reporter));
  }

  private static void found(Season season, FruitStory story, Reporter reporter) {
    Fruit fruit = story.fruit();
    Fact.Picked picked = story.picked().orElseThrow();
    Reasoned<Range> days = FruitStory.ripeAfter(fruit).orElseThrow();
    int hung = (int) ChronoUnit.DAYS.between(fruit.date(), picked.date());
    Named lot = fruit.seedParent().stand().lot();
    Reporter.Report report =
        reporter
            .report(
                lot,
                picked.span(),
                Words.tick(fruit.tag())
                    + " was picked "
                    + Words.count(hung, "day", "days")
                    + " after its pollination; fruit of its kind is ripe after "
                    + days.value()
                    + " days. Nothing is learned from it of when others ripen.")
            .marked("picked here")
            .also(fruit.span(), "pollinated here");
    fruit
        .seedParent()
        .stand()
        .planting()
        .map(Planting::name)
        .flatMap(season::planting)
        .ifPresent(p -> report.concerns(p.planting()));
    report
        .fact(days.reason())
        .help(
            picked.state().isEmpty()
                ? "Write `picked "
                    + fruit.tag()
                    + ", before ripe` if it was not ripe, `full slip` or `half slip` if it was; or"
                    + " mend one of the dates."
                : "Look for a slip in the month, the day or the tag; write `picked "
                    + fruit.tag()
                    + ", before ripe` if it came off so soon.");
  }
}
