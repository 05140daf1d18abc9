package slipday.rules.record;

import java.util.LinkedHashMap;
import java.util.Map;
import slipday.caution.Caution;
import slipday.finding.Level;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.garden.record.Subject;
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
    Map<Subject, Fact.Tasted> bitter = new LinkedHashMap<>();
    for (Fact.Tasted fact : season.garden().record().every(Fact.Tasted.class).toList()) {
      if (fact.bitter()) {
        bitter.putIfAbsent(fact.subject(), fact);
        if (fact.subject() instanceof Fruit fruit && fruit.seedParent().plant().isPresent()) {
          bitter.putIfAbsent(fruit.seedParent(), fact);
        }
      }
    }
    Taking.of(season)
        .filter(t -> !t.stand().lot().line().crop().isBitter())
        .forEach(t -> judge(t, bitter, reporter));
  }

  private static void judge(Taking taking, Map<Subject, Fact.Tasted> bitter, Reporter reporter) {
    Fact.Tasted own = bitter.get(taking.saved().from());
    if (own != null) {
      found(taking, taking.name(), own, reporter);
      return;
    }
    taking
        .parents()
        .filter(bitter::containsKey)
        .findFirst()
        .ifPresent(p -> found(taking, p, bitter, reporter));
  }

  private static void found(
      Taking taking, Plants plant, Map<Subject, Fact.Tasted> bitter, Reporter reporter) {
    Fact.Tasted fact = bitter.get(plant);
    if (fact != null) {
      found(taking, Words.tick(plant.toString()), fact, reporter);
    }
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
