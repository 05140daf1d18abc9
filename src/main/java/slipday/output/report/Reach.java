package slipday.output.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import slipday.measure.Units;
import slipday.season.Exposure;

/**
 * The pollen that reaches each planting, the worst first. In a large garden nearly every planting
 * of a species reaches every other: told pair by pair, that would be most of the page.
 */
final class Reach {
  /** Sources told one by one; the others are counted. */
  private static final int MOST = 6;

  private static final Comparator<Exposure> WORST_FIRST =
      Comparator.comparing((Exposure e) -> !e.intoSeed())
          .thenComparing(e -> !e.source().isBitter())
          .thenComparingDouble(e -> e.distance().orElse(0.0))
          .thenComparingInt(e -> -e.mornings().map(Exposure.Mornings::usual).orElse(0));

  private final Map<String, List<Exposure>> byReceiver = new LinkedHashMap<>();

  Reach(List<Exposure> exposures) {
    for (Exposure e : exposures) {
      byReceiver.computeIfAbsent(e.receiver().name(), n -> new ArrayList<>()).add(e);
    }
    byReceiver.values().forEach(each -> each.sort(WORST_FIRST));
  }

  /** The worst first. */
  List<Exposure> of(String receiver) {
    return byReceiver.getOrDefault(receiver, List.of());
  }

  /**
   * Those told one by one, and the others.
   *
   * @param rest is counted; no bitter source is in it whose pollen gets into seed that is kept
   */
  record Told(List<Exposure> each, List<Exposure> rest) {
    /** How many others there are, in words; empty where all are told. */
    String more(Units units) {
      int others = Reach.names(rest).size();
      if (others == 0) {
        return "";
      }
      List<Exposure> outside =
          rest.stream().filter(e -> e.source().outsider().isPresent()).toList();
      List<Exposure> bitter = rest.stream().filter(e -> e.source().isBitter()).toList();
      String nearest =
          rest.stream()
              .flatMap(e -> e.distance().stream())
              .min(Comparator.naturalOrder())
              .map(d -> ", the nearest " + units.wholeDistance(d) + " off")
              .orElse("");
      return others
          + " more"
          + ofThem(bitter, "bitter")
          + ofThem(outside, "from outside")
          + nearest;
    }

    private static String ofThem(List<Exposure> some, String words) {
      return some.isEmpty() ? "" : ", " + Reach.names(some).size() + " of them " + words;
    }
  }

  /**
   * The worst sources, and all that are bitter and get into seed that is kept, however many.
   *
   * @param all pollen that reaches a planting or some of it, the worst first
   */
  static Told told(List<Exposure> all) {
    Set<String> names = new LinkedHashSet<>();
    int sources = names(all).size();
    int most = sources == MOST + 1 ? sources : MOST;
    for (Exposure e : all) {
      if (names.size() < most || (e.intoSeed() && e.source().isBitter())) {
        names.add(e.source().name());
      }
    }
    Map<Boolean, List<Exposure>> parted =
        all.stream().collect(Collectors.partitioningBy(e -> names.contains(e.source().name())));
    return new Told(parted.getOrDefault(true, List.of()), parted.getOrDefault(false, List.of()));
  }

  /** Those told of every planting. */
  List<Exposure> told() {
    return byReceiver.values().stream().flatMap(all -> told(all).each().stream()).toList();
  }

  private static Set<String> names(List<Exposure> exposures) {
    return exposures.stream().map(e -> e.source().name()).collect(Collectors.toSet());
  }
}
