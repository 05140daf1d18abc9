package slipday.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import slipday.change.Changes.Count;
import slipday.change.Changes.Figure;
import slipday.change.Changes.Generation;
import slipday.change.Changes.Moved;
import slipday.change.Changes.Pair;
import slipday.change.Changes.Recorded;
import slipday.change.Changes.Thing;
import slipday.change.Changes.ThingKind;
import slipday.finding.Finding;
import slipday.garden.Garden;
import slipday.garden.Named;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.Exposure;
import slipday.season.PlantingSeason;
import slipday.season.PollinationPlan;
import slipday.season.Season;
import slipday.seed.SeedBox;
import slipday.seed.SeedLot;
import slipday.source.Span;

/** Compares two states of a plan. */
public final class Comparison {
  /** A chance that moves by less says nothing. */
  private static final double TELLING = 0.05;

  private final Side before;
  private final Side after;

  private Comparison(Side before, Side after) {
    this.before = before;
    this.after = after;
  }

  /** Where a side's season could not be reckoned, only things and findings are compared. */
  public static Changes of(Side before, Side after) {
    return new Comparison(before, after).changes();
  }

  private Changes changes() {
    List<Moved> dates = new ArrayList<>();
    List<Figure> figures = new ArrayList<>();
    List<Pair> pairs = new ArrayList<>();
    List<Changes.Chores> chores = new ArrayList<>();
    List<Generation> generations = new ArrayList<>();
    if (before.season().isPresent() && after.season().isPresent()) {
      Season old = before.season().get();
      Season now = after.season().get();
      dates.addAll(dates(old, now));
      figures.addAll(plantingFigures(old, now));
      figures.addAll(pollinationFigures(old, now));
      pairs.addAll(pairs(old, now));
      chores.addAll(ChoreComparison.of(old, now));
      seed(old, now, figures, generations);
    }
    return new Changes(
        before,
        after,
        things(),
        dates,
        figures,
        pairs,
        chores,
        generations,
        recorded(),
        FindingComparison.missingFrom(before.findings(), after.findings()),
        gone());
  }

  /**
   * Where the season now can't be reckoned its rules say nothing, and nothing is mended by that.
   */
  private List<Finding> gone() {
    return before.season().isPresent() && after.season().isEmpty()
        ? List.of()
        : FindingComparison.missingFrom(after.findings(), before.findings());
  }

  /** Lines that stand in one record and not in the other; those that moved are the same. */
  private List<Recorded> recorded() {
    List<Recorded> recorded = new ArrayList<>();
    if (before.garden().isPresent() && after.garden().isPresent()) {
      Map<String, Span> old = lines(before.garden().get());
      Map<String, Span> now = lines(after.garden().get());
      now.forEach((says, span) -> missing(says, span, old, true, recorded));
      old.forEach((says, span) -> missing(says, span, now, false, recorded));
    }
    return recorded;
  }

  private static void missing(
      String says, Span span, Map<String, Span> from, boolean came, List<Recorded> recorded) {
    if (!from.containsKey(says)) {
      recorded.add(new Recorded(says, span, came));
    }
  }

  /** By their words, in the order of their days; equal lines say the same fact. */
  private static Map<String, Span> lines(Garden garden) {
    Map<String, Span> lines = new LinkedHashMap<>();
    garden.record().facts().forEach(f -> lines.putIfAbsent(f.span().plainText(), f.span()));
    return lines;
  }

  private List<Thing> things() {
    List<Thing> things = new ArrayList<>();
    if (before.garden().isPresent() && after.garden().isPresent()) {
      things.addAll(things(ThingKind.PLANTING, Garden::plantings));
      things.addAll(things(ThingKind.CROSS, Garden::crosses));
      things.addAll(things(ThingKind.LOT, Garden::lots));
    }
    return things;
  }

  private List<Thing> things(ThingKind kind, Function<Garden, List<? extends Named>> of) {
    Set<String> old = names(before, of);
    Set<String> now = names(after, of);
    List<Thing> things = new ArrayList<>();
    now.stream().filter(n -> !old.contains(n)).forEach(n -> things.add(new Thing(kind, n, true)));
    old.stream().filter(n -> !now.contains(n)).forEach(n -> things.add(new Thing(kind, n, false)));
    return things;
  }

  private static Set<String> names(Side side, Function<Garden, List<? extends Named>> of) {
    return side.garden().stream()
        .flatMap(g -> of.apply(g).stream())
        .map(Named::name)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static List<Moved> dates(Season old, Season now) {
    List<Moved> moved = new ArrayList<>();
    for (PlantingSeason planting : now.plantings()) {
      Optional<PlantingSeason> was = old.planting(planting.name());
      if (was.isPresent()) {
        for (Event event : Event.values()) {
          moved(planting.name(), event, was.get().date(event), planting.date(event))
              .ifPresent(moved::add);
        }
      }
    }
    return moved;
  }

  private static Optional<Moved> moved(
      String planting,
      Event event,
      Optional<Reasoned<DateSpread>> old,
      Optional<Reasoned<DateSpread>> now) {
    Optional<DateSpread> was = old.map(Reasoned::value);
    Optional<DateSpread> is = now.map(Reasoned::value);
    if (same(was, is)) {
      return Optional.empty();
    }
    Optional<Integer> days =
        was.flatMap(DateSpread::usual)
            .flatMap(
                a ->
                    is.flatMap(DateSpread::usual)
                        .map(b -> (int) (b.toEpochDay() - a.toEpochDay())));
    Set<Reason> before = old.map(r -> Leaves.of(r.reason())).orElse(Set.of());
    Set<Reason> after = now.map(r -> Leaves.of(r.reason())).orElse(Set.of());
    return Optional.of(
        new Moved(
            planting,
            event,
            was,
            is,
            days,
            Leaves.missingFrom(after, before),
            Leaves.missingFrom(before, after)));
  }

  private static boolean same(Optional<DateSpread> a, Optional<DateSpread> b) {
    return a.map(s -> List.of(s.early(), s.usual(), s.late()))
        .equals(b.map(s -> List.of(s.early(), s.usual(), s.late())));
  }

  private static List<Figure> plantingFigures(Season old, Season now) {
    List<Figure> figures = new ArrayList<>();
    for (PlantingSeason p : now.plantings()) {
      Optional<PlantingSeason> was = old.planting(p.name());
      was.ifPresent(w -> add(figures, p.name(), Count.PLANTS, plants(w), plants(p)));
    }
    return figures;
  }

  private static Optional<Integer> plants(PlantingSeason p) {
    return p.planting().plants().map(Reasoned::value);
  }

  private static List<Figure> pollinationFigures(Season old, Season now) {
    Map<String, PollinationPlan> was = byKey(old.pollinations(), PollinationPlan::subject);
    Map<String, PollinationPlan> is = byKey(now.pollinations(), PollinationPlan::subject);
    List<Figure> figures = new ArrayList<>();
    for (String subject : union(was.keySet(), is.keySet())) {
      Optional<PollinationPlan> a = Optional.ofNullable(was.get(subject));
      Optional<PollinationPlan> b = Optional.ofNullable(is.get(subject));
      add(
          figures,
          subject,
          Count.FRUITS_WANTED,
          a.map(PollinationPlan::wanted),
          b.map(PollinationPlan::wanted));
      add(
          figures,
          subject,
          Count.FRUITS_SET,
          a.map(PollinationPlan::set),
          b.map(PollinationPlan::set));
      add(
          figures,
          subject,
          Count.FLOWERS_TO_POLLINATE,
          a.map(Comparison::flowers),
          b.map(Comparison::flowers));
    }
    return figures;
  }

  private static int flowers(PollinationPlan plan) {
    return plan.flowersSure().orElse(plan.flowersLikely());
  }

  private static List<Pair> pairs(Season old, Season now) {
    Map<String, Exposure> was = byKey(intoSeed(old), Comparison::pair);
    Map<String, Exposure> is = byKey(intoSeed(now), Comparison::pair);
    List<Pair> pairs = new ArrayList<>();
    for (String key : union(is.keySet(), was.keySet())) {
      Optional<Exposure> a = Optional.ofNullable(was.get(key));
      Optional<Exposure> b = Optional.ofNullable(is.get(key));
      Optional<Double> before = a.flatMap(Exposure::chance);
      Optional<Double> after = b.flatMap(Exposure::chance);
      boolean told = a.isPresent() != b.isPresent() || before.isPresent() != after.isPresent();
      if (told || Math.abs(before.orElse(0.0) - after.orElse(0.0)) >= TELLING) {
        Exposure either = b.or(() -> a).orElseThrow();
        pairs.add(
            new Pair(
                either.receiver().name(),
                either.source().name(),
                a.isPresent(),
                b.isPresent(),
                before,
                after));
      }
    }
    return pairs;
  }

  private static List<Exposure> intoSeed(Season season) {
    return season.exposures().stream().filter(Exposure::intoSeed).toList();
  }

  private static String pair(Exposure e) {
    return e.receiver().name() + " < " + e.source().name();
  }

  private static void seed(
      Season old, Season now, List<Figure> figures, List<Generation> generations) {
    Map<String, SeedLot> was =
        byKey(SeedBox.lots(old.garden(), OptionalInt.empty()), Comparison::lot);
    for (SeedLot b : SeedBox.lots(now.garden(), OptionalInt.empty())) {
      SeedLot a = was.get(lot(b));
      if (a != null) {
        add(figures, lot(b), Count.SEEDS_LEFT, a.left(), b.left());
        add(figures, lot(b), Count.SEEDS_TO_SOW, toSow(a), toSow(b));
        if (!a.generation().equals(b.generation())) {
          generations.add(new Generation(lot(b), a.generation(), b.generation()));
        }
      }
    }
  }

  private static String lot(SeedLot lot) {
    return lot.lot().name();
  }

  private static Optional<Integer> toSow(SeedLot lot) {
    return lot.wanted() == 0 ? Optional.empty() : Optional.of(lot.toSow());
  }

  private static void add(
      List<Figure> figures,
      String subject,
      Count count,
      Optional<Integer> before,
      Optional<Integer> after) {
    if (!Objects.equals(before, after)) {
      figures.add(new Figure(subject, count, before, after));
    }
  }

  private static <T> Map<String, T> byKey(Collection<T> all, Function<T, String> key) {
    Map<String, T> map = new LinkedHashMap<>();
    all.forEach(t -> map.putIfAbsent(key.apply(t), t));
    return map;
  }

  private static Set<String> union(Set<String> first, Set<String> second) {
    Set<String> all = new LinkedHashSet<>(first);
    all.addAll(second);
    return all;
  }
}
