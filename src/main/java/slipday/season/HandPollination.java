package slipday.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slipday.garden.CropFacts;
import slipday.garden.Cross;
import slipday.garden.Facts;
import slipday.garden.Garden;
import slipday.garden.Planting;
import slipday.garden.Site;
import slipday.genetics.BetaBinomial;
import slipday.genetics.Odds;
import slipday.language.PlanClauses;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/** How many flowers to pollinate, on which mornings, and when to stop. */
final class HandPollination {
  private static final double LIKELY = 0.5;
  private static final double SURE = 0.95;
  private static final int MOST_FLOWERS = 9_999;
  private static final int DAYS_OF_WEEK = 7;

  /** A take of none or of all is never certain; so much of a flower stands for the doubt. */
  private static final double DOUBT = 0.05;

  private static final CropFacts.TakeRate USUAL_TAKE = new CropFacts.TakeRate(0.5, 10);

  private final Site site;
  private final RecordedTakes takes;

  HandPollination(Garden garden) {
    this.site = garden.site();
    this.takes = new RecordedTakes(garden.record());
  }

  Optional<PollinationPlan> within(PlantingSeason p) {
    return p.planting()
        .pollination()
        .map(
            wish ->
                plan(
                    p,
                    p.planting(),
                    Optional.empty(),
                    wish.value().self(),
                    wish.value().fruits(),
                    wish.value().fromPlants(),
                    wish.reason()));
  }

  Optional<PollinationPlan> of(Cross cross, PlantingSeason seedParent) {
    return cross
        .fruits()
        .map(
            fruits ->
                plan(
                    seedParent,
                    cross.pollenParent(),
                    Optional.of(cross),
                    false,
                    fruits.value(),
                    Optional.empty(),
                    fruits.reason()));
  }

  private PollinationPlan plan(
      PlantingSeason seed,
      Planting pollen,
      Optional<Cross> cross,
      boolean self,
      int wanted,
      Optional<Integer> fromPlants,
      Reason wish) {
    Facts facts = seed.planting().facts();
    boolean emasculate = cross.map(Cross::needsEmasculation).orElse(false);
    Reasoned<CropFacts.TakeRate> take =
        takes.learned(take(facts, emasculate), seed.planting().crop(), emasculate);
    double a = Math.max(DOUBT, take.value().share() * take.value().worth());
    double b = Math.max(DOUBT, (1 - take.value().share()) * take.value().worth());
    Optional<Reasoned<Integer>> standing = takes.standing(seed.planting());
    int plants = standing.map(Reasoned::value).orElse(1);
    Reasoned<Integer> set = takes.set(seed.planting(), pollen, cross.isPresent(), self);
    int left = Math.max(0, wanted - set.value());
    Optional<LocalDate> from = usual(seed, Event.FIRST_FRUITING);
    Optional<LocalDate> until = usual(seed, Event.LAST_SET);
    int days = days(from, until);
    int mornings =
        (int)
            Math.floor(
                days
                    * (double) site.morningsAWeek().map(Reasoned::value).orElse(DAYS_OF_WEEK)
                    / DAYS_OF_WEEK);
    Reasoned<Range> perWeek =
        facts
            .get(CropFacts.FLOWERS_A_WEEK)
            .orElseGet(
                () ->
                    new Reasoned<>(
                        Range.of(2),
                        Reason.byDefault(
                            "Two fruiting flowers a plant a week, where the crop says nothing.")));
    int hands = site.hands().value().people() * site.hands().value().flowersEach();
    int opening = (int) Math.round(plants * perWeek.value().middle() * mornings / DAYS_OF_WEEK);
    int there = Math.min(opening, hands * mornings);
    int likely = Odds.trialsNeeded(a, b, left, LIKELY, MOST_FLOWERS).orElse(MOST_FLOWERS);
    OptionalInt sure = Odds.trialsNeeded(a, b, left, SURE, MOST_FLOWERS);
    int goal = Math.min(sure.orElse(MOST_FLOWERS), Math.max(left == 0 ? 0 : 1, there));
    int aMorning = mornings == 0 ? 0 : (int) Math.ceil(goal / (double) mornings);
    Range carry = facts.valueOr(CropFacts.FRUITS_PER_PLANT, new Range(1, 1));
    List<Reason> reasons =
        new ArrayList<>(List.of(wish, take.reason(), perWeek.reason(), site.hands().reason()));
    standing.ifPresent(p -> reasons.add(p.reason()));
    if (set.value() > 0) {
      reasons.add(set.reason());
    }
    site.morningsAWeek().ifPresent(m -> reasons.add(m.reason()));
    seed.date(Event.FIRST_FRUITING).ifPresent(d -> reasons.add(d.reason()));
    reasons.add(
        Reason.method(
            "Takes on one vine are not independent and the rate itself is uncertain: beta-binomial with Beta("
                + Quantity.plain(a)
                + ", "
                + Quantity.plain(b)
                + ")"));
    return new PollinationPlan(
        cross.map(Cross::name).orElse(seed.name()),
        seed.planting(),
        pollen,
        cross,
        self,
        emasculate,
        wanted,
        set.value(),
        fromPlants,
        take.map(CropFacts.TakeRate::share),
        likely,
        sure.isPresent() ? Optional.of(sure.getAsInt()) : Optional.empty(),
        there,
        (int) Math.round(plants * carry.high()),
        new BetaBinomial(there, a, b).atLeast(left),
        from,
        until,
        mornings,
        aMorning,
        stop(wanted, fromPlants),
        Reason.derived(
            wanted
                + " fruits wanted"
                + (set.value() > 0 ? ", " + set.value() + " of them set" : "")
                + ": "
                + likely
                + " flowers as likely as not"
                + (sure.isPresent() ? ", " + sure.getAsInt() + " to be sure in 19 of 20" : ""),
            reasons));
  }

  private static Reasoned<CropFacts.TakeRate> take(Facts facts, boolean emasculated) {
    Optional<Reasoned<CropFacts.TakeRate>> own =
        emasculated ? facts.get(CropFacts.TAKE_EMASCULATED) : Optional.empty();
    return own.or(() -> facts.get(CropFacts.TAKE))
        .orElseGet(
            () ->
                new Reasoned<>(
                    USUAL_TAKE,
                    Reason.byDefault(
                        "A take of half, worth 10 flowers, where the crop says nothing.")));
  }

  private static Optional<LocalDate> usual(PlantingSeason p, Event event) {
    return p.date(event).flatMap(d -> d.value().usual());
  }

  private static int days(Optional<LocalDate> from, Optional<LocalDate> until) {
    return from.isEmpty() || until.isEmpty()
        ? 0
        : (int) Math.max(0, ChronoUnit.DAYS.between(from.get(), until.get()) + 1);
  }

  private static String stop(int wanted, Optional<Integer> fromPlants) {
    return "Stop when "
        + wanted
        + " marked fruits have set"
        + fromPlants.map(n -> " on at least " + n + " plants").orElse("")
        + " and swell for a week.";
  }

  /** The clause that asks for it, for whoever points at it. */
  static slipday.source.Span place(PollinationPlan plan) {
    return plan.cross()
        .map(c -> c.places().of(PlanClauses.FRUITS))
        .orElseGet(() -> plan.seedParent().places().of(PlanClauses.POLLINATE));
  }
}
