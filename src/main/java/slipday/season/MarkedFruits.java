package slipday.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.climate.SeasonAxis;
import slipday.garden.CropFacts;
import slipday.garden.Facts;
import slipday.garden.Planting;
import slipday.garden.record.FruitStory;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/** What is to be expected of each fruit that is marked this season. */
final class MarkedFruits {
  private final SeasonWeather climate;
  private final Map<String, Forecaster.Draft> drafts;
  private final Map<String, PlantingSeason> plantings;
  private final Map<At, Traces> walked = new HashMap<>();

  private record At(String planting, int slot) {}

  MarkedFruits(
      SeasonWeather climate,
      Map<String, Forecaster.Draft> drafts,
      Map<String, PlantingSeason> plantings) {
    this.climate = climate;
    this.drafts = drafts;
    this.plantings = plantings;
  }

  List<MarkedFruit> of(List<FruitStory> stories) {
    return stories.stream().flatMap(s -> of(s).stream()).toList();
  }

  private Optional<MarkedFruit> of(FruitStory story) {
    Optional<Planting> planting = story.fruit().seedParent().stand().planting();
    Forecaster.Draft draft = planting.map(Planting::name).map(drafts::get).orElse(null);
    if (planting.isEmpty() || draft == null) {
      return Optional.empty();
    }
    Event ripens = ripens(planting.get().facts());
    Optional<Reasoned<DateSpread>> forecast =
        Optional.ofNullable(plantings.get(draft.planting().name())).flatMap(p -> p.date(ripens));
    return forecast.map(
        f -> new MarkedFruit(story, planting.get(), ripens, expected(story, draft, ripens)));
  }

  /** What a marked fruit is waited for. */
  static Event ripens(Facts facts) {
    double ripe = facts.get(CropFacts.RIPE).map(r -> r.value().after().high()).orElse(0.0);
    double seed = facts.get(CropFacts.SEED_RIPE).map(Reasoned::value).map(Range::high).orElse(0.0);
    boolean inHeat = facts.get(CropFacts.RIPE).map(r -> r.value().heat()).orElse(false);
    return seed > 0 && (inHeat || seed > ripe) ? Event.SEED_RIPE : Event.RIPE;
  }

  private Reasoned<DateSpread> expected(FruitStory story, Forecaster.Draft draft, Event ripens) {
    LocalDate pollinated = story.fruit().date();
    DateSpread spread = traces(draft, pollinated).spread(ripens, climate.axis());
    List<Reason> from = new ArrayList<>(List.of(story.fruit().at().reason()));
    from.addAll(draft.needs().reasons().getOrDefault(ripens, List.of()));
    from.add(climate.reason());
    String usual =
        spread
            .usual()
            .map(d -> climate.axis().dayText(climate.axis().slotOf(d)))
            .orElse("not in the usual year");
    String says = story.fruit().tag() + " " + ripens.words() + ": " + usual;
    return new Reasoned<>(spread, Reason.derived(says + " in the middle of the years", from));
  }

  /** Its planting walked as if this were its first flower. */
  private Traces traces(Forecaster.Draft draft, LocalDate pollinated) {
    SeasonAxis axis = climate.axis();
    int slot = axis.slotOf(pollinated);
    Seen seen = Seen.of(draft.observed(), axis);
    return walked.computeIfAbsent(
        new At(draft.planting().name(), slot),
        at -> climate.walk().walk(draft.needs(), draft.start(), seen.pollinated(slot)));
  }
}
