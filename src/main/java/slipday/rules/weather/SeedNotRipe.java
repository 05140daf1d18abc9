package slipday.rules.weather;

import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Facts;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Condition;
import slipday.season.Season;

/** Frost takes the plants before a fruit holds full seed, more often than the gardener accepts. */
public final class SeedNotRipe implements Rule {
  private static final double AS_OFTEN_AS_NOT = 0.5;

  @Override
  public String id() {
    return "seed-not-ripe-before-frost";
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
    Reasoned<Double> risk = season.garden().site().frostRisk();
    Judged.by(Condition.SEED_RIPENING, season)
        .filter(j -> j.fails(1 - risk.value()))
        .forEach(j -> found(j, risk, reporter));
  }

  private static void found(Judged judged, Reasoned<Double> risk, Reporter reporter) {
    Reporter.Report report =
        reporter.report(
            judged.chance() < AS_OFTEN_AS_NOT,
            judged.planting(),
            judged.place(),
            judged.name()
                + ", "
                + judged.when()
                + ", holds full seed before frost in "
                + Words.percent(judged.chance())
                + " of years; "
                + Words.percent(1 - risk.value())
                + " is wanted.");
    judged.told(report).fact(risk.reason()).help(judged.sooner());
    ripening(judged).ifPresent(report::fact);
  }

  /** What its ripening is reckoned with: the seed's own days, or the fruit's. */
  private static Optional<Reason> ripening(Judged judged) {
    Facts facts = judged.planting().facts();
    return facts
        .get(CropFacts.SEED_RIPE)
        .map(Reasoned::reason)
        .or(() -> facts.get(CropFacts.RIPE).map(Reasoned::reason));
  }
}
