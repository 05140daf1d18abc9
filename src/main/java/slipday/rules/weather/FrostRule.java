package slipday.rules.weather;

import java.util.Optional;
import slipday.finding.Level;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.season.Condition;
import slipday.season.Season;

/**
 * A condition held against the risk of frost that the gardener accepts: an error where it fails as
 * often as not, else a warning.
 */
abstract class FrostRule implements Rule {
  private static final double AS_OFTEN_AS_NOT = 0.5;

  private final Condition condition;

  FrostRule(Condition condition) {
    this.condition = condition;
  }

  @Override
  public final Level level() {
    return Level.ERROR;
  }

  @Override
  public final Level milderLevel() {
    return Level.WARNING;
  }

  @Override
  public final void check(Season season, Reporter reporter) {
    Reasoned<Double> risk = season.garden().site().frostRisk();
    Judged.by(condition, season)
        .filter(j -> j.fails(1 - risk.value()))
        .filter(this::isTold)
        .forEach(j -> found(j, risk, reporter));
  }

  private void found(Judged judged, Reasoned<Double> risk, Reporter reporter) {
    Reporter.Report report =
        reporter.report(
            judged.chance() < AS_OFTEN_AS_NOT,
            judged.planting(),
            judged.place(),
            judged.name() + ", " + judged.when() + ", " + says(judged.chance(), risk.value()));
    judged.told(report).fact(risk.reason()).help(help(judged));
    fact(judged).ifPresent(report::fact);
  }

  /** Whether no other rule says it better. */
  boolean isTold(Judged judged) {
    return true;
  }

  /**
   * What goes wrong, the sentence's end.
   *
   * @param chance that the condition is met
   */
  abstract String says(double chance, double risk);

  abstract String help(Judged judged);

  /** The crop's fact that it rests on. */
  abstract Optional<Reason> fact(Judged judged);
}
