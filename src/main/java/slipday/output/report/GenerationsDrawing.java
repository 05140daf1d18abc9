package slipday.output.report;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import slipday.choice.Progress;
import slipday.choice.Progress.Each;
import slipday.choice.Progress.Grown;
import slipday.measure.Quantity;
import slipday.output.Lines;
import slipday.output.ProgressText;

/** One trait of a line over its generations: a column for each as it was grown. */
final class GenerationsDrawing {
  private static final double BOTTOM = 206;
  private static final double BELOW = 52;
  private static final double HALF = 14;
  private static final double DOT = 6;
  private static final double WIDEST = 16;
  private static final int MOST_LETTERS = 9;

  /** More plants than these are not drawn one by one. */
  static final int MOST_DOTS = 40;

  /** A stand and the names it goes by. */
  record Column(Grown grown, String season, String thing, String told) {}

  private final Progress.Trend trend;
  private final List<Column> columns;
  private final Svg svg = new Svg();
  private final Ticks ticks;

  /**
   * @param columns the stands that are drawn, in their order
   */
  GenerationsDrawing(Progress.Trend trend, List<Column> columns) {
    this.trend = trend;
    this.columns = columns;
    double low = figures().min().orElse(0);
    double high = figures().max().orElse(1);
    this.ticks = PlotFrame.ticks(low, high, trend.wanted());
  }

  private DoubleStream figures() {
    DoubleStream own =
        columns.stream()
            .map(Column::grown)
            .flatMapToDouble(
                g -> {
                  double spread = g.deviation().orElse(0.0);
                  DoubleStream ends = DoubleStream.of(g.mean() - spread, g.mean() + spread);
                  return DoubleStream.concat(
                      DoubleStream.concat(ends, DoubleStream.of(g.bestMean())),
                      dots(g).stream().mapToDouble(Each::mean));
                });
    return DoubleStream.concat(own, trend.checks().stream().mapToDouble(Grown::mean));
  }

  private static List<Each> dots(Grown grown) {
    return grown.each().size() > MOST_DOTS ? List.of() : grown.each();
  }

  boolean reaches() {
    return PlotFrame.reaches(ticks, trend.wanted());
  }

  Svg svg(String label) {
    PlotFrame frame = new PlotFrame(svg, "columns", BOTTOM, BELOW, label);
    Scale y = frame.up(ticks);
    frame.drawUp(y, PlotFrame.title(trend.trait(), trend.wanted()));
    trend.wanted().ifPresent(a -> frame.wantedUp(y, a));
    trend.steps().forEach(s -> step(s, y));
    for (int i = 0; i < columns.size(); i++) {
      column(columns.get(i), middle(i), y);
    }
    return svg.close();
  }

  private double middle(int column) {
    double width = (PlotFrame.RIGHT - PlotFrame.LEFT) / columns.size();
    return PlotFrame.LEFT + width * (column + 0.5);
  }

  /** From one generation to the next, where both are drawn: between stands of one season if any. */
  private void step(Progress.Step step, Scale y) {
    int from = -1;
    int to = -1;
    int apart = Integer.MAX_VALUE;
    for (int i = 0; i < columns.size(); i++) {
      for (int j = 0; j < columns.size(); j++) {
        Grown one = columns.get(i).grown();
        Grown next = columns.get(j).grown();
        int years = Math.abs(next.year() - one.year());
        boolean these = one.generation().equals(step.from()) && next.generation().equals(step.to());
        if (these && years < apart) {
          from = i;
          to = j;
          apart = years;
        }
      }
    }
    if (from < 0) {
      return;
    }
    double right = from < to ? 1 : -1;
    double x1 = middle(from) + right * (HALF + 2);
    double x2 = middle(to) - right * (HALF + 2);
    double y1 = y.at(columns.get(from).grown().mean());
    double y2 = y.at(columns.get(to).grown().mean());
    String kind = step.gain().isPresent() && apart == 0 ? "gain" : "gain untold";
    svg.leaf("line", "class", kind, "x1", x1, "x2", x2, "y1", y1, "y2", y2);
    String gain = step.gain().map(g -> ProgressText.signed(g.value(), trend.trait())).orElse("?");
    double above = Math.min(y1, y2) - 6;
    svg.open("text", "class", "tag", "x", (x1 + x2) / 2, "y", above).text(gain).close();
  }

  private void column(Column column, double middle, Scale y) {
    Grown grown = column.grown();
    String place = "translate(" + Svg.number(middle) + " 0)";
    svg.open("g", "class", "mark", "data-thing", column.thing(), "transform", place);
    svg.open("title").text(column.told()).close();
    double half = Math.min(WIDEST + DOT, (PlotFrame.RIGHT - PlotFrame.LEFT) / columns.size() / 2);
    double room = BOTTOM - PlotFrame.TOP;
    svg.leaf(
        "rect", "class", "hit", "x", -half, "y", PlotFrame.TOP, "width", 2 * half, "height", room);
    double mean = y.at(grown.mean());
    grown.deviation().ifPresent(d -> spread(y.at(grown.mean() - d), y.at(grown.mean() + d)));
    double best = dots(grown, y);
    svg.leaf("path", "class", "sign", "d", stroke(mean, HALF));
    grown
        .differential()
        .ifPresent(
            d ->
                svg.leaf(
                    "path", "class", "parents", "d", stroke(y.at(grown.mean() + d), WIDEST + 2)));
    svg.leaf("circle", "class", "best", "cx", best, "cy", y.at(grown.bestMean()), "r", DOT);
    checks(grown).forEach(c -> check(y.at(c.mean())));
    svg.close();
    label(middle, 16, grown.generation(), "generation");
    label(middle, 30, column.season(), "");
    label(middle, 44, "F " + Quantity.fixed(grown.inbreeding(), 2), "");
  }

  private Stream<Grown> checks(Grown grown) {
    return trend.checks().stream().filter(c -> c.year() == grown.year());
  }

  private static String stroke(double y, double half) {
    return "M" + Svg.number(-half) + " " + Svg.number(y) + "H" + Svg.number(half);
  }

  private void spread(double low, double high) {
    double x = -WIDEST - 3;
    String ends = "M" + Svg.number(x - 3) + " " + Svg.number(low) + "h6m-3 0V" + Svg.number(high);
    svg.leaf("path", "class", "spread", "d", ends + "m-3 0h6");
  }

  /** Those that are alike stand beside one another. Tells how far aside the best one stands. */
  private double dots(Grown grown, Scale y) {
    List<Each> all = dots(grown);
    List<Double> up = all.stream().map(e -> y.at(e.mean())).toList();
    List<Double> aside = Swarm.aside(up, DOT);
    double best = 0;
    for (int i = 0; i < all.size(); i++) {
      double x = Math.max(-WIDEST, Math.min(WIDEST, aside.get(i)));
      String kind = all.get(i).parent() ? "dot parent" : "dot";
      svg.leaf("circle", "class", kind, "cx", x, "cy", up.get(i), "r", DOT / 2 - 0.5);
      best = all.get(i).plant().equals(grown.best()) ? x : best;
    }
    return best;
  }

  private void check(double y) {
    double x = WIDEST + 4;
    String at = "M" + Svg.number(x) + " " + Svg.number(y - 4);
    svg.leaf("path", "class", "check", "d", at + "l4.5 8h-9z");
  }

  private void label(double x, double below, String text, String kind) {
    svg.open("text", "class", kind, "x", x, "y", BOTTOM + below, "text-anchor", "middle")
        .text(Lines.shortened(text, MOST_LETTERS))
        .close();
  }
}
