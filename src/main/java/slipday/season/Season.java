package slipday.season;

import java.util.List;
import java.util.Optional;
import slipday.climate.Climate;
import slipday.garden.Garden;

/** The one season object: what every rule judges and every output shows. */
public record Season(
    Garden garden,
    Climate climate,
    List<PlantingSeason> plantings,
    List<Exposure> exposures,
    List<Nicking> nickings,
    List<Apart> apart,
    List<PollinationPlan> pollinations,
    List<MarkedFruit> fruits) {

  public Optional<PlantingSeason> planting(String name) {
    return plantings.stream().filter(p -> p.name().equals(name)).findFirst();
  }
}
