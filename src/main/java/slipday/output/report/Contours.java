package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import slipday.genetics.Aim;

/**
 * Lines along which seed is equally short of two aims.
 *
 * <p>What a trait is short of grows evenly with the distance from its aim, and is nothing where the
 * aim is met. So the lines are straight, at right angles to the weights, and bend only where an aim
 * or the end of a scale of points lies; between those bends they are reckoned exactly.
 *
 * @param levels those that cross the drawing, the nearest to the aims first
 */
record Contours(List<Level> levels) {
  private static final double HAIR = 1e-9;
  private static final int ABOUT = 12;

  /** A point, in the two traits' units. */
  record Point(double x, double y) {}

  record Segment(Point from, Point to) {}

  /**
   * @param label how far from both aims together, as the index counts it; above 0
   */
  record Level(String label, List<Segment> segments) {}

  /** A part of the drawing in which nothing bends. */
  private record Cell(double west, double east, double south, double north) {}

  static Contours of(Aim across, Aim up, Ticks x, Ticks y) {
    List<Double> columns = bends(across, x);
    List<Double> rows = bends(up, y);
    double most = 0;
    double least = Double.POSITIVE_INFINITY;
    for (double column : columns) {
      for (double row : rows) {
        double here = shortBy(across, up, column, row);
        most = Math.max(most, here);
        least = Math.min(least, here);
      }
    }
    if (!(most - least > HAIR)) {
      return new Contours(List.of());
    }
    Ticks ticks = Ticks.over(least, most, ABOUT);
    List<Level> levels = new ArrayList<>();
    for (double level : ticks.values()) {
      if (level > least + HAIR && level < most - HAIR) {
        List<Segment> segments = segments(across, up, columns, rows, level);
        levels.add(new Level(ticks.label(level), segments));
      }
    }
    return new Contours(List.copyOf(levels));
  }

  private static double shortBy(Aim across, Aim up, double x, double y) {
    return -across.worth(x) - up.worth(y);
  }

  private static List<Double> bends(Aim aim, Ticks axis) {
    TreeSet<Double> bends = new TreeSet<>(List.of(axis.low(), axis.high()));
    Stream.concat(
            Stream.of(aim.low(), aim.high()).flatMap(o -> o.stream()),
            aim.scale().stream().flatMap(s -> Stream.of(s.low(), s.high())))
        .filter(b -> b > axis.low() && b < axis.high())
        .forEach(bends::add);
    return List.copyOf(bends);
  }

  private static List<Segment> segments(
      Aim across, Aim up, List<Double> columns, List<Double> rows, double level) {
    List<Segment> segments = new ArrayList<>();
    for (int i = 1; i < columns.size(); i++) {
      for (int j = 1; j < rows.size(); j++) {
        Cell cell = new Cell(columns.get(i - 1), columns.get(i), rows.get(j - 1), rows.get(j));
        List<Point> ends = ends(across, up, cell, level);
        if (ends.size() == 2) {
          segments.add(new Segment(ends.get(0), ends.get(1)));
        }
      }
    }
    return segments.stream().distinct().toList();
  }

  /** Where the line enters and leaves a cell; nothing where it does not, or is all of it. */
  private static List<Point> ends(Aim across, Aim up, Cell cell, double level) {
    List<Point> corners =
        List.of(
            new Point(cell.west(), cell.south()),
            new Point(cell.east(), cell.south()),
            new Point(cell.east(), cell.north()),
            new Point(cell.west(), cell.north()));
    List<Point> ends = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point one = corners.get(i);
      Point next = corners.get((i + 1) % corners.size());
      double here = shortBy(across, up, one.x(), one.y()) - level;
      double there = shortBy(across, up, next.x(), next.y()) - level;
      if (here * there < 0) {
        double share = here / (here - there);
        ends.add(
            new Point(
                one.x() + share * (next.x() - one.x()), one.y() + share * (next.y() - one.y())));
      } else if (here == 0) {
        ends.add(one);
      }
    }
    return ends;
  }
}
