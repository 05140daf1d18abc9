package slipday.season.chore;

import java.util.ArrayList;
import java.util.List;
import slipday.caution.Caution;
import slipday.garden.CropFacts;
import slipday.garden.Planting;

/** Which cautions a chore bears. */
final class Cautions {
  private Cautions() {}

  /** For whoever is about to eat or judge the fruit. */
  static List<String> ofFruit(SeasonIndex season, Planting planting) {
    List<String> cautions = new ArrayList<>();
    if (planting.lot().bitterRisk(season.garden())) {
      cautions.add(
          "This seed may carry the bitterness of a wild or ornamental kind. "
              + Caution.TASTE_FIRST.words()
              + " "
              + Caution.POISON.words());
    }
    cautions.addAll(ofCutFruit(planting));
    return cautions;
  }

  static List<String> ofSeed(SeasonIndex season, Planting planting) {
    List<String> cautions = new ArrayList<>();
    if (planting.lot().bitterRisk(season.garden())) {
      cautions.add(
          "No seed from a plant that was not tasted, raw and spat out, or that was bitter.");
    }
    String bitterSources = String.join(", ", season.bitterSources(planting));
    if (!bitterSources.isEmpty()) {
      cautions.add(
          "Seed from its open flowers may have the pollen of "
              + bitterSources
              + ", whose fruit is bitter and poisonous. This year's fruit is sound; next year's may"
              + " poison. Write so on the packet. "
              + Caution.TASTE_FIRST.words());
    }
    cautions.addAll(ofCutFruit(planting));
    return cautions;
  }

  private static List<String> ofCutFruit(Planting planting) {
    return planting
        .facts()
        .get(CropFacts.ONCE_CUT)
        .map(how -> List.of("Once cut, the fruit is " + how.value() + "."))
        .orElse(List.of());
  }
}
