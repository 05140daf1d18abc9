package slipday.garden.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import slipday.finding.Finding;

/** What can't all be true of one record. Each finding names both lines. */
final class Contradictions {
  /** What was done, as a message says it. */
  private static final Map<Class<? extends Fact>, String> DONE =
      Map.ofEntries(
          Map.entry(Fact.Sowed.class, "sown"),
          Map.entry(Fact.Emerged.class, "up"),
          Map.entry(Fact.PottedOn.class, "potted on"),
          Map.entry(Fact.PlantedOut.class, "planted out"),
          Map.entry(Fact.FirstFlowers.class, "in flower"),
          Map.entry(Fact.Covered.class, "covered"),
          Map.entry(Fact.Emasculated.class, "emasculated"),
          Map.entry(Fruit.class, "pollinated"),
          Map.entry(Fact.SetChecked.class, "seen to take or fail"),
          Map.entry(Fact.FruitLost.class, "lost"),
          Map.entry(Fact.Picked.class, "picked"),
          Map.entry(Fact.Measured.class, "measured"),
          Map.entry(Fact.Tasted.class, "tasted"),
          Map.entry(Fact.Saved.class, "emptied of its seed"),
          Map.entry(Fact.Stored.class, "stored"),
          Map.entry(Fact.LookedAt.class, "looked at"),
          Map.entry(Fact.Dried.class, "dried"),
          Map.entry(Fact.Counted.class, "counted"),
          Map.entry(Fact.Germinated.class, "tested"),
          Map.entry(Fact.GivenAway.class, "given away"));

  private final GardenRecord record;

  Contradictions(GardenRecord record) {
    this.record = record;
  }

  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    new Timing(record, findings).check();
    new Conflicts(record, findings).check();
    new Counts(record, findings).check();
    return findings;
  }

  static String done(Fact fact) {
    return DONE.getOrDefault(fact.getClass(), "recorded");
  }
}
