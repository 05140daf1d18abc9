package slipday.output.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.measure.Units;
import slipday.output.Lines;
import slipday.season.Exposure;
import slipday.season.PlantingSeason;

/**
 * Whose pollen reaches whom, of one species.
 *
 * @param list by planting
 * @param all every source once, where some planting has too many to name
 */
record Sheds(List<Shed> list, List<Shared> all) {
  /**
   * Pollen that reaches a planting.
   *
   * @param danger whether it gets into seed that is kept
   * @param more how many other sources there are, in words; empty where all are there
   */
  record Shed(boolean danger, String receiver, String thing, List<Source> sources, String more) {}

  /**
   * @param bitter whether its fruit is bitter and poisonous
   */
  record Source(String name, boolean bitter, String facts) {}

  /** A source, and how many it reaches. */
  record Shared(String name, boolean bitter, String reaches) {}

  boolean isThere() {
    return !list.isEmpty();
  }

  boolean inDanger() {
    return list.stream().anyMatch(Shed::danger);
  }

  boolean hasAll() {
    return !all.isEmpty();
  }

  static Sheds of(List<PlantingSeason> plantings, Reach reach, Ids ids, Units units) {
    List<Shed> sheds = new ArrayList<>();
    for (PlantingSeason p : plantings) {
      shed(p, reach.of(p.name()), true, ids, units).ifPresent(sheds::add);
      shed(p, reach.of(p.name()), false, ids, units).ifPresent(sheds::add);
    }
    sheds.sort(Comparator.comparing(s -> !s.danger()));
    boolean cut = sheds.stream().anyMatch(s -> !s.more().isEmpty());
    return new Sheds(sheds, cut ? shared(plantings, reach) : List.of());
  }

  private static Optional<Shed> shed(
      PlantingSeason receiver, List<Exposure> reach, boolean danger, Ids ids, Units units) {
    List<Exposure> all = reach.stream().filter(e -> e.intoSeed() == danger).toList();
    if (all.isEmpty()) {
      return Optional.empty();
    }
    Reach.Told told = Reach.told(all);
    List<Source> sources =
        told.each().stream()
            .map(e -> new Source(e.source().name(), e.source().isBitter(), facts(e, units)))
            .toList();
    return Optional.of(
        new Shed(danger, receiver.name(), ids.of(receiver.planting()), sources, told.more(units)));
  }

  private static List<Shared> shared(List<PlantingSeason> plantings, Reach reach) {
    Map<String, List<Exposure>> bySource = new LinkedHashMap<>();
    for (PlantingSeason p : plantings) {
      for (Exposure e : reach.of(p.name())) {
        bySource.computeIfAbsent(e.source().name(), n -> new ArrayList<>()).add(e);
      }
    }
    List<Shared> shared = new ArrayList<>();
    bySource.forEach(
        (name, each) -> {
          long reached = each.stream().map(e -> e.receiver().name()).distinct().count();
          long seed =
              each.stream()
                  .filter(Exposure::intoSeed)
                  .map(e -> e.receiver().name())
                  .distinct()
                  .count();
          String reaches = "reaches " + reached + ", the kept seed of " + seed;
          shared.add(new Shared(name, each.get(0).source().isBitter(), reaches));
        });
    shared.sort(Comparator.comparing((Shared s) -> !s.bitter()));
    return shared;
  }

  private static String facts(Exposure e, Units units) {
    List<String> facts = new ArrayList<>();
    if (e.source().outsider().isPresent()) {
      facts.add(e.source().crop().name());
    }
    if (!e.sameSpecies()) {
      facts.add("another species, crosses " + e.degree() + " of 3");
    }
    facts.add(e.distance().map(units::wholeDistance).orElse("distance not told"));
    facts.add(
        e.mornings()
            .map(m -> Lines.count(m.usual(), "morning") + " together")
            .orElse("mornings not known"));
    return String.join(", ", facts);
  }
}
