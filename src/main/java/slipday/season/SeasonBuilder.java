package slipday.season;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipday.climate.Climate;
import slipday.garden.Garden;
import slipday.garden.Planting;
import slipday.garden.record.FruitStory;

/** Makes the one season object out of a garden and its climate. */
public final class SeasonBuilder {
  private SeasonBuilder() {}

  public static Season build(Garden garden, Climate climate) {
    SeasonWeather weather = SeasonWeather.of(climate);
    List<FruitStory> stories = FruitStory.all(garden.record());
    Forecaster forecaster = new Forecaster(garden, weather, new Learned(garden, stories));
    Map<String, Forecaster.Draft> drafts = new LinkedHashMap<>();
    for (Planting planting : garden.plantings()) {
      drafts.put(planting.name(), forecaster.draft(planting));
    }
    Partners partners = new Partners(garden, forecaster, drafts);
    List<Apart> apart = partners.apart();
    List<Nicking> nickings = partners.nickings();
    Map<String, PlantingSeason> plantings = new LinkedHashMap<>();
    drafts.forEach(
        (name, draft) ->
            plantings.put(
                name, forecaster.finish(draft, partners.start(name), partners.moved(name))));
    List<PlantingSeason> all = List.copyOf(plantings.values());
    return new Season(
        garden,
        climate,
        all,
        List.copyOf(new Crossing(garden, all).exposures()),
        nickings,
        apart,
        new HandPollination(garden, stories).plans(garden.crosses(), plantings),
        new MarkedFruits(weather, drafts, plantings).of(thisSeason(garden, stories)));
  }

  private static List<FruitStory> thisSeason(Garden garden, List<FruitStory> stories) {
    int season = garden.season().year();
    return stories.stream().filter(s -> s.fruit().year() == season).toList();
  }
}
