package slipday.output.report;

import java.time.LocalDate;
import java.util.Optional;
import slipday.season.DateSpread;
import slipday.season.MarkedFruit;

/** One marked fruit over the calendar: from its pollination to the days it may be ripe on. */
final class FruitBar {
  private static final int HEIGHT = 26;
  private static final double MIDDLE = 13;

  private FruitBar() {}

  static Svg of(MarkedFruit fruit, Axis axis) {
    DateSpread spread = fruit.expected().value();
    double from = axis.at(fruit.pollinated());
    double early = spread.early().map(axis::at).orElse(1.0);
    double late = axis.at(spread.late());
    Svg svg = new Svg();
    svg.open("svg", "class", "bar", "width", "100%", "height", HEIGHT, "aria-hidden", "true");
    line(svg, "vine", from, early);
    line(svg, "due", early, late);
    at(svg, from, "M0 -5V5", "tick");
    Optional<LocalDate> usual = spread.usual();
    usual.ifPresent(d -> at(svg, axis.at(d), "M0 -6 6 0 0 6 -6 0Z", "ripe"));
    return svg.close();
  }

  private static void line(Svg svg, String kind, double from, double to) {
    svg.leaf(
        "line",
        "class",
        kind,
        "x1",
        Svg.percent(from),
        "x2",
        Svg.percent(Math.max(from, to)),
        "y1",
        MIDDLE,
        "y2",
        MIDDLE);
  }

  private static void at(Svg svg, double at, String shape, String kind) {
    svg.open("svg", "class", "at", "x", Svg.percent(at), "y", MIDDLE, "width", 1, "height", 1);
    svg.leaf("path", "class", kind, "d", shape);
    svg.close();
  }
}
