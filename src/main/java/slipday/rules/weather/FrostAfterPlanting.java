package slipday.rules.weather;

import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.rules.Words;
import slipday.season.Condition;

/** A planting goes out, or comes up, into frost more often than the gardener accepts. */
public final class FrostAfterPlanting extends FrostRule {
  public FrostAfterPlanting() {
    super(Condition.FROST);
  }

  @Override
  public String id() {
    return "frost-after-planting";
  }

  @Override
  String says(double chance, double risk) {
    return "meets a killing frost in "
        + Words.percent(1 - chance)
        + " of years; "
        + Words.percent(risk)
        + " is accepted.";
  }

  @Override
  String help(Judged judged) {
    return judged.later() + " A cover that guards against frost counts too.";
  }

  @Override
  Optional<Reason> fact(Judged judged) {
    return judged.planting().facts().get(CropFacts.KILLED_AT).map(Reasoned::reason);
  }
}
