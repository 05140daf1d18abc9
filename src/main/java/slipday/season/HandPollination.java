package slipday.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

  /** The plans of all that is to be pollinated by hand. */
  List<PollinationPlan> plans(List<Cross> crosses, Map<String, PlantingSeason> plantings) {
    List<Wish> wishes = new ArrayList<>();
    plantings.values().stream()
        .filter(PlantingSeason::flowers)
        .forEach(p -> within(p).ifPresent(wishes::add));
    for (Cross cross : crosses) {
      PlantingSeason seed = plantings.get(cross.seedParent().name());
      if (seed != null && seed.flowers()) {
        of(cross, seed).ifPresent(wishes::add);
      }
    }
    double busiest = wishes.stream().mapToDouble(w -> w.perMorning(share(w, wishes))).sum();
    return wishes.stream().map(w -> plan(w, share(w, wishes), busiest, wishes)).toList();
  }

  /**
   * The share of a plant's flowers a wish may have: a self and a cross on one mother divide them as
   * the flowers each needs.
   */
  private static double share(Wish wish, List<Wish> wishes) {
    double all = wishes.stream().filter(wish::onOneMother).mapToDouble(Wish::goal).sum();
    return all == 0 ? 1 : wish.goal() / all;
  }

  private Optional<Wish> within(PlantingSeason p) {
    return p.planting()
        .pollination()
        .map(
            wish ->
                new Wish(
                    p,
                    p.planting(),
                    Optional.empty(),
                    wish.value().self(),
                    wish.value().fruits(),
                    wish.value().fromPlants(),
                    wish.reason()));
  }

  private Optional<Wish> of(Cross cross, PlantingSeason seedParent) {
    return cross
        .fruits()
        .map(
            fruits ->
                new Wish(
                    seedParent,
                    cross.pollenParent(),
                    Optional.of(cross),
                    false,
                    fruits.value(),
                    Optional.empty(),
                    fruits.reason()));
  }

  /** What is wanted of one mother, and what that takes. */
  private final class Wish {
    final PlantingSeason seed;
    final Planting pollen;
    final Optional<Cross> cross;
    final boolean self;
    final int wanted;
    final Optional<Integer> fromPlants;
    final Reason asked;
    final boolean emasculate;
    final Reasoned<CropFacts.TakeRate> take;
    final double a;
    final double b;
    final Optional<Reasoned<Integer>> standing;
    final Reasoned<Integer> set;
    final int left;
    final Optional<LocalDate> from;
    final Optional<LocalDate> until;
    final int mornings;
    final Reasoned<Range> perWeek;
    final int likely;
    final OptionalInt sure;

    Wish(
        PlantingSeason seed,
        Planting pollen,
        Optional<Cross> cross,
        boolean self,
        int wanted,
        Optional<Integer> fromPlants,
        Reason asked) {
      this.seed = seed;
      this.pollen = pollen;
      this.cross = cross;
      this.self = self;
      this.wanted = wanted;
      this.fromPlants = fromPlants;
      this.asked = asked;
      Facts facts = seed.planting().facts();
      this.emasculate = cross.map(Cross::needsEmasculation).orElse(false);
      this.take = takes.learned(take(facts, emasculate), seed.planting().crop(), emasculate);
      this.a = Math.max(DOUBT, take.value().share() * take.value().worth());
      this.b = Math.max(DOUBT, (1 - take.value().share()) * take.value().worth());
      this.standing = takes.standing(seed.planting());
      this.set = takes.set(seed.planting(), pollen, cross.isPresent(), self);
      this.left = Math.max(0, wanted - set.value());
      this.from = usual(seed, Event.FIRST_FRUITING);
      this.until = usual(seed, Event.LAST_SET);
      this.mornings = days(from, until) * morningsAWeek() / DAYS_OF_WEEK;
      this.perWeek = perWeek(facts);
      this.likely = Odds.trialsNeeded(a, b, left, LIKELY, MOST_FLOWERS).orElse(MOST_FLOWERS);
      this.sure = Odds.trialsNeeded(a, b, left, SURE, MOST_FLOWERS);
    }

    boolean onOneMother(Wish other) {
      return seed.name().equals(other.seed.name());
    }

    int goal() {
      return sure.orElse(MOST_FLOWERS);
    }

    int plants() {
      return standing.map(Reasoned::value).orElse(1);
    }

    /** Flowers that open on the mornings there are, of those this wish may have. */
    int opening(double share) {
      double all = plants() * perWeek.value().middle() * mornings / DAYS_OF_WEEK;
      return (int) Math.round(all * share);
    }

    double perMorning(double share) {
      return mornings == 0 ? 0 : Math.min(goal(), opening(share)) / (double) mornings;
    }
  }

  private int morningsAWeek() {
    return site.morningsAWeek().map(Reasoned::value).orElse(DAYS_OF_WEEK);
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
   * @param share of the mother's flowers
   * @param busiest flowers that all the wishes of the garden ask of one morning
   */
  private PollinationPlan plan(Wish w, double share, double busiest, List<Wish> wishes) {
    int hands = site.hands().value().people() * site.hands().value().flowersEach();
    double spared = Math.min(1, hands / Math.max(1, busiest));
    int opening = w.opening(share);
    double mine = busiest == 0 ? hands : hands * w.perMorning(share) / busiest;
    int there = (int) Math.min(opening, Math.round(mine * w.mornings));
    int goal = Math.min(w.goal(), Math.max(w.left == 0 ? 0 : 1, there));
    int aMorning = w.mornings == 0 ? 0 : (int) Math.ceil(goal / (double) w.mornings);
    Range carry = w.seed.planting().facts().valueOr(CropFacts.FRUITS_PER_PLANT, new Range(1, 1));
    return new PollinationPlan(
        w.cross.map(Cross::name).orElse(w.seed.name()),
        w.seed.planting(),
        w.pollen,
        w.cross,
        w.self,
        w.emasculate,
        w.wanted,
        w.set.value(),
        w.fromPlants,
        w.take.map(CropFacts.TakeRate::share),
        w.likely,
        w.sure.isPresent() ? Optional.of(w.sure.getAsInt()) : Optional.empty(),
        there,
        (int) Math.round(w.plants() * carry.high()),
        new BetaBinomial(there, w.a, w.b).atLeast(w.left),
        w.from,
        w.until,
        w.mornings,
        aMorning,
        stop(w.wanted, w.fromPlants),
        Reason.derived(sentence(w), reasons(w, spared, wishes)));
  }

  private static String sentence(Wish w) {
    return w.wanted
        + " fruits wanted"
        + (w.set.value() > 0 ? ", " + w.set.value() + " of them set" : "")
        + ": "
        + w.likely
        + " flowers as likely as not"
        + (w.sure.isPresent() ? ", " + w.sure.getAsInt() + " to be sure in 19 of 20" : "");
  }

  private List<Reason> reasons(Wish w, double spared, List<Wish> wishes) {
    List<Reason> reasons =
        new ArrayList<>(
            List.of(w.asked, w.take.reason(), w.perWeek.reason(), site.hands().reason()));
    w.standing.ifPresent(p -> reasons.add(p.reason()));
    if (w.set.value() > 0) {
      reasons.add(w.set.reason());
    }
    site.morningsAWeek().ifPresent(m -> reasons.add(m.reason()));
    w.seed.date(Event.FIRST_FRUITING).ifPresent(d -> reasons.add(d.reason()));
    List<Reason> sharers =
        wishes.stream().filter(o -> o != w && w.onOneMother(o)).map(o -> o.asked).toList();
    if (!sharers.isEmpty()) {
      reasons.add(
          Reason.derived("The flowers of `" + w.seed.name() + "` are shared with", sharers));
    }
    if (spared < 1) {
      reasons.add(
          Reason.derived(
              "All that is to be pollinated asks more of a morning than the hands there are: each has "
                  + Math.round(spared * 100)
                  + " % of it",
              site.hands().reason()));
    }
    reasons.add(
        Reason.method(
            "Takes on one vine are not independent and the rate itself is uncertain: beta-binomial with Beta("
                + Quantity.plain(w.a)
                + ", "
                + Quantity.plain(w.b)
                + ")"));
    return reasons;
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
}
