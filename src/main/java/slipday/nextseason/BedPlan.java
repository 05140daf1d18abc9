package slipday.nextseason;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import slipday.garden.Bed;
import slipday.garden.Crop;
import slipday.garden.CropFacts;
import slipday.garden.Facts;
import slipday.garden.Garden;
import slipday.garden.Room;
import slipday.garden.record.Grounds;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.nextseason.NextSeason.Sown;

/**
 * Beds for the next season's plantings. What stood together of one line stays together. A family is
 * kept out of a bed for the years its rotation asks, as far as there is room; otherwise things stay
 * where they were. Found by moving and swapping lines while that makes it better, from this
 * season's beds and from every other bed to start with, so it need not be the best there is.
 */
final class BedPlan {
  /** Weights, by square metre but for the last; each outweighs the next in any garden. */
  private static final double OVERFULL = 1e9;

  private static final double CROWDED = 1e6;

  private static final double TOO_SOON = 1e3;
  private static final double SOON = 1;
  private static final double MOVED = 0.01;

  private final int year;
  private final List<Sown> sown;
  private final List<Group> groups = new ArrayList<>();
  private final List<Bed> beds;

  /** What stands in each bed this season. */
  private final Map<String, Set<Crop>> crops;

  private final double[][] soon;

  BedPlan(Garden garden, List<Sown> sown) {
    this.year = garden.season().year() + 1;
    Grounds grounds = new Grounds(garden);
    this.crops = grounds.cropsByBed();
    this.sown = sown.stream().map(s -> s.in(grounds.bed(s.from()), s.why())).toList();
    this.beds = garden.beds();
    Map<String, List<Sown>> together = new LinkedHashMap<>();
    this.sown.stream()
        .filter(s -> s.bed().isPresent())
        .forEach(
            s ->
                together
                    .computeIfAbsent(
                        s.lot().line().name() + " " + s.bed().get().name(), k -> new ArrayList<>())
                    .add(s));
    together.values().forEach(of -> groups.add(new Group(of)));
    this.soon = new double[groups.size()][beds.size()];
    for (int g = 0; g < groups.size(); g++) {
      for (int b = 0; b < beds.size(); b++) {
        soon[g][b] = tooSoon(groups.get(g), beds.get(b));
      }
    }
  }

  /** What goes into one bed together. */
  private static final class Group {
    private final List<Sown> of;
    private final Bed now;
    private final double area;
    private final double row;
    private final double rowsApart;
    private final Optional<String> family;

    Group(List<Sown> of) {
      this.of = of;
      this.now = of.get(0).bed().orElseThrow();
      Facts facts = of.get(0).lot().line().facts();
      this.family = facts.get(CropFacts.FAMILY).map(Reasoned::value);
      int plants = of.stream().mapToInt(Sown::plants).sum();
      Optional<CropFacts.Spacing> spacing = facts.get(CropFacts.SPACING).map(Reasoned::value);
      this.row = of.stream().mapToDouble(s -> s.plants() * apart(s, spacing)).sum();
      this.rowsApart = spacing.map(s -> s.betweenRows().low()).orElse(1.0);
      this.area = plants * Room.ofPlant(facts).map(Reasoned::value).orElse(0.0);
    }

    private static double apart(Sown s, Optional<CropFacts.Spacing> spacing) {
      return s.from()
          .apart()
          .map(Reasoned::value)
          .or(() -> spacing.map(g -> g.inRow().low()))
          .orElse(0.0);
    }

    /** The share of a bed that its rows take up, as many side by side as the bed is wide. */
    double shareOf(Bed.Size size) {
      return row / (size.length() * Math.max(1, Math.floor(size.width() / rowsApart)));
    }

    Facts facts() {
      return of.get(0).lot().line().facts();
    }
  }

  /** The plantings with their beds, and with why where they change it or may not stay. */
  List<Sown> placed() {
    int[] best = search();
    Map<Sown, Bed> chosen = new HashMap<>();
    for (int g = 0; g < groups.size(); g++) {
      Bed bed = beds.get(best[g]);
      groups.get(g).of.forEach(s -> chosen.put(s, bed));
    }
    return sown.stream().map(s -> placed(s, Optional.ofNullable(chosen.get(s)))).toList();
  }

  /** For each group the number of its bed. */
  int[] search() {
    int[] best = groups.stream().mapToInt(g -> beds.indexOf(g.now)).toArray();
    improve(best);
    for (int start = 0; start < beds.size(); start++) {
      int[] other = new int[best.length];
      java.util.Arrays.fill(other, start);
      improve(other);
      best = cost(other) < cost(best) - 1e-9 ? other : best;
    }
    return best;
  }

  private static Sown placed(Sown planting, Optional<Bed> bed) {
    if (bed.isEmpty() || bed.equals(planting.bed())) {
      return planting;
    }
    List<String> why = new ArrayList<>(planting.why());
    why.add("Moved on from " + planting.bed().orElseThrow().name() + ".");
    return planting.in(bed, why);
  }

  /** Moves one group, or swaps two, as long as something is gained. */
  private void improve(int[] beds) {
    boolean better = true;
    while (better) {
      better = false;
      for (int g = 0; g < beds.length; g++) {
        better |= move(beds, g);
        for (int h = 0; h < g; h++) {
          better |= swap(beds, g, h);
        }
      }
    }
  }

  private boolean move(int[] in, int group) {
    int was = in[group];
    int best = was;
    double most = 0;
    for (int bed = 0; bed < beds.size(); bed++) {
      double before = of(in, group) + cost(in, was) + cost(in, bed);
      in[group] = bed;
      double gain = before - of(in, group) - cost(in, was) - cost(in, bed);
      in[group] = was;
      if (bed != was && gain > Math.max(most, least(before))) {
        most = gain;
        best = bed;
      }
    }
    in[group] = best;
    return best != was;
  }

  private boolean swap(int[] in, int one, int other) {
    if (in[one] == in[other]) {
      return false;
    }
    double before = both(in, one, other);
    exchange(in, one, other);
    if (before - both(in, one, other) > least(before)) {
      return true;
    }
    exchange(in, one, other);
    return false;
  }

  private double both(int[] in, int one, int other) {
    return of(in, one) + of(in, other) + cost(in, in[one]) + cost(in, in[other]);
  }

  /**
   * The least gain that counts. What is less may be no more than rounding, and a search that takes
   * rounding for gain can go round for ever.
   */
  private static double least(double cost) {
    return 1e-9 + 1e-14 * cost;
  }

  /** What it costs that a group leaves its bed. */
  private double of(int[] in, int group) {
    return beds.get(in[group]).name().equals(groups.get(group).now.name()) ? 0 : MOVED;
  }

  private static void exchange(int[] in, int one, int other) {
    int kept = in[one];
    in[one] = in[other];
    in[other] = kept;
  }

  /** Of a whole arrangement; the search reckons only what a move changes. */
  double cost(int[] in) {
    double cost = 0;
    for (int b = 0; b < beds.size(); b++) {
      cost += cost(in, b);
    }
    for (int g = 0; g < in.length; g++) {
      cost += of(in, g);
    }
    return cost;
  }

  private double cost(int[] in, int bed) {
    Optional<Bed.Size> size = beds.get(bed).size();
    double area = 0;
    double taken = 0;
    double cost = 0;
    for (int g = 0; g < in.length; g++) {
      if (in[g] == bed) {
        Group group = groups.get(g);
        area += group.area;
        taken += size.map(group::shareOf).orElse(0.0);
        cost += soon[g][bed] * (1 + group.area);
      }
    }
    double wanted = area;
    double over = size.map(s -> wanted - Room.of(beds.get(bed), s)).orElse(0.0);
    return cost + (over > 1e-9 ? OVERFULL * over : 0) + CROWDED * Math.max(0, taken - 1);
  }

  private double tooSoon(Group group, Bed bed) {
    Optional<Range> rotation = group.facts().get(CropFacts.ROTATION).map(Reasoned::value);
    if (rotation.isEmpty() || group.family.isEmpty()) {
      return 0;
    }
    int last =
        grew(bed)
            .filter(g -> g.year() < year && family(g.crop()).equals(group.family))
            .mapToInt(Bed.Grew::year)
            .max()
            .orElse(Integer.MIN_VALUE / 2);
    int gap = year - last;
    return gap < rotation.get().low() ? TOO_SOON : gap < rotation.get().high() ? SOON : 0;
  }

  private static Optional<String> family(Crop crop) {
    return crop.facts().get(CropFacts.FAMILY).map(Reasoned::value);
  }

  private Stream<Bed.Grew> grew(Bed bed) {
    return Stream.concat(
        bed.grew().stream().map(Reasoned::value),
        crops.getOrDefault(bed.name(), Set.of()).stream().map(c -> new Bed.Grew(c, year - 1)));
  }
}
