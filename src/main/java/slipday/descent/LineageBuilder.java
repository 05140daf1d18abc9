package slipday.descent;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import slipday.descent.Ancestor.Kind;
import slipday.descent.Ancestor.Parent;
import slipday.descent.Ancestor.Role;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.SeasonYear;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Mating;
import slipday.garden.record.Plants;
import slipday.garden.record.Subject;
import slipday.genetics.Generation;
import slipday.genetics.Pedigree;

/**
 * Gathers the plants a subject comes from: from a plant to its lot, from the lot to the fruits its
 * seed was saved from, from a fruit to the plants that made it, and so on until nothing more is
 * recorded.
 */
final class LineageBuilder {
  private final SeasonYear season;
  private final Births births;
  private final Pedigree.Builder pedigree = Pedigree.begin(0);
  private final Notation notation = new Notation();
  private final Assumptions assumptions = new Assumptions();
  private final Founders founders;
  private final Map<String, Integer> plants = new HashMap<>();
  private final Map<Integer, Ancestor> ancestors = new HashMap<>();
  private final Map<String, Seed> seeds = new HashMap<>();

  LineageBuilder(Garden garden) {
    this.season = garden.season();
    this.births = new Births(garden.record());
    this.founders = new Founders(garden, births, pedigree, notation, assumptions, ancestors);
  }

  Lineage lineage(Subject subject, Optional<Subject> with) {
    births.failed(subject).ifPresent(assumptions::failed);
    int first = individual(subject, "");
    Optional<Integer> sib =
        subject instanceof Plants ? Optional.empty() : Optional.of(individual(subject, "another"));
    Optional<Integer> second = with.map(w -> individual(w, "other"));
    Pedigree built = pedigree.build();
    List<Ancestor> before = before(first);
    second.map(this::before).ifPresent(before::addAll);
    return new Lineage(
        ancestor(first),
        List.copyOf(new LinkedHashMap<>(byNumber(before)).values()),
        built.inbreeding(first),
        built.heterozygosity(first),
        sib.map(s -> built.coancestry(first, s)),
        notation.of(first),
        second.map(
            s ->
                new Lineage.Other(
                    ancestor(s),
                    built.inbreeding(s),
                    notation.of(s),
                    built.coancestry(first, s),
                    with.filter(w -> Subjects.cross(subject, w)).isPresent())),
        assumptions.sentences());
  }

  Relatives relatives(Collection<Plants> wanted, Collection<Fruit> fruits) {
    Map<Plants, Integer> numbers = new LinkedHashMap<>();
    wanted.forEach(p -> numbers.put(p, plant(p, "")));
    Map<Fruit.Key, Relatives.Seed> seeds = new LinkedHashMap<>();
    for (Fruit fruit : fruits) {
      Pair pair = pair(fruit, false);
      boolean doubtful = births.mayBeSelf(fruit);
      Map<Integer, Double> parents = new HashMap<>(Map.of(pair.seed, 0.5));
      parents.merge(pair.pollen.orElse(pair.seed), 0.5, Double::sum);
      seeds.put(
          fruit.key(),
          new Relatives.Seed(
              seed(fruit, ""), parents, doubtful, births.seedOf(fruit, Optional.empty())));
    }
    return new Relatives(pedigree.build(), numbers, seeds, assumptions.sentences(), births);
  }

  private static Map<Integer, Ancestor> byNumber(List<Ancestor> all) {
    Map<Integer, Ancestor> each = new LinkedHashMap<>();
    all.forEach(a -> each.putIfAbsent(a.number(), a));
    return each;
  }

  private Ancestor ancestor(int individual) {
    return java.util.Objects.requireNonNull(ancestors.get(individual));
  }

  /** An ancestor and all before it, nearest first. */
  private List<Ancestor> before(int individual) {
    Map<Integer, Ancestor> found = new LinkedHashMap<>();
    List<Integer> open = new ArrayList<>(List.of(individual));
    for (int i = 0; i < open.size(); i++) {
      Ancestor next = ancestor(open.get(i));
      if (found.putIfAbsent(next.number(), next) == null) {
        next.parents().forEach(p -> p.number().ifPresent(open::add));
      }
    }
    return new ArrayList<>(found.values());
  }

  /**
   * @param which tells draws of one lot or fruit apart; a plant is always itself
   */
  private int individual(Subject subject, String which) {
    if (subject instanceof Plants plant) {
      return plant(plant, "");
    }
    if (subject instanceof Fruit fruit) {
      return seed(fruit, which);
    }
    if (subject instanceof Subject.OfLot of) {
      return ofLot(of.lot(), "lot " + which + " " + of.lot().name(), Kind.SEED, of.lot().name());
    }
    throw new IllegalArgumentException("descent of " + subject);
  }

  private int seed(Fruit fruit, String which) {
    String key = "seed " + which + " " + fruit.year() + " " + fruit.tag();
    Integer known = plants.get(key);
    if (known != null) {
      return known;
    }
    if (births.mayBeSelf(fruit)) {
      assumptions.doubtful("the seed of `" + fruit.tag() + "`");
    }
    Optional<Generation> generation = births.seedOf(fruit, Optional.empty());
    Pair pair = pair(fruit, false);
    String name = "seed of " + fruit.tag() + ofYear(fruit.year());
    int made = pair.offspring(name);
    pair.write(made, name);
    Optional<String> line =
        !fruit.mating().isCross()
            ? Optional.of(fruit.seedParent().stand().lot().line().name())
            : Optional.empty();
    plants.put(key, made);
    ancestors.put(
        made,
        new Ancestor(
            made,
            Kind.SEED,
            name,
            Optional.empty(),
            line,
            generation.map(Generation::print),
            pair.how,
            Optional.of(fruit.at().reason()),
            pair.parents()));
    return made;
  }

  /**
   * @param of the fruit it is a parent of, should it have no number
   */
  private int plant(Plants plant, String of) {
    String place = plant.stand().year() + " " + plant.stand().name();
    String key = place + plant.plant().map(n -> " plant " + n).orElse(" of " + of);
    String name =
        plant.plant().isPresent() ? plant.toString() : "a plant of " + plant.stand().name();
    if (plant.plant().isEmpty()) {
      assumptions.unnumbered(of);
    }
    return ofLot(plant.stand().lot(), key, Kind.PLANT, name + ofYear(plant.stand().year()));
  }

  private String ofYear(int year) {
    return year == season.year() ? "" : " of " + season.label(year);
  }

  /** One plant of a lot. */
  private int ofLot(Lot lot, String key, Kind kind, String name) {
    Integer known = plants.get(key);
    if (known != null) {
      return known;
    }
    List<Fact.Saved> takings = births.of(lot);
    int made = takings.isEmpty() ? founders.of(lot, kind, name) : born(lot, takings, kind, name);
    plants.put(key, made);
    return made;
  }

  private int born(Lot lot, List<Fact.Saved> takings, Kind kind, String name) {
    Seed seed = seeds.get(lot.name());
    if (seed == null) {
      seed = seed(lot, takings);
      seeds.put(lot.name(), seed);
    }
    int made = seed.plant(name);
    ancestors.put(
        made,
        new Ancestor(
            made,
            kind,
            name,
            Optional.of(lot.name()),
            Optional.of(lot.line().name()),
            seed.generation,
            seed.origin,
            Optional.of(takings.get(0).at().reason()),
            seed.parents));
    return made;
  }

  private Seed seed(Lot lot, List<Fact.Saved> takings) {
    List<Pair> pairs = takings.stream().map(t -> pair(lot, t)).toList();
    List<Pedigree.Fruit> fruits = pairs.size() == 1 ? List.of() : bulk(lot, takings, pairs);
    return new Seed(lot, pairs, fruits);
  }

  private List<Pedigree.Fruit> bulk(Lot lot, List<Fact.Saved> takings, List<Pair> pairs) {
    boolean counted = takings.stream().allMatch(t -> t.seeds().filter(n -> n > 0).isPresent());
    assumptions.bulk(lot, counted);
    List<Pedigree.Fruit> fruits = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      double seeds = counted ? takings.get(i).seeds().orElseThrow() : 1;
      fruits.add(new Pedigree.Fruit(seeds, pairs.get(i).seed, pairs.get(i).pollen));
    }
    return fruits;
  }

  /** What all plants of a lot have in common, found once. */
  private final class Seed {
    private final Lot lot;
    private final List<Pair> pairs;
    private final List<Pedigree.Fruit> fruits;
    private final Optional<String> generation;
    private final String origin;
    private final List<Parent> parents;
    private OptionalInt first = OptionalInt.empty();

    /**
     * @param fruits of a bulk; none for the seed of one fruit
     */
    Seed(Lot lot, List<Pair> pairs, List<Pedigree.Fruit> fruits) {
      this.lot = lot;
      this.pairs = pairs;
      this.fruits = fruits;
      this.generation = births.generation(lot).map(Generation::print);
      this.origin =
          pairs.stream()
              .map(p -> pairs.size() == 1 ? p.how : p.how + ": " + p.names())
              .distinct()
              .collect(Collectors.joining("; "));
      this.parents = pairs.stream().flatMap(p -> p.parents().stream()).distinct().toList();
    }

    int plant(String name) {
      int made = fruits.isEmpty() ? pairs.get(0).offspring(name) : pedigree.ofBulk(name, fruits);
      if (first.isPresent()) {
        notation.like(made, first.getAsInt());
        return made;
      }
      first = OptionalInt.of(made);
      if (fruits.isEmpty()) {
        pairs.get(0).write(made, lot.name());
      } else {
        writeMixed(made);
      }
      return made;
    }

    private void writeMixed(int made) {
      notation.mixed(made, pairs.stream().map(p -> p.seed).toList());
      boolean within =
          pairs.stream()
              .allMatch(p -> p.pollen.isPresent() && sameCross(p.seed, p.pollen.getAsInt()));
      if (!within) {
        notation.unclear(made);
      }
    }
  }

  private boolean sameCross(int one, int other) {
    return notation.of(one).equals(notation.of(other));
  }

  private Pair pair(Lot lot, Fact.Saved taking) {
    if (taking.from() instanceof Fruit fruit) {
      if (births.isDoubtful(lot)) {
        assumptions.doubtful("`" + lot.name() + "`");
      }
      boolean self = births.verdict(lot).filter(v -> v == Fact.Verdict.A_SELF).isPresent();
      births
          .verdict(lot)
          .filter(v -> v == Fact.Verdict.MIXED)
          .ifPresent(v -> assumptions.mixed(lot));
      return pair(fruit, self);
    }
    Plants mother = (Plants) taking.from();
    String fruit = "the unmarked fruit that `" + lot.name() + "` is from";
    if (Births.isIsolated(mother, lot)) {
      assumptions.isolated(lot);
      int seed = plant(mother, fruit);
      Plants block = new Plants(mother.stand(), Optional.empty());
      int pollen =
          ofLot(block.stand().lot(), "pollen " + fruit, Kind.PLANT, "a plant of the block");
      return new Pair(seed, OptionalInt.of(pollen), "open-pollinated in isolation");
    }
    assumptions.open(lot);
    return new Pair(plant(mother, fruit), OptionalInt.empty(), "open-pollinated");
  }

  /**
   * @param provedSelf whether a cross proved to be a self when it was grown out
   */
  private Pair pair(Fruit fruit, boolean provedSelf) {
    String of = "`" + fruit.tag() + "`" + ofYear(fruit.year());
    int seed = plant(fruit.seedParent(), of);
    String made = " " + fruit.date() + ", tag " + fruit.tag();
    if (fruit.mating() == Mating.SELF || provedSelf) {
      String how = provedSelf ? "crossed, but proved a self," : fruit.mating().words();
      return new Pair(seed, OptionalInt.of(seed), how + made);
    }
    int pollen = plant(fruit.pollenParent(), of + " (pollen)");
    return new Pair(seed, OptionalInt.of(pollen), fruit.mating().words() + made);
  }

  /** The plants that made a fruit. */
  private final class Pair {
    private final int seed;
    private final OptionalInt pollen;
    private final String how;

    Pair(int seed, OptionalInt pollen, String how) {
      this.seed = seed;
      this.pollen = pollen;
      this.how = how;
    }

    int offspring(String name) {
      return pollen.isEmpty()
          ? pedigree.offspring(name, seed)
          : pedigree.offspring(name, seed, pollen.getAsInt());
    }

    /**
     * @param otherwise the name where the cross is too long to be read
     */
    void write(int made, String otherwise) {
      if (pollen.isEmpty()) {
        notation.open(made, seed, otherwise);
      } else {
        notation.crossed(made, seed, pollen.getAsInt(), otherwise);
      }
    }

    /** {@code rope plant 4 x rope plant 3}. */
    String names() {
      String mother = name(seed);
      return pollen.isEmpty()
          ? mother + " x unknown"
          : pollen.getAsInt() == seed ? mother : mother + " x " + name(pollen.getAsInt());
    }

    private String name(int number) {
      Ancestor ancestor = ancestors.get(number);
      return ancestor == null ? "unknown" : ancestor.name();
    }

    List<Parent> parents() {
      if (pollen.isPresent() && pollen.getAsInt() == seed) {
        return List.of(new Parent(Role.BOTH, Optional.of(seed)));
      }
      return List.of(
          new Parent(Role.SEED_PARENT, Optional.of(seed)),
          new Parent(
              Role.POLLEN_PARENT,
              pollen.isPresent() ? Optional.of(pollen.getAsInt()) : Optional.empty()));
    }
  }
}
