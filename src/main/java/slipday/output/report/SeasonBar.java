package slipday.output.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slipday.measure.Reasoned;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.Exposure;
import slipday.season.PlantingSeason;

/**
 * The bar of one planting: a band from sowing to seed that is the thicker the less certain its days
 * are, and on it its flowers, as high as the share of years that has them.
 *
 * <p>Places along it are percentages, so that it fits any width; shapes that need more than a line
 * are drawn on a field of 1000 stretched to it.
 */
final class SeasonBar {
  static final int HEIGHT = 44;
  private static final double MIDDLE = 19;
  private static final double FLOWERS = 9;
  private static final double THINNEST = 2;
  private static final double THICKEST = 10;

  /** px of half the band for a day of spread. */
  private static final double A_DAY = 0.3;

  private static final double FIELD = 1000;
  private final Axis axis;
  private final PlantingSeason planting;
  private final Svg svg = new Svg();

  private SeasonBar(Axis axis, PlantingSeason planting) {
    this.axis = axis;
    this.planting = planting;
  }

  /**
   * @param received pollen that can reach its flowers, drawn under them where it ends up in seed
   */
  static Svg of(PlantingSeason planting, Axis axis, List<Exposure> received, Bloom bloom) {
    SeasonBar bar = new SeasonBar(axis, planting);
    bar.draw(received, bloom);
    return bar.svg;
  }

  private void draw(List<Exposure> received, Bloom bloom) {
    svg.open("svg", "class", "bar", "width", "100%", "height", HEIGHT, "aria-hidden", "true");
    svg.open(
        "svg",
        "width",
        "100%",
        "height",
        HEIGHT,
        "viewBox",
        "0 0 1000 " + HEIGHT,
        "preserveAspectRatio",
        "none");
    band();
    late();
    flowers();
    svg.close();
    males();
    mark(Event.SOW, "M0 -6V6", "tick");
    mark(Event.PLANT_OUT, "M-4 7H4M0 7V-7", "tick");
    ripe();
    shed(received, bloom);
    svg.close();
  }

  private record Point(double at, double spread) {}

  private void band() {
    List<Point> points = new ArrayList<>();
    DateSpread last = DateSpread.decided(axis.first());
    for (Reasoned<DateSpread> date : planting.dates().values()) {
      DateSpread spread = date.value();
      points.add(new Point(axis.usual(spread), days(spread)));
      last = axis.usual(spread) >= axis.usual(last) ? spread : last;
    }
    points.sort(Comparator.comparingDouble(Point::at));
    if (points.size() < 2) {
      return;
    }
    List<String> above = new ArrayList<>();
    List<String> below = new ArrayList<>();
    double half = THINNEST;
    for (Point p : points) {
      half = Math.max(half, Math.min(THICKEST, THINNEST + A_DAY * p.spread()));
      double at = Math.min(p.at(), axis.at(last.early()));
      above.add(point(at, MIDDLE - half));
      below.add(0, point(at, MIDDLE + half));
    }
    above.add(point(axis.at(last.late()), MIDDLE));
    above.addAll(below);
    svg.leaf("polygon", "class", "band", "points", String.join(" ", above));
  }

  private double days(DateSpread spread) {
    return spread.decided()
        ? 0
        : (axis.at(spread.late()) - spread.early().map(axis::at).orElse(1.0)) * axis.days();
  }

  private static String point(double at, double y) {
    return Svg.number(at * FIELD) + "," + Svg.number(y);
  }

  /** Rising from the early to the late first day, falling from the early to the late last. */
  private void flowers() {
    Optional<DateSpread> from = spread(Event.FIRST_FRUITING);
    Optional<DateSpread> to = spread(Event.LAST_SET);
    if (from.isEmpty() || to.isEmpty()) {
      return;
    }
    double begins = axis.at(from.get().early());
    double all = axis.at(from.get().late());
    double fewer = axis.at(to.get().early());
    double none = axis.at(to.get().late());
    if (fewer < all) {
      all = (all + fewer) / 2;
      fewer = all;
    }
    String points =
        String.join(
            " ",
            point(begins, MIDDLE),
            point(all, MIDDLE - FLOWERS),
            point(fewer, MIDDLE - FLOWERS),
            point(none, MIDDLE),
            point(fewer, MIDDLE + FLOWERS),
            point(all, MIDDLE + FLOWERS));
    svg.leaf(
        "polygon",
        "class",
        planting.sureOfFlowers() ? "flowers" : "flowers unsure",
        "points",
        points);
  }

  /** Flowers that come too late to ripen. */
  private void late() {
    spread(Event.LAST_SET)
        .ifPresent(
            set ->
                spread(Event.BLOOM_ENDS)
                    .ifPresent(ends -> late(axis.usual(set), axis.usual(ends))));
  }

  private void late(double from, double to) {
    if (to > from) {
      svg.leaf(
          "rect",
          "class",
          "late",
          "x",
          from * FIELD,
          "y",
          MIDDLE - FLOWERS + 2,
          "width",
          (to - from) * FIELD,
          "height",
          2 * FLOWERS - 4);
    }
  }

  private void males() {
    Optional<DateSpread> from = spread(Event.FIRST_MALE);
    Optional<DateSpread> to = spread(Event.FIRST_FRUITING);
    if (from.isPresent() && to.isPresent()) {
      line("males", axis.usual(from.get()), axis.usual(to.get()), MIDDLE);
    }
  }

  private void line(String kind, double from, double to, double y) {
    svg.leaf(
        "line",
        "class",
        kind,
        "x1",
        Svg.percent(from),
        "x2",
        Svg.percent(Math.max(from, to)),
        "y1",
        y,
        "y2",
        y);
  }

  private void ripe() {
    boolean seed = planting.planting().seedSaved();
    Optional<DateSpread> ripe = spread(Event.RIPE);
    Optional<DateSpread> full = seed ? spread(Event.SEED_RIPE) : Optional.empty();
    ripe.ifPresent(r -> whisker(r, "M0 -6 6 0 0 6 -6 0Z", "ripe"));
    full.ifPresent(s -> whisker(s, "M0 -2.6 2.6 0 0 2.6 -2.6 0Z", "seed"));
  }

  private void whisker(DateSpread spread, String shape, String kind) {
    if (spread.early().isEmpty() && spread.usual().isEmpty()) {
      return;
    }
    double early = axis.usual(spread);
    line("whisker", spread.early().map(axis::at).orElse(early), axis.at(spread.late()), MIDDLE);
    symbol(spread.usual().map(axis::at).orElse(early), MIDDLE, shape, kind);
  }

  private void mark(Event event, String shape, String kind) {
    spread(event)
        .flatMap(DateSpread::usual)
        .ifPresent(d -> symbol(axis.at(d), MIDDLE, shape, kind));
  }

  private void symbol(double at, double y, String shape, String kind) {
    svg.open("svg", "class", "at", "x", Svg.percent(at), "y", y, "width", 1, "height", 1);
    svg.leaf("path", "class", kind, "d", shape);
    svg.close();
  }

  /** Teeth under the flowers where their seed is in danger, dots where pollen is only about. */
  private void shed(List<Exposure> received, Bloom bloom) {
    boolean danger = received.stream().anyMatch(Exposure::intoSeed);
    received.stream()
        .filter(e -> e.intoSeed() == danger)
        .flatMap(e -> bloom.together(e).stream())
        .reduce(Bloom.Window::with)
        .ifPresent(
            w -> line(danger ? "danger" : "about", axis.at(w.from()), axis.at(w.to()), HEIGHT - 7));
  }

  private Optional<DateSpread> spread(Event event) {
    return planting.date(event).map(Reasoned::value);
  }
}
