package slipday.rules.record;

import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.FruitStory;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Seed was kept of a fruit picked long before its seed can have been ripe. */
public final class UnripeSeedKept implements Rule {
  @Override
  public String id() {
    return "unripe-seed-kept";
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
    Map<Fruit.Key, Fact.Picked> picked = new HashMap<>();
    for (Fact.Picked fact : season.garden().record().every(Fact.Picked.class).toList()) {
      if (fact.subject() instanceof Fruit fruit) {
        picked.putIfAbsent(fruit.key(), fact);
      }
    }
    Taking.of(season)
        .forEach(
            t ->
                t.fruit()
                    .flatMap(f -> Optional.ofNullable(picked.get(f.key())))
                    .ifPresent(p -> judge(t, p, reporter)));
  }

  /** Days from pollination to full seed, or to ripe where nothing tells of the seed. */
  private static Optional<Reasoned<Range>> days(Fruit fruit) {
    return fruit.facts().get(CropFacts.SEED_RIPE).or(() -> FruitStory.ripeAfter(fruit));
  }

  private static void judge(Taking taking, Fact.Picked picked, Reporter reporter) {
    Fruit fruit = taking.fruit().orElseThrow();
    long hung = ChronoUnit.DAYS.between(fruit.date(), picked.date());
    Optional<Reasoned<Range>> days = days(fruit);
    boolean early = days.filter(d -> FruitStory.isLongBefore(hung, d.value())).isPresent();
    boolean told = picked.isUnripe();
    if (!early && !told) {
      return;
    }
    String why =
        early
            ? "it was picked "
                + Words.count((int) hung, "day", "days")
                + " after its pollination; such seed takes "
                + days.orElseThrow().value()
                + " days."
            : "it was picked " + picked.state().orElse("") + ".";
    Reporter.Report report =
        taking
            .report(reporter, early, "The seed of " + taking.name() + " is kept, and " + why)
            .also(picked.span(), "picked here")
            .also(fruit.span(), "pollinated here");
    days.filter(d -> early).ifPresent(d -> report.fact(d.reason()));
    report.help(
        "Test how it comes up before you count on it, and save seed of a riper fruit if one is"
            + " left.");
  }
}
