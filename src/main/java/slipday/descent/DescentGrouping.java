package slipday.descent;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import slipday.descent.DescentGraph.Grain;
import slipday.descent.DescentGraph.Seed;
import slipday.descent.DescentGraph.Taking;
import slipday.descent.DescentGraph.Way;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.FruitStory;
import slipday.garden.record.Plants;

/** Puts fruits and lots of alike descent together until what is left can be looked at. */
final class DescentGrouping {
  /** As many lots of one descent stand together as one. */
  private static final int TOGETHER = 3;

  private final Garden garden;
  private final Births births;
  private final int most;
  private final List<Birth> all = new ArrayList<>();

  DescentGrouping(Garden garden, int most) {
    this.garden = garden;
    this.births = new Births(garden.record());
    this.most = most;
    gather();
  }

  /**
   * One fruit, and the lot its seed went into.
   *
   * @param year the season it grew in
   */
  private record Birth(
      Lot mother, Optional<Lot> father, Optional<Lot> child, Way way, Fact fact, int year) {
    /** What seed of it has in common with seed of others. */
    String parentage() {
      return mother.name() + " " + father.map(Lot::name).orElse("?") + " " + way;
    }
  }

  private void gather() {
    for (Lot lot : garden.lots()) {
      births.of(lot).forEach(taking -> all.add(birth(taking, lot)));
    }
    for (FruitStory story : FruitStory.all(garden.record())) {
      Fruit fruit = story.fruit();
      boolean waited = story.counts() || story.state() == FruitStory.State.PENDING;
      if (waited && story.saved().isEmpty() && fruit.year() == garden.season().year()) {
        all.add(birth(fruit, Optional.empty(), way(fruit, Optional.empty())));
      }
    }
  }

  private Birth birth(Fact.Saved taking, Lot lot) {
    if (taking.from() instanceof Fruit fruit) {
      return birth(fruit, Optional.of(lot), way(fruit, births.verdict(lot)));
    }
    Plants mother = (Plants) taking.from();
    Lot from = mother.stand().lot();
    boolean isolated = Births.isIsolated(mother, lot);
    return new Birth(
        from,
        isolated ? Optional.of(from) : Optional.empty(),
        Optional.of(lot),
        isolated ? Way.ISOLATED : Way.OPEN,
        taking,
        mother.stand().year());
  }

  private static Birth birth(Fruit fruit, Optional<Lot> child, Way way) {
    Lot mother = fruit.seedParent().stand().lot();
    boolean selfed = way == Way.SELFED || way == Way.PROVED_SELF;
    Lot father = selfed ? mother : fruit.pollenParent().stand().lot();
    return new Birth(mother, Optional.of(father), child, way, fruit, fruit.year());
  }

  private Way way(Fruit fruit, Optional<Fact.Verdict> proved) {
    if (proved.filter(v -> v == Fact.Verdict.A_SELF).isPresent()) {
      return Way.PROVED_SELF;
    }
    boolean unproved = proved.filter(v -> v != Fact.Verdict.MIXED).isEmpty();
    if (unproved && births.mayBeSelf(fruit)) {
      return Way.CROSSED_OR_SELFED;
    }
    return switch (fruit.mating()) {
      case SELF -> Way.SELFED;
      case SIB -> Way.SIBBED;
      case CROSS -> Way.CROSSED;
      case BACKCROSS -> Way.BACKCROSSED;
    };
  }

  DescentGraph graph() {
    OptionalInt since = OptionalInt.empty();
    List<Integer> years = all.stream().map(Birth::year).distinct().sorted().toList();
    for (int year : years) {
      DescentGraph graph = grouped(Grain.LOTS, since);
      if (nodes(graph) <= most || year == years.get(years.size() - 1)) {
        return nodes(graph) <= most ? graph : lines();
      }
      since = years.stream().filter(y -> y > year).mapToInt(y -> y).findFirst();
    }
    return grouped(Grain.LOTS, since);
  }

  /** Of lines the latest takings that there is room for, and the last one in any case. */
  private DescentGraph lines() {
    DescentGraph graph = grouped(Grain.LINES, OptionalInt.empty());
    List<Taking> latest = new ArrayList<>(graph.takings());
    latest.sort(Comparator.comparing(DescentGrouping::last).reversed());
    Set<Taking> kept = new HashSet<>();
    Set<Integer> seeds = new HashSet<>();
    int nodes = 0;
    for (Taking taking : latest) {
      Set<Integer> of = new HashSet<>(taking.seeds());
      of.removeAll(seeds);
      nodes += of.size() + 1 + unknown(taking);
      if (nodes > most && !kept.isEmpty()) {
        break;
      }
      seeds.addAll(of);
      kept.add(taking);
    }
    List<Taking> drawn = graph.takings().stream().filter(kept::contains).toList();
    return drawn.size() == latest.size()
        ? graph
        : numbered(graph, drawn, latest.size() - drawn.size());
  }

  private static LocalDate last(Taking taking) {
    return taking.of().stream().map(Fact::date).max(Comparator.naturalOrder()).orElseThrow();
  }

  /** Pollen that nobody knows is a node of its own. */
  private static int unknown(Taking taking) {
    return taking.pollenParent().isPresent() ? 0 : 1;
  }

  private static DescentGraph numbered(DescentGraph graph, List<Taking> kept, int leftOut) {
    Map<Integer, Integer> places = new LinkedHashMap<>();
    List<Taking> takings = new ArrayList<>();
    for (Taking t : kept) {
      takings.add(
          new Taking(
              place(places, t.seedParent()),
              each(t.pollenParent(), p -> place(places, p)),
              each(t.seed(), s -> place(places, s)),
              t.way(),
              t.of()));
    }
    List<Seed> seeds = places.keySet().stream().map(graph.seeds()::get).toList();
    return new DescentGraph(seeds, takings, graph.apart(), graph.grain(), graph.since(), leftOut);
  }

  private static int place(Map<Integer, Integer> places, int seed) {
    return places.computeIfAbsent(seed, s -> places.size());
  }

  private static OptionalInt each(OptionalInt of, Function<Integer, Integer> with) {
    return of.isPresent() ? OptionalInt.of(with.apply(of.getAsInt())) : of;
  }

  private static int nodes(DescentGraph graph) {
    int unknown = graph.takings().stream().mapToInt(DescentGrouping::unknown).sum();
    return graph.seeds().size() + graph.takings().size() + unknown;
  }

  private DescentGraph grouped(Grain grain, OptionalInt since) {
    List<Birth> drawn = all.stream().filter(b -> b.year() >= since.orElse(b.year())).toList();
    Function<Lot, String> key = grain == Grain.LINES ? l -> l.line().name() : together(drawn);
    Map<String, Seeds> nodes = new LinkedHashMap<>();
    Map<List<Object>, List<Birth>> takings = new LinkedHashMap<>();
    for (Birth birth : drawn) {
      String mother = key.apply(birth.mother());
      String father = birth.father().map(key).orElse("");
      String child = birth.child().map(key).orElse("");
      boolean within = grain == Grain.LINES && mother.equals(father) && mother.equals(child);
      if (!within) {
        takings
            .computeIfAbsent(
                List.of(mother, father, child, birth.way(), birth.father().isPresent()),
                k -> new ArrayList<>())
            .add(birth);
      }
    }
    takings.values().forEach(births -> births.forEach(b -> enter(b, key, nodes)));
    List<Taking> made = takings.values().stream().map(b -> taking(b, key, nodes)).toList();
    return new DescentGraph(
        nodes.values().stream().map(n -> new Seed(List.copyOf(n.lots.values()))).toList(),
        made,
        apart(),
        grain,
        since,
        all.size() - drawn.size());
  }

  /** A node being filled. */
  private static final class Seeds {
    private final int place;
    private final Map<String, Lot> lots = new LinkedHashMap<>();

    Seeds(int place) {
      this.place = place;
    }
  }

  private static void enter(Birth birth, Function<Lot, String> key, Map<String, Seeds> nodes) {
    List<Lot> lots = new ArrayList<>(List.of(birth.mother()));
    birth.father().ifPresent(lots::add);
    birth.child().ifPresent(lots::add);
    for (Lot lot : lots) {
      nodes.computeIfAbsent(key.apply(lot), k -> new Seeds(nodes.size())).lots.put(lot.name(), lot);
    }
  }

  private static Taking taking(
      List<Birth> births, Function<Lot, String> key, Map<String, Seeds> nodes) {
    Birth first = births.get(0);
    Function<Lot, Integer> place = l -> Objects.requireNonNull(nodes.get(key.apply(l))).place;
    return new Taking(
        place.apply(first.mother()),
        first.father().map(f -> OptionalInt.of(place.apply(f))).orElse(OptionalInt.empty()),
        first.child().map(c -> OptionalInt.of(place.apply(c))).orElse(OptionalInt.empty()),
        first.way(),
        births.stream().map(Birth::fact).toList());
  }

  /** What each lot is drawn as: itself, or one of several alike that nothing was grown of. */
  private Map<String, String> alike(Collection<Birth> drawn) {
    Set<String> parents = new HashSet<>();
    Map<String, Set<String>> parentage = new LinkedHashMap<>();
    Map<String, String> lines = new HashMap<>();
    for (Birth birth : drawn) {
      parents.add(birth.mother().name());
      birth.father().ifPresent(f -> parents.add(f.name()));
      birth.child().ifPresent(c -> lines.put(c.name(), c.line().name()));
      birth
          .child()
          .ifPresent(
              c ->
                  parentage
                      .computeIfAbsent(c.name(), n -> new java.util.TreeSet<>())
                      .add(birth.parentage()));
    }
    Map<String, List<String>> alike =
        parentage.keySet().stream()
            .filter(c -> !parents.contains(c))
            .collect(
                Collectors.groupingBy(
                    c -> lines.get(c) + " " + parentage.get(c),
                    LinkedHashMap::new,
                    Collectors.toList()));
    Map<String, String> keys = new HashMap<>();
    alike.values().stream()
        .filter(lots -> lots.size() >= TOGETHER)
        .forEach(lots -> lots.forEach(l -> keys.put(l, "of " + lots.get(0))));
    return keys;
  }

  private Function<Lot, String> together(Collection<Birth> drawn) {
    Map<String, String> keys = alike(drawn);
    return lot -> keys.getOrDefault(lot.name(), "lot " + lot.name());
  }

  private List<Lot> apart() {
    Set<String> related = new HashSet<>();
    for (Birth birth : all) {
      related.add(birth.mother().name());
      birth.father().ifPresent(f -> related.add(f.name()));
      birth.child().ifPresent(c -> related.add(c.name()));
    }
    return garden.lots().stream().filter(l -> !related.contains(l.name())).toList();
  }
}
