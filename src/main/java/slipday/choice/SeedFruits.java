package slipday.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.choice.Candidate.Measured;
import slipday.choice.Candidate.SeedFruit;
import slipday.descent.Relatives;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.record.Bitterness;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.genetics.Generation;

/** The marked fruits of a plant as seed. */
final class SeedFruits {
  private final Garden garden;
  private final Relatives relatives;
  private final Faults faults;
  private final List<TraitValues> traits;
  private final Ranking ranking;
  private final Refusals refusals;
  private final Map<Fruit.Key, Fact.SetChecked> sets;
  private final Set<Fruit.Key> lost = new HashSet<>();

  SeedFruits(
      Garden garden,
      Relatives relatives,
      Faults faults,
      List<TraitValues> traits,
      Ranking ranking,
      Refusals refusals) {
    this.garden = garden;
    this.relatives = relatives;
    this.faults = faults;
    this.traits = traits;
    this.ranking = ranking;
    this.refusals = refusals;
    this.sets = garden.record().sets();
    garden.record().every(Fact.FruitLost.class).forEach(l -> lost.add(l.fruit().key()));
  }

  /** Plants with seed of the line: in a marked fruit, or saved of unmarked ones. */
  Set<Plants> bearing(List<Fruit> fruits) {
    Set<Plants> bearing = new HashSet<>();
    for (Fruit fruit : fruits) {
      if (isOfLine(fruit) && isThere(fruit) && refused(fruit).isEmpty()) {
        bearing.add(fruit.seedParent());
      }
    }
    garden
        .record()
        .every(Fact.Saved.class)
        .filter(s -> s.from() instanceof Plants)
        .forEach(s -> bearing.add((Plants) s.from()));
    return bearing;
  }

  /** Set or perhaps set, and not lost, by itself or with a plant that died before it was picked. */
  private boolean isThere(Fruit fruit) {
    Fact.SetChecked set = sets.get(fruit.key());
    boolean dropped = (set != null && !set.took()) || lost.contains(fruit.key());
    return !dropped && (picked(fruit).isPresent() || faults.lost(fruit.seedParent()).isEmpty());
  }

  /** Those that are there: best seed value first, then sound, sure and full of seed. */
  List<SeedFruit> of(List<Fruit> fruits) {
    List<SeedFruit> all = new ArrayList<>();
    for (Fruit fruit : fruits) {
      if (isThere(fruit)) {
        all.add(seed(fruit));
      }
    }
    all.sort(
        Comparator.comparing((SeedFruit f) -> !f.ofLine())
            .thenComparing(f -> f.refused().isPresent())
            .thenComparing(f -> -f.index().orElse(0.0))
            .thenComparing(f -> f.speaksAgainst().size())
            .thenComparing(f -> -f.seeds().orElse(0)));
    return all;
  }

  private SeedFruit seed(Fruit fruit) {
    Relatives.Seed seed = relatives.seed(fruit);
    List<Fact.Saved> saved = saved(fruit);
    boolean counted = !saved.isEmpty() && saved.stream().allMatch(s -> s.seeds().isPresent());
    boolean ofLine = isOfLine(fruit);
    return new SeedFruit(
        fruit,
        ofLine,
        refused(fruit),
        seed.generation().map(Generation::print),
        relatives.pedigree().inbreeding(seed.number()),
        ofLine ? ranking.index(seed.parents(), 1) : Optional.empty(),
        counted
            ? Optional.of(saved.stream().mapToInt(s -> s.seeds().orElse(0)).sum())
            : Optional.empty(),
        saved.stream().map(s -> s.lot().name()).distinct().toList(),
        against(fruit, seed),
        measured(fruit));
  }

  /** A fault of the plant that gave the pollen goes on as its own does. */
  private Optional<String> refused(Fruit fruit) {
    Plants father = fruit.pollenParent();
    return Optional.of(father)
        .filter(f -> !f.equals(fruit.seedParent()))
        .flatMap(refusals::of)
        .map(why -> "pollen of " + father + ", which may be no parent: " + why)
        .or(() -> mixedWithBitter(fruit));
  }

  /** Seed that lies among seed of a bitter plant can't be told from it. */
  private Optional<String> mixedWithBitter(Fruit fruit) {
    List<Fact.Saved> saved = saved(fruit);
    return saved.isEmpty()
        ? Optional.empty()
        : saved.stream()
            .map(s -> s.lot().bitterParent(garden).map(b -> mixed(s.lot(), b)))
            .reduce((a, b) -> a.flatMap(x -> b))
            .flatMap(m -> m);
  }

  private static String mixed(Lot lot, Bitterness.Told bitter) {
    return "its seed lies in "
        + lot.name()
        + " with that of "
        + bitter.culprit().name()
        + ", which tasted bitter: destroy it";
  }

  private List<Fact.Saved> saved(Fruit fruit) {
    return garden
        .record()
        .every(Fact.Saved.class)
        .filter(s -> s.from() instanceof Fruit f && f.key().equals(fruit.key()))
        .toList();
  }

  private List<Measured> measured(Fruit fruit) {
    List<Measured> all = new ArrayList<>();
    for (TraitValues trait : traits) {
      trait.model().observed().stream()
          .filter(o -> o.fruit().filter(f -> f.key().equals(fruit.key())).isPresent())
          .forEach(o -> all.add(new Measured(trait.trait(), o.value())));
    }
    return all;
  }

  /** Two plantings of one line may give each other pollen: that is no cross. */
  private static boolean isOfLine(Fruit fruit) {
    return !fruit.mating().isCross() || line(fruit.seedParent()).equals(line(fruit.pollenParent()));
  }

  private static String line(Plants plant) {
    return plant.stand().lot().line().name();
  }

  private List<String> against(Fruit fruit, Relatives.Seed seed) {
    List<String> against = new ArrayList<>();
    if (!isOfLine(fruit)) {
      against.add("a cross with " + fruit.pollenParent());
    }
    if (seed.doubtful()) {
      against.add("may be a self: the anthers were not taken out");
    }
    if (!sets.containsKey(fruit.key()) && picked(fruit).isEmpty()) {
      against.add("whether it set is not recorded");
    }
    picked(fruit)
        .flatMap(Fact.Picked::state)
        .filter(s -> s.equals("before ripe"))
        .ifPresent(s -> against.add("picked before ripe: the seed may not be"));
    faults.of(fruit.seedParent()).stream()
        .filter(f -> f.fruit().filter(t -> t.key().equals(fruit.key())).isPresent())
        .map(Faults.Fault::what)
        .distinct()
        .forEach(against::add);
    return against;
  }

  private Optional<Fact.Picked> picked(Fruit fruit) {
    return garden
        .record()
        .every(Fact.Picked.class)
        .filter(p -> p.subject() instanceof Fruit f && f.key().equals(fruit.key()))
        .findFirst();
  }
}
