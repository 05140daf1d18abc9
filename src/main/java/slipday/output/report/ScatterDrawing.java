package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.genetics.Aim;

/** Candidates by two of their traits, or along one. */
final class ScatterDrawing {
  private static final double BOTTOM = 236;

  /** Of a plot with one axis. */
  private static final double LOW_BOTTOM = 108;

  private static final double SIZE = 13;

  private static final double LETTER = 6.4;

  /**
   * An axis.
   *
   * @param title the trait with its unit
   * @param aim where its figures are wanted
   */
  record Side(String title, Optional<Aim> aim) {}

  private final List<Side> sides;
  private final List<Mark> marks;
  private final List<Ticks> ticks;
  private final Optional<Contours> contours;
  private final Svg svg = new Svg();

  /**
   * @param sides one or two
   * @param weighed whether the marks' figures are what the index is made of
   */
  ScatterDrawing(List<Side> sides, List<Mark> marks, boolean weighed) {
    this.sides = sides;
    this.marks = marks;
    List<Ticks> all = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      all.add(ticks(sides.get(i), i));
    }
    this.ticks = all;
    this.contours = weighed && sides.size() == 2 ? contours() : Optional.empty();
  }

  private Optional<Contours> contours() {
    Optional<Aim> x = sides.get(0).aim().filter(a -> a.weight() > 0);
    Optional<Aim> y = sides.get(1).aim().filter(a -> a.weight() > 0);
    return x.isPresent() && y.isPresent()
        ? Optional.of(Contours.of(x.get(), y.get(), ticks.get(0), ticks.get(1)))
        : Optional.empty();
  }

  /** The lines of equal worth it has; none where a trait weighs nothing. */
  Optional<Contours> drawn() {
    return contours;
  }

  /** Whether an axis reaches to where figures are wanted. */
  boolean reaches(int side) {
    return PlotFrame.reaches(ticks.get(side), sides.get(side).aim());
  }

  private Ticks ticks(Side side, int i) {
    double low = figures(i).mapToDouble(f -> Math.min(f.low(), f.at())).min().orElse(0);
    double high = figures(i).mapToDouble(f -> Math.max(f.high(), f.at())).max().orElse(1);
    return PlotFrame.ticks(low, high, side.aim());
  }

  private Stream<Mark.Figure> figures(int side) {
    return marks.stream().map(m -> m.figures().get(side));
  }

  Svg svg(String label) {
    boolean flat = sides.size() == 1;
    PlotFrame frame = new PlotFrame(svg, "", flat ? LOW_BOTTOM : BOTTOM, PlotFrame.BELOW, label);
    Scale x = PlotFrame.across(ticks.get(0));
    frame.drawAcross(x, sides.get(0).title());
    sides.get(0).aim().ifPresent(a -> frame.wantedAcross(x, a));
    List<Double> across = marks.stream().map(m -> x.at(m.figures().get(0).at())).toList();
    if (flat) {
      List<Double> aside = Swarm.aside(across, SIZE);
      double middle = (PlotFrame.TOP + LOW_BOTTOM) / 2;
      marks(across, aside.stream().map(a -> middle + a).toList(), List.of(x));
      return svg.close();
    }
    Scale y = frame.up(ticks.get(1));
    frame.drawUp(y, sides.get(1).title());
    sides.get(1).aim().ifPresent(a -> frame.wantedUp(y, a));
    contours.ifPresent(c -> c.levels().forEach(level -> level(level, x, y)));
    marks(across, marks.stream().map(m -> y.at(m.figures().get(1).at())).toList(), List.of(x, y));
    return svg.close();
  }

  private void level(Contours.Level level, Scale x, Scale y) {
    StringBuilder path = new StringBuilder();
    double right = 0;
    double above = 0;
    for (Contours.Segment s : level.segments()) {
      path.append('M').append(point(s.from(), x, y)).append('L').append(point(s.to(), x, y));
      for (Contours.Point end : List.of(s.from(), s.to())) {
        if (x.at(end.x()) > right) {
          right = x.at(end.x());
          above = y.at(end.y());
        }
      }
    }
    svg.leaf("path", "class", "equal", "d", path);
    boolean atEdge = right > PlotFrame.RIGHT - 1;
    svg.open(
            "text",
            "class",
            "equal",
            "x",
            atEdge ? PlotFrame.RIGHT - 2 : right,
            "y",
            Math.max(PlotFrame.TOP + 9, above - 3),
            "text-anchor",
            "end")
        .text(level.label())
        .close();
  }

  private static String point(Contours.Point p, Scale x, Scale y) {
    return Svg.number(x.at(p.x())) + " " + Svg.number(y.at(p.y()));
  }

  /** Those that are chosen lie on top. */
  private void marks(List<Double> across, List<Double> up, List<Scale> scales) {
    List<double[]> taken = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      taken.add(box(across.get(i), up.get(i), SIZE / 2, SIZE));
    }
    for (int i = marks.size() - 1; i >= 0; i--) {
      Mark mark = marks.get(i);
      String place = "translate(" + Svg.number(across.get(i)) + " " + Svg.number(up.get(i)) + ")";
      String kind = "mark " + mark.kind().id();
      svg.open("g", "class", kind, "data-thing", mark.thing(), "transform", place);
      svg.open("title").text(mark.told()).close();
      StringBuilder sure = new StringBuilder();
      for (int side = 0; side < scales.size(); side++) {
        Mark.Figure f = mark.figures().get(side);
        Scale scale = scales.get(side);
        String from = Svg.number(scale.at(f.low()) - scale.at(f.at()));
        String to = Svg.number(scale.at(f.high()) - scale.at(f.at()));
        sure.append(side == 0 ? "M" + from + " 0H" + to : "M0 " + from + "V" + to);
      }
      svg.leaf("path", "class", "sure", "d", sure);
      svg.leaf("path", "class", "sign", "d", mark.kind().shape());
      svg.close();
    }
    for (int i = 0; i < marks.size(); i++) {
      if (!marks.get(i).tags().isEmpty()) {
        tag(marks.get(i).tags(), across.get(i), up.get(i), taken);
      }
    }
  }

  private static double[] box(double x, double middle, double half, double height) {
    return new double[] {x - half, middle - height / 2, x + half, middle + height / 2};
  }

  /** Beside its mark where nothing else is, or else where it lies on as little as can be. */
  private void tag(String tags, double x, double y, List<double[]> taken) {
    double half = tags.codePointCount(0, tags.length()) * LETTER / 2;
    double[][] places = {{9 + half, 0}, {-9 - half, 0}, {0, -14}, {0, 14}, {half, -15}, {half, 15}};
    double[] best = places[0];
    double least = Double.POSITIVE_INFINITY;
    for (double[] place : places) {
      double[] box = box(x + place[0], y + place[1], half, 12);
      double covered = taken.stream().mapToDouble(other -> covered(box, other)).sum();
      boolean outside = box[0] < PlotFrame.LEFT || box[2] > PlotFrame.WIDTH;
      double cost = covered + (outside ? 1000 : 0);
      if (cost < least) {
        least = cost;
        best = place;
      }
    }
    taken.add(box(x + best[0], y + best[1], half, 12));
    double left = x + best[0];
    double base = y + best[1] + 4;
    svg.open("text", "class", "tag", "x", left, "y", base, "aria-hidden", "true");
    svg.text(tags).close();
  }

  private static double covered(double[] one, double[] other) {
    double wide = Math.min(one[2], other[2]) - Math.max(one[0], other[0]);
    double high = Math.min(one[3], other[3]) - Math.max(one[1], other[1]);
    return Math.max(0, wide) * Math.max(0, high);
  }
}
