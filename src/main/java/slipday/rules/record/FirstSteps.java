package slipday.rules.record;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Stand;
import slipday.measure.Reasoned;

/** The first sowing, coming up and planting out of each stand, by which its flowers are judged. */
final class FirstSteps {
  private static final double REFERENCE = 22;

  private final Map<Stand, Fact> sown = new HashMap<>();
  private final Map<Stand, Fact> up = new HashMap<>();
  private final Map<Stand, Fact> out = new HashMap<>();

  FirstSteps(GardenRecord record) {
    record.every(Fact.Sowed.class).forEach(s -> sown.putIfAbsent(s.stand(), s));
    record.every(Fact.Emerged.class).forEach(e -> up.putIfAbsent(e.stand(), e));
    record.every(Fact.PlantedOut.class).forEach(p -> out.putIfAbsent(p.stand(), p));
  }

  @Nullable Fact sown(Stand stand) {
    return sown.get(stand);
  }

  /** What the days to flower are counted from, or what came before it. */
  @Nullable Fact before(CropFacts.FirstFlowers usual, Stand stand) {
    Fact emerged = up.get(stand);
    Fact first = emerged == null ? sown.get(stand) : emerged;
    Fact planted = out.get(stand);
    return switch (usual.event()) {
      case "sowing" -> sown.get(stand);
      case "planting out" -> planted == null ? first : planted;
      default -> first;
    };
  }

  /** Days at the least; a heat sum at the temperature its kind's days are counted at. */
  static double fewest(CropFacts.FirstFlowers usual, Planting planting) {
    if (!usual.heat()) {
      return usual.after().low();
    }
    double base =
        usual
            .limits()
            .or(() -> planting.facts().get(CropFacts.GROWTH).map(Reasoned::value))
            .map(CropFacts.GrowthLimits::base)
            .orElse(REFERENCE - 1);
    double warmth = planting.facts().valueOr(CropFacts.REFERENCE, REFERENCE) - base;
    return usual.after().low() / Math.max(1, warmth);
  }

  static String done(Fact fact) {
    return fact instanceof Fact.Sowed
        ? "sowing"
        : fact instanceof Fact.Emerged ? "coming up" : "planting out";
  }
}
