package slipday.output.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import slipday.measure.Range;
import slipday.measure.Unit;
import slipday.measure.Units;
import slipday.output.Lines;
import slipday.output.report.Template.Raw;
import slipday.season.Exposure;
import slipday.season.Season;

/**
 * How far a species' plantings stand from pollen they could take, beside how far they should.
 *
 * @param told the same in words
 */
record ApartView(String species, String told, Raw scale) {
  /** m; the scale runs from one to the other, a tenfold for each third. */
  private static final double NEAREST = 1;

  private static final double FARTHEST = 3000;
  private static final double MIDDLE = 13;
  private static final int HEIGHT = 40;
  private static final int[] METRES = {1, 10, 100, 1000};
  private static final int[] FEET = {3, 30, 300, 3000};

  static List<ApartView> of(Season season) {
    Map<String, List<Exposure>> bySpecies = new LinkedHashMap<>();
    for (Exposure e : season.exposures()) {
      bySpecies.computeIfAbsent(e.receiver().species().name(), s -> new ArrayList<>()).add(e);
    }
    List<ApartView> views = new ArrayList<>();
    bySpecies.forEach(
        (species, exposures) -> views.add(view(species, exposures, season.garden().units())));
    return views;
  }

  private static ApartView view(String species, List<Exposure> exposures, Units units) {
    Range isolation = exposures.get(0).isolation();
    TreeMap<Long, Boolean> distances = new TreeMap<>();
    long untold = 0;
    for (Exposure e : exposures) {
      if (e.distance().isPresent()) {
        distances.merge(
            Math.round(e.distance().get()), e.source().outsider().isPresent(), Boolean::logicalAnd);
      } else {
        untold++;
      }
    }
    String nearest =
        distances.isEmpty()
            ? ""
            : "the nearest pollen "
                + (distances.firstKey() == 0
                    ? "in the same bed"
                    : units.wholeDistance(distances.firstKey()) + " off");
    String unknown = untold == 0 ? "" : ", " + Lines.count(untold, "distance") + " not told";
    String told =
        "to be kept apart by "
            + units.wholeDistance(isolation.low())
            + " at home, "
            + units.wholeDistance(isolation.high())
            + " for certain; "
            + nearest
            + unknown
            + ".";
    return new ApartView(species, told, new Raw(scale(isolation, distances, units).toString()));
  }

  private static int first(Units units) {
    return units.feet() ? FEET[0] : METRES[0];
  }

  private static double at(double metres) {
    double share = Math.log(Math.max(NEAREST, metres) / NEAREST) / Math.log(FARTHEST / NEAREST);
    return 0.015 + 0.97 * Math.min(1, share);
  }

  private static Svg scale(Range isolation, TreeMap<Long, Boolean> distances, Units units) {
    Svg svg = new Svg();
    svg.open("svg", "class", "bar", "width", "100%", "height", HEIGHT, "aria-hidden", "true");
    double from = at(isolation.low());
    svg.leaf(
        "rect",
        "class",
        "near",
        "x",
        Svg.percent(at(0)),
        "width",
        Svg.percent(from - at(0)),
        "y",
        MIDDLE - 5,
        "height",
        10);
    svg.leaf(
        "rect",
        "class",
        "band",
        "x",
        Svg.percent(from),
        "width",
        Svg.percent(Math.max(0.004, at(isolation.high()) - from)),
        "y",
        MIDDLE - 5,
        "height",
        10);
    for (int mark : units.feet() ? FEET : METRES) {
      double metres = units.feet() ? Unit.FOOT.toBase(mark) : mark;
      String x = Svg.percent(at(metres));
      svg.leaf("line", "class", "month", "x1", x, "x2", x, "y1", MIDDLE - 9, "y2", MIDDLE + 9);
      svg.open(
          "text",
          "class",
          "ruler",
          "x",
          x,
          "y",
          HEIGHT - 6,
          "text-anchor",
          mark == first(units) ? "start" : "middle");
      String text = mark == 1000 ? "1 km" : units.wholeDistance(metres);
      svg.text(mark == first(units) ? text + " or less" : text).close();
    }
    distances.forEach(
        (metres, outside) -> {
          svg.open(
              "svg",
              "class",
              "at",
              "x",
              Svg.percent(at(metres)),
              "y",
              MIDDLE,
              "width",
              1,
              "height",
              1);
          svg.leaf(
              "path",
              "class",
              "ripe",
              "d",
              outside ? "M-5 5 0 -5 5 5Z" : "M-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0Z");
          svg.close();
        });
    return svg.close();
  }
}
