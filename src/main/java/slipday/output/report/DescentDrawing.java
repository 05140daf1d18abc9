package slipday.output.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slipday.output.report.Layers.Point;

/**
 * Descent from above to below: seed in boxes, fruits in round ones between; full lines from the
 * seed parent, broken ones from the pollen parent.
 */
final class DescentDrawing {
  private static final double MARGIN = 8;
  private static final double GAP = 26;
  private static final double LETTER = 6.7;
  private static final double LINE = 15;

  /** How far the boxes stand out behind one that stands for several. */
  private static final double BEHIND = 4;

  private final List<Box> boxes = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();
  private final List<Part> parts = new ArrayList<>();

  /** What a box is, for the style. */
  enum Kind {
    SEED,
    SEVERAL,
    FRUITS,
    UNKNOWN
  }

  /** What a line says. */
  enum Role {
    SEED_PARENT("mother"),
    POLLEN_PARENT("father"),
    TAKEN("taken");

    private final String style;

    Role(String style) {
      this.style = style;
    }
  }

  /**
   * @param thing in the book of reasons; empty where there is nothing to ask
   * @param href where its link leads without a script
   * @param label for who can't see it
   */
  record Box(Kind kind, List<String> text, String thing, String href, String label) {
    double width() {
      int letters = text.stream().mapToInt(t -> t.codePointCount(0, t.length())).max().orElse(0);
      return letters * LETTER + (kind == Kind.FRUITS ? 22 : 16) + behind();
    }

    double height() {
      return text.size() * LINE + (kind == Kind.SEED || kind == Kind.SEVERAL ? 10 : 6) + behind();
    }

    double behind() {
      return kind == Kind.SEVERAL ? BEHIND : 0;
    }
  }

  private record Line(int from, int to, Role role) {}

  /** Boxes that hang together, placed. */
  private static final class Part {
    private final Layers layers = new Layers();
    private final Map<Integer, Integer> boxes = new HashMap<>();
    private final Map<Integer, Integer> lines = new HashMap<>();
  }

  /** The number of the box, from 0. */
  int box(Box box) {
    boxes.add(box);
    return boxes.size() - 1;
  }

  void line(int from, int to, Role role) {
    lines.add(new Line(from, to, role));
  }

  /** To be called once, when all boxes and lines are there. */
  void place() {
    int[] root = new int[boxes.size()];
    for (int i = 0; i < root.length; i++) {
      root[i] = i;
    }
    lines.forEach(l -> root[root(root, l.from())] = root(root, l.to()));
    Map<Integer, Part> byRoot = new java.util.LinkedHashMap<>();
    List<Part> partOf = new ArrayList<>();
    int[] node = new int[boxes.size()];
    for (int i = 0; i < root.length; i++) {
      Part part = byRoot.computeIfAbsent(root(root, i), r -> new Part());
      node[i] = part.layers.node(boxes.get(i).width(), boxes.get(i).height());
      part.boxes.put(i, node[i]);
      partOf.add(part);
    }
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      Part part = partOf.get(line.from());
      part.lines.put(i, part.layers.edge(node[line.from()], node[line.to()]));
    }
    parts.addAll(byRoot.values());
    parts.forEach(p -> p.layers.place());
  }

  private static int root(int[] roots, int of) {
    int root = of;
    while (roots[root] != root) {
      root = roots[root];
    }
    return root;
  }

  /**
   * @param kind of the drawing, for the style
   * @param room px; a part that is wider makes the drawing wider
   */
  Svg draw(String kind, double room) {
    Svg inner = new Svg();
    double x = MARGIN;
    double y = MARGIN;
    double row = 0;
    double width = 0;
    for (Part part : parts) {
      if (x > MARGIN && x + part.layers.width() + MARGIN > room) {
        x = MARGIN;
        y += row + GAP;
        row = 0;
      }
      String at = "translate(" + Svg.number(x) + " " + Svg.number(y) + ")";
      inner.open("g", "transform", at);
      part.lines.forEach((line, way) -> line(inner, lines.get(line), part.layers.way(way)));
      part.boxes.forEach((box, node) -> box(inner, boxes.get(box), part.layers.corner(node)));
      inner.close();
      x += part.layers.width() + GAP;
      row = Math.max(row, part.layers.height());
      width = Math.max(width, x - GAP + MARGIN);
    }
    double height = y + row + MARGIN;
    Svg svg = new Svg();
    svg.open(
        "svg",
        "class",
        "descent " + kind,
        "width",
        width,
        "height",
        height,
        "viewBox",
        "0 0 " + Svg.number(width) + " " + Svg.number(height),
        "role",
        "group",
        "aria-label",
        "Descent, from parents above to their seed below");
    return svg.add(inner).close();
  }

  private static void line(Svg svg, Line line, List<Point> way) {
    StringBuilder path = new StringBuilder("M");
    way.forEach(p -> path.append(path.length() > 1 ? "L" : "").append(at(p)));
    svg.leaf("path", "class", line.role().style, "d", path);
    if (line.role() == Role.TAKEN) {
      Point end = way.get(way.size() - 1);
      svg.leaf("path", "class", "tip", "d", "M" + at(end) + "l-4 -7h8Z");
    }
  }

  private static String at(Point p) {
    return Svg.number(p.x()) + " " + Svg.number(p.y());
  }

  private static void box(Svg svg, Box box, Point corner) {
    if (!box.thing().isEmpty()) {
      // Who speaks to the page names a box by what is seen in it, so the label begins with that.
      String label = String.join(" ", box.text()) + ": " + box.label();
      svg.open("a", "href", box.href(), "data-thing", box.thing(), "aria-label", label);
    }
    double x = corner.x();
    double y = corner.y();
    double width = box.width() - box.behind();
    double height = box.height() - box.behind();
    if (box.kind() == Kind.SEVERAL) {
      rectangle(svg, "box", x + BEHIND, y + BEHIND, width, height, 1);
    }
    switch (box.kind()) {
      case SEED, SEVERAL -> rectangle(svg, "box", x, y, width, height, 1);
      case FRUITS -> rectangle(svg, "fruits", x, y, width, height, height / 2);
      case UNKNOWN -> rectangle(svg, "unknown", x, y, width, height, 1);
    }
    for (int i = 0; i < box.text().size(); i++) {
      String kind = i == 0 ? "name" : "more";
      double baseline = y + (height - box.text().size() * LINE) / 2 + LINE * (i + 0.76);
      svg.open("text", "class", kind, "x", x + width / 2, "y", baseline);
      svg.text(box.text().get(i)).close().text(" ");
    }
    if (!box.thing().isEmpty()) {
      svg.close();
    }
  }

  private static void rectangle(
      Svg svg, String kind, double x, double y, double width, double height, double round) {
    svg.leaf("rect", "class", kind, "x", x, "y", y, "width", width, "height", height, "rx", round);
  }
}
