package slipday.season.chore;

import java.util.ArrayList;
import java.util.List;
import slipday.garden.CropFacts;
import slipday.garden.Planting;

/**
 * What can hurt someone. Poisonous bitterness (cucurbitacins) outlasts cooking and goes with the
 * seed (Pacific Northwest Pest Management Handbooks, from memory of the title). What is usual with
 * cut fruit stands with the crops.
 */
final class Cautions {
  private Cautions() {}

  /** For whoever is about to eat or judge the fruit. */
  static List<String> ofFruit(SeasonIndex season, Planting planting) {
    List<String> cautions = new ArrayList<>();
    if (planting.lot().bitterRisk(season.garden())) {
      cautions.add(
          "This seed may carry the bitterness of a wild or ornamental kind, which is poisonous and"
              + " which no cooking mends. Before anything else taste a fruit of each plant raw: touch"
              + " a small piece to the tongue and spit it out. Pull up a bitter plant; nothing of it"
              + " is eaten, cooked, fed to animals or kept for seed. A plant that tastes clean clears"
              + " only itself. Whoever feels ill after eating should call a doctor or a poison"
              + " centre.");
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
              + " poison. Write so on the packet, and taste each plant of it raw, spitting out,"
              + " before anything of it is eaten.");
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
