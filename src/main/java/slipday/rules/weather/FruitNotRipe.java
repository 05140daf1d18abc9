package slipday.rules.weather;

import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.rules.Words;
import slipday.season.Condition;

/** Frost takes the plants before a fruit is ripe, more often than the gardener accepts. */
public final class FruitNotRipe extends FrostRule {
  public FruitNotRipe() {
    super(Condition.RIPENING);
  }

  @Override
  public String id() {
    return "fruit-not-ripe-before-frost";
  }

  /** Where seed is kept and ripens no sooner, the finding about the seed says it all. */
  @Override
  boolean isTold(Judged judged) {
    Double seed = judged.choice().chances().get(Condition.SEED_RIPENING);
    return seed == null || seed > judged.chance() + 1e-9;
  }

  @Override
  String says(double chance, double risk) {
    return "ripens a fruit before frost in "
        + Words.percent(chance)
        + " of years; "
        + Words.percent(1 - risk)
        + " is wanted.";
  }

  @Override
  String help(Judged judged) {
    return judged.sooner();
  }

  @Override
  Optional<Reason> fact(Judged judged) {
    return judged.planting().facts().get(CropFacts.RIPE).map(Reasoned::reason);
  }
}
