package slipday.storage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.SeasonYear;
import slipday.garden.record.Bitterness;
import slipday.garden.record.Fact;
import slipday.garden.record.Figures;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.garden.record.Subject;

/**
 * All that lies in store by the record, and how each line keeps.
 *
 * @param fruits those still there, most urgent first
 * @param keeping by line
 * @param seed where the seed of a lot lies, as last told
 */
public record Store(List<KeptFruit> fruits, List<Keeping> keeping, Map<Lot, String> seed) {
  private static final String FLAVOUR = "flavour";
  private static final int MONTH = 30;

  public static Store of(Garden garden) {
    List<KeptFruit> all = fruits(garden);
    List<Keeping> keeping =
        all.stream()
            .map(f -> f.line().name())
            .distinct()
            .map(n -> keeping(all.stream().filter(f -> f.line().name().equals(n)).toList()))
            .toList();
    Store store = new Store(List.of(), keeping, seed(garden));
    List<KeptFruit> there =
        all.stream()
            .filter(KeptFruit::isThere)
            .sorted(
                Comparator.comparing((KeptFruit f) -> !f.isSoft())
                    .thenComparing(f -> store.eatBy(f).orElse(LocalDate.MAX))
                    .thenComparing(KeptFruit::since)
                    .thenComparing(KeptFruit::name))
            .toList();
    return new Store(there, keeping, store.seed);
  }

  /** Days from picking, or from the first day in store. */
  public static int age(KeptFruit fruit, LocalDate day) {
    return (int) ChronoUnit.DAYS.between(fruit.since(), day);
  }

  private Optional<Keeping> of(KeptFruit fruit) {
    return keeping.stream().filter(k -> k.line().name().equals(fruit.line().name())).findFirst();
  }

  /**
   * When fruit of its line tasted best; empty where that was not scored, and of a soft or bitter
   * one.
   */
  public Optional<LocalDate> best(KeptFruit fruit) {
    return of(fruit)
        .filter(k -> !fruit.isWaste())
        .flatMap(Keeping::best)
        .map(days -> fruit.since().plusDays(days));
  }

  /**
   * By when the first of its line had spoilt; empty where none has, and of a soft or bitter one.
   */
  public Optional<LocalDate> eatBy(KeptFruit fruit) {
    return of(fruit)
        .filter(k -> !fruit.isWaste())
        .flatMap(Keeping::spoiltDays)
        .map(days -> fruit.since().plusDays(days));
  }

  private static Map<Lot, String> seed(Garden garden) {
    Map<Lot, String> seed = new LinkedHashMap<>();
    for (Lot lot : garden.lots()) {
      garden
          .record()
          .every(Fact.Stored.class)
          .filter(s -> s.subject() instanceof Subject.OfLot of && of.lot().equals(lot))
          .forEach(s -> seed.put(lot, s.where()));
    }
    return seed;
  }

  private static List<KeptFruit> fruits(Garden garden) {
    Map<Subject, List<Fact>> stored = new LinkedHashMap<>();
    for (Fact fact : garden.record().facts()) {
      if (fact instanceof Fact.Stored s && isGrown(s.subject())) {
        stored.computeIfAbsent(s.subject(), k -> new ArrayList<>());
      } else if (fact instanceof Fact.LookedAt l) {
        stored.computeIfAbsent(l.subject(), k -> new ArrayList<>());
      }
    }
    garden
        .record()
        .facts()
        .forEach(f -> subject(f).ifPresent(s -> stored.getOrDefault(s, new ArrayList<>()).add(f)));
    Bitterness bitterness = Bitterness.of(garden.record());
    return stored.entrySet().stream()
        .map(e -> fruit(e.getKey(), e.getValue(), garden.season(), bitterness.isBitter(e.getKey())))
        .toList();
  }

  private static boolean isGrown(Subject subject) {
    return subject instanceof Fruit || subject instanceof Plants;
  }

  private static Optional<Subject> subject(Fact fact) {
    if (fact instanceof Fact.Stored s) {
      return Optional.of(s.subject());
    }
    if (fact instanceof Fact.LookedAt l) {
      return Optional.of(l.subject());
    }
    if (fact instanceof Fact.Picked p) {
      return Optional.of(p.subject());
    }
    if (fact instanceof Fact.Measured m) {
      return Optional.of(m.subject());
    }
    return fact instanceof Fact.Saved s ? Optional.of(s.from()) : Optional.empty();
  }

  /**
   * @param facts all there are of it, by date
   */
  private static KeptFruit fruit(
      Subject subject, List<Fact> facts, SeasonYear season, boolean bitter) {
    Plants plants = subject instanceof Fruit fruit ? fruit.seedParent() : (Plants) subject;
    Optional<LocalDate> picked =
        facts.stream().filter(Fact.Picked.class::isInstance).map(Fact::date).findFirst();
    LocalDate since =
        picked.orElseGet(
            () ->
                facts.stream()
                    .filter(f -> f instanceof Fact.Stored || f instanceof Fact.LookedAt)
                    .map(Fact::date)
                    .findFirst()
                    .orElseThrow());
    List<KeptFruit.Weighed> weights =
        facts.stream()
            .flatMap(
                f ->
                    figures(f).stream()
                        .flatMap(g -> g.kilograms().map(k -> k / g.fruits()).stream())
                        .map(k -> new KeptFruit.Weighed(f.date(), k)))
            .toList();
    Optional<KeptFruit.Weighed> first = weights.stream().findFirst();
    List<Fact.LookedAt> looks =
        facts.stream()
            .filter(Fact.LookedAt.class::isInstance)
            .map(Fact.LookedAt.class::cast)
            .toList();
    return new KeptFruit(
        name(subject, plants, season),
        plants.stand().lot().line(),
        since,
        facts.stream()
            .filter(Fact.Stored.class::isInstance)
            .map(f -> ((Fact.Stored) f).where())
            .reduce((one, later) -> later),
        looks,
        first,
        first.flatMap(
            w ->
                weights.stream()
                    .filter(later -> later.date().isAfter(w.date()))
                    .reduce((one, later) -> later)),
        flavour(facts, since),
        subject instanceof Fruit && facts.stream().anyMatch(Fact.Saved.class::isInstance),
        bitter);
  }

  private static String name(Subject subject, Plants plants, SeasonYear season) {
    int year = plants.stand().year();
    String name = subject instanceof Fruit fruit ? fruit.tag() : plants.toString();
    return year == season.year() ? name : name + " of " + season.label(year);
  }

  private static Optional<Figures> figures(Fact fact) {
    if (fact instanceof Fact.LookedAt l) {
      return Optional.of(l.figures());
    }
    if (fact instanceof Fact.Picked p) {
      return Optional.of(p.figures());
    }
    return fact instanceof Fact.Measured m ? Optional.of(m.figures()) : Optional.empty();
  }

  private static Keeping keeping(List<KeptFruit> fruits) {
    List<KeptFruit> seen = fruits.stream().filter(f -> !f.looks().isEmpty()).toList();
    Map<Integer, List<Double>> flavour = flavour(fruits);
    Optional<Map.Entry<Integer, Double>> best =
        flavour.size() < 2
            ? Optional.empty()
            : flavour.entrySet().stream()
                .map(e -> Map.entry(e.getKey(), mean(e.getValue())))
                .max(
                    Comparator.comparingDouble((Map.Entry<Integer, Double> e) -> e.getValue())
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())));
    List<Double> lost =
        fruits.stream()
            .filter(f -> !f.gained())
            .flatMap(f -> f.lostADay().map(share -> share * MONTH).stream())
            .toList();
    return new Keeping(
        fruits.get(0).line(),
        seen.size(),
        (int) seen.stream().filter(f -> firstSpoilt(f).isPresent()).count(),
        seen.stream()
            .flatMap(f -> f.looks().stream().filter(KeptFruit::isSound).map(l -> age(f, l.date())))
            .max(Comparator.naturalOrder()),
        seen.stream().flatMap(f -> firstSpoilt(f).stream()).min(Comparator.naturalOrder()),
        best.map(Map.Entry::getKey),
        best.map(Map.Entry::getValue),
        lost.isEmpty() ? Optional.empty() : Optional.of(mean(lost)),
        (int) fruits.stream().filter(KeptFruit::gained).count());
  }

  private static Optional<Integer> firstSpoilt(KeptFruit fruit) {
    return fruit.looks().stream()
        .filter(l -> !KeptFruit.isSound(l))
        .findFirst()
        .map(l -> age(fruit, l.date()));
  }

  private static double mean(List<Double> figures) {
    return figures.stream().mapToDouble(f -> f).average().orElseThrow();
  }

  /** Scores for flavour by the age of the fruit in days, as shares of the points to be had. */
  private static Map<Integer, List<Double>> flavour(List<KeptFruit> fruits) {
    Map<Integer, List<Double>> all = new TreeMap<>();
    fruits.forEach(
        f ->
            f.flavour()
                .forEach((age, s) -> all.computeIfAbsent(age, a -> new ArrayList<>()).add(s)));
    return all;
  }

  private static Map<Integer, Double> flavour(List<Fact> facts, LocalDate since) {
    Map<Integer, Double> scores = new TreeMap<>();
    for (Fact fact : facts) {
      figures(fact).stream()
          .filter(f -> !fact.date().isBefore(since))
          .flatMap(f -> f.traits().stream())
          .filter(t -> t.name().equals(FLAVOUR) && t.outOf().isPresent())
          .forEach(
              t ->
                  scores.put(
                      (int) ChronoUnit.DAYS.between(since, fact.date()),
                      t.value() / t.outOf().orElseThrow()));
    }
    return scores;
  }
}
