package slipday.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slipday.garden.CropFacts;
import slipday.garden.Cross;
import slipday.garden.Facts;
import slipday.garden.Garden;
import slipday.garden.Planting;
import slipday.garden.Site;
import slipday.garden.record.FruitStory;
import slipday.genetics.ClusteredRate;
import slipday.measure.Counted;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/** How many flowers to pollinate, on which mornings, and when to stop. */
final class HandPollination {
  private static final CropFacts.TakeRate USUAL_TAKE = new CropFacts.TakeRate(0.5, 10);

  private final Site site;
  private final RecordedTakes takes;

  /**
   * @param stories of all tagged fruits of the record
   */
  HandPollination(Garden garden, List<FruitStory> stories) {
    this.site = garden.site();
    this.takes = new RecordedTakes(garden.record(), stories);
  }

  /** The plans of all that is to be pollinated by hand on plants that stand. */
  List<PollinationPlan> plans(List<Cross> crosses, Map<String, PlantingSeason> plantings) {
    List<Wish> wishes = new ArrayList<>();
    plantings.values().stream()
        .filter(p -> p.flowers() && p.gone().isEmpty())
        .forEach(p -> within(p).ifPresent(wishes::add));
    for (Cross cross : crosses) {
      PlantingSeason seed = plantings.get(cross.seedParent().name());
      if (seed != null && seed.flowers() && seed.gone().isEmpty()) {
        of(cross, seed).ifPresent(wishes::add);
      }
    }
    Map<String, List<Wish>> byMother =
        wishes.stream().collect(Collectors.groupingBy(w -> w.mother().name()));
    double busiest = 0;
    for (Wish wish : wishes) {
      busiest += wish.perMorning(share(wish, sharers(wish, byMother)));
    }
    List<PollinationPlan> plans = new ArrayList<>();
    for (Wish wish : wishes) {
      plans.add(plan(wish, busiest, sharers(wish, byMother)));
    }
    return List.copyOf(plans);
  }

  /** All that is wished of one mother, this among it. */
  private static List<Wish> sharers(Wish wish, Map<String, List<Wish>> byMother) {
    return byMother.getOrDefault(wish.mother().name(), List.of(wish));
  }

  /**
   * The share of a plant's flowers a wish may have: a self and a cross on one mother divide them as
   * the flowers each needs.
   */
  private static double share(Wish wish, List<Wish> sharers) {
    double all = 0;
    for (Wish sharer : sharers) {
      all += sharer.goal();
    }
    return all == 0 ? 1 : wish.goal() / all;
  }

  private Optional<Wish> within(PlantingSeason p) {
    return p.planting()
        .pollination()
        .map(
            wish ->
                wish(
                    new Wish.Asked(
                        p,
                        p.planting(),
                        Optional.empty(),
                        wish.value().self(),
                        wish.value().fruits(),
                        wish.value().fromPlants(),
                        wish.reason())));
  }

  private Optional<Wish> of(Cross cross, PlantingSeason seedParent) {
    return cross
        .fruits()
        .map(
            fruits ->
                wish(
                    new Wish.Asked(
                        seedParent,
                        cross.pollenParent(),
                        Optional.of(cross),
                        false,
                        fruits.value(),
                        Optional.empty(),
                        fruits.reason())));
  }

  private Wish wish(Wish.Asked asked) {
    Planting mother = asked.seed().planting();
    boolean emasculate = asked.cross().map(Cross::needsEmasculation).orElse(false);
    return new Wish(
        asked,
        emasculate,
        takes.learned(
            take(mother.facts(), emasculate), emasculate, line -> figure(line.facts(), emasculate)),
        takes.standing(mother),
        takes.pollinated(mother, asked.pollen(), asked.cross().isPresent(), asked.self()),
        perWeek(mother.facts()),
        morningsAWeek());
  }

  private int morningsAWeek() {
    return site.morningsAWeek().map(Reasoned::value).orElse(Wish.DAYS_OF_WEEK);
  }

  private static Reasoned<Range> perWeek(Facts facts) {
    return facts
        .get(CropFacts.FLOWERS_A_WEEK)
        .orElseGet(
            () ->
                new Reasoned<>(
                    Range.of(2),
                    Reason.byDefault(
                        "Two fruiting flowers a plant a week, where the crop says nothing.")));
  }

  /**
   * @param busiest flowers that all the wishes of the garden ask of one morning
   * @param sharers what is wished of its mother
   */
  private PollinationPlan plan(Wish w, double busiest, List<Wish> sharers) {
    double share = share(w, sharers);
    int hands = site.hands().value().people() * site.hands().value().flowersEach();
    double spared = Math.min(1, hands / Math.max(1, busiest));
    int opening = w.opening(share);
    double mine = busiest == 0 ? hands : hands * w.perMorning(share) / busiest;
    int there = (int) Math.min(opening, Math.round(mine * w.mornings));
    int goal = Math.min(w.goal(), Math.max(w.left == 0 ? 0 : 1, there));
    int aMorning = w.mornings == 0 ? 0 : (int) Math.ceil(goal / (double) w.mornings);
    Range carry = w.mother().facts().valueOr(CropFacts.FRUITS_PER_PLANT, new Range(1, 1));
    return new PollinationPlan(
        w.name(),
        w.mother(),
        w.asked.pollen(),
        w.asked.cross(),
        w.asked.self(),
        w.emasculate,
        w.asked.fruits(),
        w.pollinated,
        w.asked.fromPlants(),
        w.take.map(ClusteredRate::mean),
        w.likely,
        w.sure.isPresent() ? Optional.of(w.sure.getAsInt()) : Optional.empty(),
        opening,
        there,
        (int) Math.round(w.plants() * carry.high()),
        w.chance(there),
        w.from,
        w.until,
        w.mornings,
        aMorning,
        stop(w.asked.fruits(), w.asked.fromPlants()),
        Reason.derived(w.sentence(), reasons(w, spared, sharers)));
  }

  private List<Reason> reasons(Wish w, double spared, List<Wish> sharers) {
    List<Reason> reasons =
        new ArrayList<>(
            List.of(w.asked.reason(), w.take.reason(), w.perWeek.reason(), site.hands().reason()));
    w.standing.ifPresent(p -> reasons.add(p.reason()));
    w.progress().ifPresent(reasons::add);
    site.morningsAWeek().ifPresent(m -> reasons.add(m.reason()));
    w.asked.seed().date(Event.FIRST_FRUITING).ifPresent(d -> reasons.add(d.reason()));
    List<Reason> others = sharers.stream().filter(o -> o != w).map(o -> o.asked.reason()).toList();
    if (!others.isEmpty()) {
      reasons.add(
          Reason.derived("The flowers of `" + w.mother().name() + "` are shared with", others));
    }
    if (spared < 1) {
      reasons.add(
          Reason.derived(
              "All that is to be pollinated asks more of a morning than the hands there are: each"
                  + " has "
                  + Math.round(spared * 100)
                  + " % of it",
              site.hands().reason()));
    }
    reasons.add(
        Reason.method(
            "Takes on one vine are not independent and the rate itself is uncertain: beta-binomial"
                + " with Beta("
                + Quantity.plain(w.take.value().a())
                + ", "
                + Quantity.plain(w.take.value().b())
                + ")"));
    return reasons;
  }

  private static Optional<Reasoned<CropFacts.TakeRate>> figure(Facts facts, boolean emasculated) {
    Optional<Reasoned<CropFacts.TakeRate>> own =
        emasculated ? facts.get(CropFacts.TAKE_EMASCULATED) : Optional.empty();
    return own.or(() -> facts.get(CropFacts.TAKE));
  }

  private static Reasoned<CropFacts.TakeRate> take(Facts facts, boolean emasculated) {
    return figure(facts, emasculated)
        .orElseGet(
            () ->
                new Reasoned<>(
                    USUAL_TAKE,
                    Reason.byDefault(
                        "A take of half, worth 10 flowers, where the crop says nothing.")));
  }

  private static String stop(int wanted, Optional<Integer> fromPlants) {
    return "Stop when "
        + Counted.of(wanted, "marked fruit")
        + (wanted == 1 ? " has set" : " have set")
        + fromPlants.filter(n -> n > 1).map(n -> " on at least " + n + " plants").orElse("")
        + (wanted == 1 ? " and swells for a week." : " and swell for a week.");
  }
}
