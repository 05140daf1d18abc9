package slipday.rules.weather;

import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.Facts;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.rules.Words;
import slipday.season.Condition;

/** Frost takes the plants before a fruit holds full seed, more often than the gardener accepts. */
public final class SeedNotRipe extends FrostRule {
  public SeedNotRipe() {
    super(Condition.SEED_RIPENING);
  }

  @Override
  public String id() {
    return "seed-not-ripe-before-frost";
  }

  @Override
  String says(double chance, double risk) {
    return "holds full seed before frost in "
        + Words.percent(chance)
        + " of years; "
        + Words.percent(1 - risk)
        + " is wanted.";
  }

  @Override
  String help(Judged judged) {
    return judged.sooner();
  }

  /** What its ripening is reckoned with: the seed's own days, or the fruit's. */
  @Override
  Optional<Reason> fact(Judged judged) {
    Facts facts = judged.planting().facts();
    return facts
        .get(CropFacts.SEED_RIPE)
        .map(Reasoned::reason)
        .or(() -> facts.get(CropFacts.RIPE).map(Reasoned::reason));
  }
}
