package slipday.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slipday.garden.Cross;
import slipday.garden.Planting;
import slipday.garden.record.Fruit;
import slipday.garden.record.FruitStory;
import slipday.genetics.BetaBinomial;
import slipday.genetics.ClusteredRate;
import slipday.genetics.Odds;
import slipday.measure.Counted;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/** What is wanted of one mother, what is done of it by the record, and what the rest takes. */
final class Wish {
  static final int DAYS_OF_WEEK = 7;
  private static final double LIKELY = 0.5;
  private static final double SURE = 0.95;
  private static final int MOST_FLOWERS = PollinationPlan.MOST_FLOWERS;

  final Asked asked;
  final boolean emasculate;
  final Reasoned<ClusteredRate> take;
  final Optional<Reasoned<Integer>> standing;
  final List<FruitStory> pollinated;
  final int left;
  final Optional<LocalDate> from;
  final Optional<LocalDate> until;
  final int mornings;
  final Reasoned<Range> perWeek;
  final int likely;
  final OptionalInt sure;
  private final int waiting;

  /** What the plan asks for. */
  record Asked(
      PlantingSeason seed,
      Planting pollen,
      Optional<Cross> cross,
      boolean self,
      int fruits,
      Optional<Integer> fromPlants,
      Reason reason) {}

  Wish(
      Asked asked,
      boolean emasculate,
      Reasoned<ClusteredRate> take,
      Optional<Reasoned<Integer>> standing,
      List<FruitStory> pollinated,
      Reasoned<Range> perWeek,
      int morningsAWeek) {
    this.asked = asked;
    this.emasculate = emasculate;
    this.take = take;
    this.standing = standing;
    this.pollinated = pollinated;
    this.perWeek = perWeek;
    this.left = PollinationPlan.left(asked.fruits(), asked.fromPlants(), pollinated);
    this.waiting = PollinationPlan.waiting(pollinated);
    this.from = from();
    this.until = usual(Event.LAST_SET);
    this.mornings = days(from, until) * morningsAWeek / DAYS_OF_WEEK;
    OptionalInt half = needed(LIKELY);
    this.likely = half.orElse(MOST_FLOWERS);
    this.sure = needed(SURE);
  }

  /** Flowers yet to pollinate: those that wait for their take are so many less to do. */
  private OptionalInt needed(double probability) {
    ClusteredRate rate = take.value();
    OptionalInt all = Odds.trialsNeeded(rate.a(), rate.b(), left, probability, MOST_FLOWERS);
    return all.isEmpty() ? all : OptionalInt.of(Math.max(0, all.getAsInt() - waiting));
  }

  /** With the first flowers, or on from the last that were pollinated. */
  private Optional<LocalDate> from() {
    Optional<LocalDate> next =
        pollinated.stream().map(s -> s.fruit().date().plusDays(1)).max(Comparator.naturalOrder());
    return usual(Event.FIRST_FRUITING).map(f -> next.filter(n -> n.isAfter(f)).orElse(f));
  }

  private Optional<LocalDate> usual(Event event) {
    return asked.seed().date(event).flatMap(d -> d.value().usual());
  }

  private static int days(Optional<LocalDate> from, Optional<LocalDate> until) {
    return from.isEmpty() || until.isEmpty()
        ? 0
        : (int) Math.max(0, ChronoUnit.DAYS.between(from.get(), until.get()) + 1);
  }

  Planting mother() {
    return asked.seed().planting();
  }

  String name() {
    return asked.cross().map(Cross::name).orElse(mother().name());
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

  /** The chance of the fruits wanted out of so many flowers and those that wait for their take. */
  double chance(int flowers) {
    return new BetaBinomial(flowers + waiting, take.value().a(), take.value().b()).atLeast(left);
  }

  String sentence() {
    int set = PollinationPlan.set(pollinated);
    return Counted.of(asked.fruits(), "fruit")
        + " wanted"
        + (set > 0 ? ", " + set + " of them set" : "")
        + (waiting > 0
            ? ", "
                + Counted.of(waiting, "flower")
                + (waiting == 1 ? " waiting for its take" : " waiting for their take")
            : "")
        + ": "
        + (likely < MOST_FLOWERS
            ? Counted.of(likely, pollinated.isEmpty() ? "flower" : "more flower")
                + " as likely as not"
            : "no number of flowers makes them likely")
        + (sure.isPresent() ? ", " + sure.getAsInt() + " to be sure in 19 of 20" : "");
  }

  /** What was done of it by the record. */
  Optional<Reason> progress() {
    if (pollinated.isEmpty()) {
      return Optional.empty();
    }
    List<Reason> lines = new ArrayList<>();
    for (FruitStory story : pollinated) {
      Fruit fruit = story.fruit();
      lines.add(story.spoilt().map(f -> f.at().reason()).orElse(story.proof().at().reason()));
      if (story.proof() != fruit && story.spoilt().isPresent()) {
        lines.add(fruit.at().reason());
      }
    }
    String says =
        pollinated.size()
            + " pollinated by the record, "
            + PollinationPlan.set(pollinated)
            + " of them set, "
            + waiting
            + " waiting for their take";
    return Optional.of(Reason.derived(says, lines));
  }
}
