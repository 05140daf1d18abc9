package slipday.rules.record;

import slipday.caution.Caution;
import slipday.finding.Level;
import slipday.garden.record.Bitterness;
import slipday.garden.record.Fact;
import slipday.garden.record.Plants;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Seed was kept of a plant whose fruit tasted bitter. */
public final class BitterSeedKept implements Rule {
  @Override
  public String id() {
    return "bitter-seed-kept";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Bitterness bitterness = Bitterness.of(season.garden().record());
    Taking.of(season)
        .filter(t -> !t.stand().lot().line().crop().isBitter())
        .forEach(
            t ->
                bitterness
                    .of(t.saved().from())
                    .ifPresent(told -> found(t, culprit(t, told), told.tasted(), reporter)));
  }

  private static String culprit(Taking taking, Bitterness.Told told) {
    return told.culprit() instanceof Plants plant ? Words.tick(plant.toString()) : taking.name();
  }

  private static void found(Taking taking, String what, Fact.Tasted tasted, Reporter reporter) {
    taking
        .report(
            reporter,
            true,
            "The seed of " + taking.name() + " is kept, and " + what + " tasted bitter.")
        .also(tasted.span(), "tasted bitter")
        .note(
            "Bitterness goes on in the seed and the pollen of the plant. " + Caution.POISON.words())
        .help(
            "Destroy this seed and the plant: give none of it away, eat none of its fruit, feed it"
                + " to no animal, and do not compost fruit with seed in it.");
  }
}
