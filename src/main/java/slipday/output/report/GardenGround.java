package slipday.output.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Bed;
import slipday.garden.Outsider;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Unit;
import slipday.measure.Units;
import slipday.season.Exposure;
import slipday.season.Season;

/** What there is to draw of a garden from above, in m from the site's south-west corner. */
final class GardenGround {
  /** The sides of the sky, as the language's words have them, in degrees from north. */
  static final Map<String, Double> SIDES =
      Map.of(
          "north",
          0.0,
          "north-east",
          45.0,
          "east",
          90.0,
          "south-east",
          135.0,
          "south",
          180.0,
          "south-west",
          225.0,
          "west",
          270.0,
          "north-west",
          315.0);

  private static final int MOST_GAPS = 12;
  private static final double[] RULERS = {1, 2, 5, 10, 20, 50, 100, 200, 500};
  private final List<Bed> beds;
  private final Map<String, BedLayout> layouts = new HashMap<>();
  private final List<Gap> gaps;
  private final Units units;
  private final Map<String, List<Outsider>> outsiders = new LinkedHashMap<>();

  GardenGround(Season season) {
    this.units = season.garden().units();
    beds =
        season.garden().beds().stream()
            .filter(b -> b.size().isPresent() && b.corner().isPresent())
            .toList();
    Map<String, List<Planting>> planted = new HashMap<>();
    for (Planting p : season.garden().plantings()) {
      p.bed().ifPresent(b -> planted.computeIfAbsent(b.name(), n -> new ArrayList<>()).add(p));
    }
    for (Bed bed : beds) {
      List<Planting> plantings = planted.getOrDefault(bed.name(), List.of());
      layouts.put(bed.name(), BedLayout.of(bed.size().orElseThrow(), plantings));
    }
    gaps = gaps(season.exposures());
    for (Outsider o : season.garden().outsiders()) {
      side(o).ifPresent(s -> outsiders.computeIfAbsent(s, k -> new ArrayList<>()).add(o));
    }
  }

  /** The way between two beds whose plants can cross. */
  record Gap(double fromEast, double fromNorth, double toEast, double toNorth, double metres) {}

  private static Optional<String> side(Outsider outsider) {
    return outsider
        .places()
        .block()
        .find(PlanClauses.DISTANCE)
        .flatMap(c -> c.bound().find("direction"))
        .map(v -> v.span().plainText().toLowerCase(Locale.ROOT).replace(' ', '-'))
        .filter(SIDES::containsKey);
  }

  private List<Gap> gaps(List<Exposure> exposures) {
    Set<Set<String>> seen = new LinkedHashSet<>();
    List<Gap> found = new ArrayList<>();
    for (Exposure e : exposures) {
      Optional<Bed> a = e.receiver().bed().filter(b -> layouts.containsKey(b.name()));
      Optional<Bed> b =
          e.source().planting().flatMap(Planting::bed).filter(s -> layouts.containsKey(s.name()));
      if (a.isPresent() && b.isPresent() && e.sameSpecies() && !same(a.get(), b.get())) {
        if (seen.add(Set.of(a.get().name(), b.get().name())) && !a.get().overlaps(b.get())) {
          found.add(gap(a.get(), b.get()));
        }
      }
    }
    return found.stream().sorted(Comparator.comparingDouble(Gap::metres)).limit(MOST_GAPS).toList();
  }

  private static boolean same(Bed a, Bed b) {
    return a.name().equals(b.name());
  }

  private static Gap gap(Bed a, Bed b) {
    double[] east =
        nearest(
            a.corner().orElseThrow().east(),
            a.size().orElseThrow().length(),
            b.corner().orElseThrow().east(),
            b.size().orElseThrow().length());
    double[] north =
        nearest(
            a.corner().orElseThrow().north(),
            a.size().orElseThrow().width(),
            b.corner().orElseThrow().north(),
            b.size().orElseThrow().width());
    return new Gap(
        east[0], north[0], east[1], north[1], Math.hypot(east[1] - east[0], north[1] - north[0]));
  }

  /** The nearest points of two stretches; the middle of what they share, if they share any. */
  private static double[] nearest(double a, double lengthA, double b, double lengthB) {
    double from = Math.max(a, b);
    double to = Math.min(a + lengthA, b + lengthB);
    if (from <= to) {
      return new double[] {(from + to) / 2, (from + to) / 2};
    }
    return a < b ? new double[] {a + lengthA, b} : new double[] {a, b + lengthB};
  }

  List<Bed> beds() {
    return beds;
  }

  BedLayout layout(Bed bed) {
    return layouts.getOrDefault(bed.name(), new BedLayout(List.of(), false));
  }

  List<Gap> gaps() {
    return gaps;
  }

  /** Pollen from outside whose side is told, by side. */
  Map<String, List<Outsider>> outsiders() {
    return outsiders;
  }

  /** Degrees from north, clockwise, to a side by its name. */
  static double turn(String side) {
    return SIDES.getOrDefault(side, 0.0);
  }

  /** How many of them lie to the south, or do not. */
  long outsiders(boolean south) {
    return outsiders.entrySet().stream()
        .filter(e -> (turn(e.getKey()) > 90 && turn(e.getKey()) < 270) == south)
        .mapToLong(e -> e.getValue().size())
        .sum();
  }

  private static double side(Bed bed, boolean north, boolean far) {
    Bed.Corner corner = bed.corner().orElseThrow();
    Bed.Size size = bed.size().orElseThrow();
    double from = north ? corner.north() : corner.east();
    double length = north ? size.width() : size.length();
    return far ? from + length + bed.trail() : from - bed.trail();
  }

  double west() {
    return beds.stream().mapToDouble(b -> side(b, false, false)).min().orElse(0);
  }

  double north() {
    return beds.stream().mapToDouble(b -> side(b, true, true)).max().orElse(0);
  }

  /** West to east, m. */
  double length() {
    return beds.stream().mapToDouble(b -> side(b, false, true)).max().orElse(1) - west();
  }

  /** South to north, m. */
  double width() {
    return north() - beds.stream().mapToDouble(b -> side(b, true, false)).min().orElse(0);
  }

  /** Those its lengths are told in. */
  Units units() {
    return units;
  }

  /** A round length about a fifth of the garden's. */
  double ruler() {
    double metres = units.feet() ? Unit.FOOT.toBase(1) : 1;
    double best = RULERS[0] * metres;
    for (double ruler : RULERS) {
      best = ruler * metres <= length() / 4 ? ruler * metres : best;
    }
    return best;
  }
}
