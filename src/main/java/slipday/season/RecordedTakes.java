package slipday.season;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slipday.garden.CropFacts;
import slipday.garden.Line;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.FruitStory;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Mating;
import slipday.garden.record.Plants;
import slipday.genetics.ClusteredRate;
import slipday.measure.Quantity;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.source.Span;

/** What the record says of hand pollination: how often it takes here, what has set, what stands. */
final class RecordedTakes {
  private static final double DOUBT = 0.05;

  private final List<FruitStory> stories;
  private final Map<String, List<FruitStory>> thisSeason;
  private final Map<String, List<Fact.PlantedOut>> plantedOut;
  private final Map<String, List<Fact.Lost>> lost;
  private final Map<Kind, Reasoned<ClusteredRate>> learned = new HashMap<>();

  /** Flowers that share one figure of take: it stands on one line of a crop file or plan. */
  private record Kind(Optional<Span> figure, boolean emasculated) {}

  /** A vine, or a flower of a vine that was not told. */
  private record Vine(Plants plants, Optional<Fruit.Key> flower) {}

  RecordedTakes(GardenRecord record, List<FruitStory> stories) {
    this.stories = stories;
    this.thisSeason =
        byName(
            stories.stream().filter(s -> s.fruit().year() == record.season()),
            s -> s.fruit().seedParent().stand().name());
    this.plantedOut =
        byName(
            record.every(Fact.PlantedOut.class).filter(p -> p.stand().year() == record.season()),
            p -> p.stand().name());
    this.lost =
        byName(
            record.every(Fact.Lost.class).filter(l -> l.plants().stand().year() == record.season()),
            l -> l.plants().stand().name());
  }

  private static <T> Map<String, List<T>> byName(Stream<T> all, Function<T, String> name) {
    Map<String, List<T>> byName = new HashMap<>();
    all.forEach(t -> byName.computeIfAbsent(name.apply(t), n -> new ArrayList<>()).add(t));
    return byName;
  }

  /**
   * The usual take with this garden's own takes and failures added, of every season on record and
   * of every kind the figure is for. The usual share counts as so many flowers as it is worth; a
   * flower checked here as one, or as less where others of its vine were checked too.
   *
   * @param figure the figure for a kind of plant; empty where it has none
   */
  Reasoned<ClusteredRate> learned(
      Reasoned<CropFacts.TakeRate> usual,
      boolean emasculated,
      Function<Line, Optional<Reasoned<CropFacts.TakeRate>>> figure) {
    Optional<Span> place = usual.reason().place();
    return learned.computeIfAbsent(
        new Kind(place, emasculated),
        kind ->
            learn(
                usual,
                stories.stream()
                    .filter(s -> s.took().isPresent() && isEmasculated(s.fruit()) == emasculated)
                    .filter(
                        s -> figure.apply(line(s)).flatMap(f -> f.reason().place()).equals(place))
                    .toList()));
  }

  private static Line line(FruitStory story) {
    return story.fruit().seedParent().stand().lot().line();
  }

  private static Reasoned<ClusteredRate> learn(
      Reasoned<CropFacts.TakeRate> usual, List<FruitStory> own) {
    double share = usual.value().share();
    int worth = usual.value().worth();
    ClusteredRate before =
        new ClusteredRate(Math.max(DOUBT, share * worth), Math.max(DOUBT, (1 - share) * worth));
    if (own.isEmpty()) {
      return new Reasoned<>(before, usual.reason());
    }
    Map<Vine, List<FruitStory>> vines =
        own.stream().collect(Collectors.groupingBy(RecordedTakes::vine));
    ClusteredRate after = before.after(vines.values().stream().map(RecordedTakes::counts).toList());
    List<Reason> from = new ArrayList<>(List.of(usual.reason()));
    own.forEach(s -> from.add(s.proof().at().reason()));
    if (vines.size() < own.size()) {
      from.add(
          Reason.method(
              "Flowers of one vine take or fail together to some degree, so several on one count"
                  + " for less: beta-binomial by vine (Williams 1975, Biometrics 31:949, from"
                  + " memory)"));
    }
    String says =
        "A take of "
            + percent(after.mean())
            + " % ("
            + percent(after.quantile(0.1))
            + " to "
            + percent(after.quantile(0.9))
            + " %, as 8 of 10): "
            + own.stream().filter(s -> s.took().orElseThrow()).count()
            + " of "
            + own.size()
            + " tagged flowers took here, on "
            + vines.size()
            + (vines.size() == 1 ? " vine" : " vines")
            + ", added to the usual "
            + percent(share)
            + " %";
    return new Reasoned<>(after, Reason.derived(says, from));
  }

  private static String percent(double share) {
    return Quantity.plain(Math.round(share * 100));
  }

  private static Vine vine(FruitStory story) {
    Plants plants = story.fruit().seedParent();
    return new Vine(
        plants, plants.plant().isPresent() ? Optional.empty() : Optional.of(story.fruit().key()));
  }

  private static ClusteredRate.Cluster counts(List<FruitStory> flowers) {
    long took = flowers.stream().filter(s -> s.took().orElseThrow()).count();
    return new ClusteredRate.Cluster((int) took, flowers.size());
  }

  /** A cross on a perfect flower is made on one without its anthers. */
  private static boolean isEmasculated(Fruit fruit) {
    return fruit.mating().isCross()
        && fruit.seedParent().stand().lot().line().sex().fruitingFlowersArePerfect();
  }

  /** What was pollinated this season on a planting, for itself or for a cross on it. */
  List<FruitStory> pollinated(Planting seed, Planting pollen, boolean cross, boolean self) {
    return thisSeason.getOrDefault(seed.name(), List.of()).stream()
        .filter(s -> isSuch(s.fruit(), pollen, cross, self))
        .toList();
  }

  private static boolean isSuch(Fruit fruit, Planting pollen, boolean cross, boolean self) {
    return cross
        ? fruit.mating().isCross() && fruit.pollenParent().stand().name().equals(pollen.name())
        : fruit.mating() == (self ? Mating.SELF : Mating.SIB);
  }

  /** Plants that stand: planted out on record, or else meant in the plan, less those gone. */
  Optional<Reasoned<Integer>> standing(Planting planting) {
    List<Reason> from = new ArrayList<>();
    int planted = 0;
    boolean counted = true;
    for (Fact.PlantedOut out : plantedOut.getOrDefault(planting.name(), List.of())) {
      counted &= out.plants().isPresent();
      planted += out.plants().orElse(0);
      from.add(out.at().reason());
    }
    if (from.isEmpty() || !counted) {
      from.clear();
      planted = planting.plants().map(Reasoned::value).orElse(0);
      planting.plants().ifPresent(p -> from.add(p.reason()));
    }
    if (from.isEmpty()) {
      return Optional.empty();
    }
    int gone = 0;
    for (Fact.Lost loss : lost.getOrDefault(planting.name(), List.of())) {
      gone += loss.count();
      from.add(loss.at().reason());
    }
    int stand = Math.max(0, planted - gone);
    return Optional.of(
        new Reasoned<>(
            stand, from.size() == 1 ? from.get(0) : Reason.derived(stand + " plants stand", from)));
  }
}
