package slipday.odds;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import slipday.garden.Planting;
import slipday.garden.SeasonYear;
import slipday.garden.record.Fact;
import slipday.garden.record.Figures;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Plants;
import slipday.garden.record.Stand;
import slipday.garden.record.Subject;
import slipday.measure.Quantity;
import slipday.measure.Reasoned;

/** Counts the plants of the record by a trait: true or not, faulty or not, or by its points. */
public final class TraitCounter {
  /** Plants that are not what their label says. */
  public static final String OFF_TYPE = "off-type";

  /** Plants whose fruit tasted bitter. */
  public static final String BITTER = "bitter";

  private final GardenRecord record;
  private final Map<Stand, Seen> stands = new LinkedHashMap<>();

  /** What was seen of the plants of one stand, by the numbers of the plants. */
  private static final class Seen {
    final Map<Integer, Set<String>> faults = new TreeMap<>();
    final Map<Integer, Map<String, Set<Double>>> traits = new TreeMap<>();
    final Map<Integer, Boolean> bitter = new TreeMap<>();
    final Set<Integer> offTypes = new TreeSet<>();
    final Set<Integer> died = new TreeSet<>();
    int unnumberedOffTypes;
    int unnumberedDead;
    int planted;
    boolean plantedKnown = true;
    int unnumbered;
  }

  public TraitCounter(GardenRecord record) {
    this.record = record;
    record.facts().forEach(this::see);
  }

  /** The traits, faults and kinds that anything was recorded of. */
  public Set<String> known() {
    Set<String> known = new TreeSet<>();
    for (Seen seen : stands.values()) {
      seen.faults.values().forEach(known::addAll);
      seen.traits.values().forEach(t -> known.addAll(t.keySet()));
      if (!seen.bitter.isEmpty()) {
        known.add(BITTER);
      }
      if (!seen.offTypes.isEmpty() || seen.unnumberedOffTypes > 0) {
        known.add(OFF_TYPE);
      }
    }
    return known;
  }

  /** The names by which stands can be asked for. */
  public Set<String> names() {
    Set<String> names = new TreeSet<>();
    stands.keySet().forEach(s -> names.addAll(namesOf(s)));
    return names;
  }

  private static List<String> namesOf(Stand s) {
    return List.of(s.name(), s.lot().name(), s.lot().line().name());
  }

  /**
   * The counts of every stand of which the trait was seen.
   *
   * @param of a planting, lot or line; empty for all
   */
  public List<TraitCount> counts(String trait, Optional<String> of) {
    String key = trait.toLowerCase(Locale.ROOT);
    List<TraitCount> counts = new ArrayList<>();
    stands.forEach(
        (stand, seen) -> {
          if (of.isEmpty() || namesOf(stand).contains(of.get())) {
            count(stand, seen, key).ifPresent(counts::add);
          }
        });
    return counts;
  }

  private Seen seen(Stand stand) {
    return stands.computeIfAbsent(stand, s -> new Seen());
  }

  private void see(Fact fact) {
    if (fact instanceof Fact.PlantedOut out) {
      Seen seen = seen(out.stand());
      seen.planted += out.plants().orElse(0);
      seen.plantedKnown &= out.plants().isPresent();
    } else if (fact instanceof Fact.Lost lost) {
      gone(seen(lost.plants().stand()), lost);
    } else if (fact instanceof Fact.OffType off) {
      offType(seen(off.plants().stand()), off.plants(), off.count());
    } else if (fact instanceof Fact.Tasted tasted) {
      plant(tasted.subject()).ifPresent(p -> taste(p, tasted.bitter()));
    } else if (fact instanceof Fact.Picked picked) {
      plant(picked.subject()).ifPresent(p -> figures(p, picked.figures(), true));
    } else if (fact instanceof Fact.Measured measured) {
      plant(measured.subject()).ifPresent(p -> figures(p, measured.figures(), false));
    } else if (fact instanceof Fact.LookedAt looked) {
      plant(looked.subject()).ifPresent(p -> figures(p, looked.figures(), true));
    }
  }

  private static void gone(Seen seen, Fact.Lost lost) {
    if (lost.rogued()) {
      offType(seen, lost.plants(), lost.count());
    } else if (lost.plants().plant().isPresent()) {
      seen.died.add(lost.plants().plant().get());
    } else {
      seen.unnumberedDead += lost.count();
    }
  }

  private static void offType(Seen seen, Plants plants, int count) {
    if (plants.plant().isPresent()) {
      seen.offTypes.add(plants.plant().get());
    } else {
      seen.unnumberedOffTypes += count;
    }
  }

  /** The plant that a fact tells of: a fruit's flesh is its seed parent's. */
  private static Optional<Plants> plant(Subject subject) {
    if (subject instanceof Fruit fruit) {
      return Optional.of(fruit.seedParent());
    }
    return subject instanceof Plants plants ? Optional.of(plants) : Optional.empty();
  }

  private void taste(Plants plants, boolean bitter) {
    Seen seen = seen(plants.stand());
    plants
        .plant()
        .ifPresentOrElse(
            p -> seen.bitter.merge(p, bitter, Boolean::logicalOr), () -> seen.unnumbered++);
  }

  /**
   * @param inHand whether a fruit was in hand, so that a fault would have been told
   */
  private void figures(Plants plants, Figures figures, boolean inHand) {
    Seen seen = seen(plants.stand());
    if (plants.plant().isEmpty()) {
      seen.unnumbered++;
      return;
    }
    int number = plants.plant().get();
    if (inHand || !figures.faults().isEmpty()) {
      Set<String> faults = seen.faults.computeIfAbsent(number, n -> new TreeSet<>());
      figures.faults().forEach(f -> faults.add(f.toLowerCase(Locale.ROOT)));
    }
    Map<String, Set<Double>> traits = seen.traits.computeIfAbsent(number, n -> new TreeMap<>());
    for (Figures.Trait trait : figures.traits()) {
      traits.computeIfAbsent(trait.name(), n -> new LinkedHashSet<>()).add(trait.value());
    }
  }

  private Optional<TraitCount> count(Stand stand, Seen seen, String trait) {
    if (trait.equals(OFF_TYPE)) {
      return offTypes(stand, seen);
    }
    List<String> leftOut = new ArrayList<>();
    if (seen.unnumbered > 0) {
      leftOut.add(
          Words.count(seen.unnumbered, "line")
              + " of the record about `"
              + stand.name()
              + "` "
              + (seen.unnumbered == 1 ? "names" : "name")
              + " no plant.");
    }
    Map<String, List<Integer>> classes =
        trait.equals(BITTER)
            ? tasted(seen)
            : isFault(trait) ? faulty(seen, trait) : points(seen, trait, leftOut);
    boolean any = classes.values().stream().anyMatch(c -> !c.isEmpty());
    return any ? Optional.of(counted(stand, trait, classes, leftOut)) : Optional.empty();
  }

  private boolean isFault(String trait) {
    return stands.values().stream()
        .flatMap(s -> s.faults.values().stream())
        .flatMap(Collection::stream)
        .anyMatch(trait::equals);
  }

  private static Map<String, List<Integer>> tasted(Seen seen) {
    Map<String, List<Integer>> classes = two("clean", BITTER);
    seen.bitter.forEach((plant, bitter) -> add(classes, bitter ? BITTER : "clean", plant));
    return classes;
  }

  private static Map<String, List<Integer>> faulty(Seen seen, String fault) {
    Map<String, List<Integer>> classes = two("not " + fault, fault);
    seen.faults.forEach(
        (plant, faults) -> add(classes, faults.contains(fault) ? fault : "not " + fault, plant));
    return classes;
  }

  private static Map<String, List<Integer>> points(Seen seen, String trait, List<String> leftOut) {
    Map<Double, List<Integer>> byValue = new TreeMap<>();
    List<Integer> torn = new ArrayList<>();
    seen.traits.forEach(
        (plant, traits) -> {
          Set<Double> values = traits.getOrDefault(trait, Set.of());
          if (values.size() > 1) {
            torn.add(plant);
          }
          if (values.size() == 1) {
            byValue.computeIfAbsent(values.iterator().next(), v -> new ArrayList<>()).add(plant);
          }
        });
    if (!torn.isEmpty()) {
      leftOut.add("Given unlike figures at different times: " + plants(torn) + ".");
    }
    Map<String, List<Integer>> classes = new LinkedHashMap<>();
    byValue.forEach((value, plants) -> classes.put(Quantity.plain(value), plants));
    return classes;
  }

  private static String plants(List<Integer> numbers) {
    return (numbers.size() == 1 ? "plant " : "plants ")
        + String.join(", ", numbers.stream().map(String::valueOf).toList());
  }

  private static Map<String, List<Integer>> two(String one, String other) {
    Map<String, List<Integer>> classes = new LinkedHashMap<>();
    classes.put(one, new ArrayList<>());
    classes.put(other, new ArrayList<>());
    return classes;
  }

  private static void add(Map<String, List<Integer>> classes, String name, int plant) {
    classes.computeIfAbsent(name, n -> new ArrayList<>()).add(plant);
  }

  private TraitCount counted(
      Stand stand, String trait, Map<String, List<Integer>> classes, List<String> leftOut) {
    List<TraitCount.Kind> kinds = new ArrayList<>();
    classes.forEach((name, plants) -> kinds.add(new TraitCount.Kind(name, plants.size(), plants)));
    otherGeneration(stand).ifPresent(leftOut::add);
    return new TraitCount(stand.name(), stand.lot().name(), season(stand), trait, kinds, leftOut);
  }

  /** The ratios are those of an F2 or a backcross; of later seed they hold in split families. */
  private static Optional<String> otherGeneration(Stand stand) {
    return stand
        .lot()
        .generation()
        .map(Reasoned::value)
        .filter(g -> !g.equals("F2") && !g.matches("BC\\d+F1"))
        .map(
            g ->
                "The ratios are of F2 seed or of a backcross; `"
                    + stand.lot().name()
                    + "` is "
                    + g
                    + ", so they hold only if all of it is of one plant that was still split.");
  }

  private String season(Stand stand) {
    SeasonYear plan = record.seasonYear();
    return plan.label(stand.year());
  }

  /** All that stood, less those that died before they could be judged. */
  private Optional<TraitCount> offTypes(Stand stand, Seen seen) {
    int off = seen.offTypes.size() + seen.unnumberedOffTypes;
    if (off == 0) {
      return Optional.empty();
    }
    int planned = stand.planting().flatMap(Planting::plants).map(Reasoned::value).orElse(0);
    boolean counted = seen.planted > 0 && seen.plantedKnown;
    Set<Integer> dead = new TreeSet<>(seen.died);
    dead.removeAll(seen.offTypes);
    int stood = (counted ? seen.planted : planned) - dead.size() - seen.unnumberedDead;
    List<String> notes = new ArrayList<>();
    notes.add(
        "All plants of `"
            + stand.name()
            + "` that lived are taken as judged: "
            + (counted ? seen.planted + " planted out" : planned + " in the plan")
            + (dead.size() + seen.unnumberedDead > 0
                ? ", " + (dead.size() + seen.unnumberedDead) + " of them dead"
                : "")
            + ".");
    List<TraitCount.Kind> kinds = new ArrayList<>();
    if (stood >= off) {
      kinds.add(new TraitCount.Kind("true", stood - off, List.of()));
    } else {
      notes.add(
          "Fewer plants stood than were seen off-type: how many were planted out is missing.");
    }
    otherGeneration(stand).ifPresent(notes::add);
    kinds.add(new TraitCount.Kind(OFF_TYPE, off, List.copyOf(seen.offTypes)));
    return Optional.of(
        new TraitCount(stand.name(), stand.lot().name(), season(stand), OFF_TYPE, kinds, notes));
  }
}
