package slipday.output.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Bed;
import slipday.garden.Outsider;
import slipday.measure.Reasoned;
import slipday.output.Lines;
import slipday.output.report.BedLayout.Block;
import slipday.output.report.BedLayout.Dot;

/** The garden from above, north at the top, to scale: beds as strips, plants as dots. */
final class GardenDrawing {
  private static final double MARGIN = 14;
  private static final double HEAD = 24;
  private static final double FOOT = 44;
  private static final double LINE = 17;
  private static final double BIGGEST_SCALE = 60;
  private static final double LARGEST_DOT = 7;

  /** px that a letter of a bed's title takes at most. */
  private static final double LETTER = 7.2;

  /** Plants of one planting beyond which dots would be a blot. */
  private static final int MOST_DOTS = 1500;

  private final GardenGround ground;
  private final Ids ids;
  private final WhyBook book;
  private final Initials initials;
  private final double scale;
  private final double width;
  private final double head;
  private final double height;
  private final Svg svg = new Svg();

  /**
   * @param width of the drawing, px
   */
  GardenDrawing(GardenGround ground, Ids ids, WhyBook book, Initials initials, double width) {
    this.ground = ground;
    this.ids = ids;
    this.book = book;
    this.initials = initials;
    this.width = width;
    this.scale = Math.min(BIGGEST_SCALE, (width - 2 * MARGIN) / ground.length());
    this.head = HEAD + LINE * ground.outsiders(false);
    this.height = head + ground.width() * scale + FOOT + LINE * ground.outsiders(true);
  }

  private double x(double east) {
    return MARGIN + (east - ground.west()) * scale;
  }

  private double y(double north) {
    return head + (ground.north() - north) * scale;
  }

  /**
   * @param kind of the drawing, for the style
   */
  Svg draw(String kind) {
    svg.open(
        "svg",
        "class",
        "garden " + kind,
        "viewBox",
        "0 0 " + Svg.number(width) + " " + Svg.number(height),
        "role",
        "group",
        "aria-label",
        "The garden from above, north at the top");
    for (Bed bed : ground.beds()) {
      trail(bed);
    }
    for (Bed bed : ground.beds()) {
      bed(bed);
    }
    ground.gaps().forEach(this::gap);
    outsiders();
    compass();
    return svg.close();
  }

  private void trail(Bed bed) {
    if (bed.trail() > 0) {
      rect("trail", east(bed) - bed.trail(), north(bed) - bed.trail(), grown(bed));
    }
  }

  private static Bed.Size grown(Bed bed) {
    Bed.Size size = bed.size().orElseThrow();
    return new Bed.Size(size.length() + 2 * bed.trail(), size.width() + 2 * bed.trail());
  }

  private static double east(Bed bed) {
    return bed.corner().orElseThrow().east();
  }

  private static double north(Bed bed) {
    return bed.corner().orElseThrow().north();
  }

  private void rect(String kind, double east, double north, Bed.Size size) {
    svg.leaf(
        "rect",
        "class",
        kind,
        "x",
        x(east),
        "y",
        y(north + size.width()),
        "width",
        size.length() * scale,
        "height",
        size.width() * scale);
  }

  private void bed(Bed bed) {
    Bed.Size size = bed.size().orElseThrow();
    String title = Lines.clean(bed.title());
    String shown = shortened(title, Math.max(60, size.length() * scale));
    String cut = shown.equals(title) ? "" : ": " + title;
    link(ids.of(bed), book.line(bed.span()), shown + cut + ", a bed");
    rect("bed", east(bed), north(bed), size);
    svg.open("text", "class", "bed", "x", x(east(bed)), "y", y(north(bed) + size.width()) - 5);
    svg.text(shown).close().close();
    ground.layout(bed).blocks().forEach(block -> block(bed, block));
  }

  /** To so many px. */
  private static String shortened(String title, double room) {
    return Lines.shortened(title, (int) Math.max(2, room / LETTER));
  }

  private void link(String thing, String line, String label) {
    svg.open("a", "href", "#L" + line, "data-thing", thing, "aria-label", label);
  }

  private void block(Bed bed, Block block) {
    String shown = initials.of(block.planting());
    String name = shown + ", " + block.planting().line().title();
    link(
        ids.of(block.planting()),
        book.line(block.planting().span()),
        name + ", " + Lines.count(block.plants().size(), "plant") + " in " + bed.title());
    double east = east(bed) + block.east();
    double north = north(bed) + block.north();
    rect("ground", east, north, new Bed.Size(block.length(), block.width()));
    if (block.plants().size() <= MOST_DOTS) {
      dots(bed, block);
    }
    svg.open("text", "class", "initials", "x", x(east) + 1, "y", y(north) + 13);
    svg.text(shown).close().close();
  }

  /** Every plant as a point with a round end: one path for all. */
  private void dots(Bed bed, Block block) {
    StringBuilder path = new StringBuilder();
    for (Dot dot : block.plants()) {
      path.append('M').append(Svg.number(x(east(bed) + dot.east()))).append(' ');
      path.append(Svg.number(y(north(bed) + dot.north()))).append("h0");
    }
    double spacing = Math.sqrt(block.length() * block.width() / block.plants().size());
    double size = Math.max(1.5, Math.min(LARGEST_DOT, spacing * scale * 0.35));
    svg.leaf("path", "class", "plants", "stroke-width", size, "d", path);
  }

  private void gap(GardenGround.Gap gap) {
    double x1 = x(gap.fromEast());
    double y1 = y(gap.fromNorth());
    double x2 = x(gap.toEast());
    double y2 = y(gap.toNorth());
    svg.leaf("line", "class", "gap", "x1", x1, "y1", y1, "x2", x2, "y2", y2);
    svg.open("text", "class", "gap", "x", (x1 + x2) / 2 + 5, "y", (y1 + y2) / 2 + 4);
    svg.text(ground.units().gap(gap.metres())).close();
  }

  /** Pollen from outside, where its side is told: over or under the garden, an arrow its way. */
  private void outsiders() {
    double above = LINE - 4;
    double below = head + ground.width() * scale + LINE + 10;
    for (Map.Entry<String, List<Outsider>> side : ground.outsiders().entrySet()) {
      double turn = GardenGround.turn(side.getKey());
      boolean under = turn > 90 && turn < 270;
      for (Outsider outsider : side.getValue()) {
        outsider(outsider, turn, under ? below : above);
        above += under ? 0 : LINE;
        below += under ? LINE : 0;
      }
    }
  }

  private void outsider(Outsider outsider, double turn, double y) {
    boolean right = turn > 0 && turn < 180;
    boolean middle = turn % 180 == 0;
    double x = middle ? width / 2 : right ? width - MARGIN : MARGIN;
    String title = Lines.clean(outsider.title() + distance(outsider.distance()));
    String shown = shortened(title, width - 3 * MARGIN);
    String cut = shown.equals(title) ? "" : ": " + title;
    link(ids.of(outsider), book.line(outsider.span()), shown + cut + ", pollen from outside");
    String at = "translate(" + Svg.number(x) + " " + Svg.number(y) + ")";
    svg.leaf(
        "path",
        "class",
        "arrow",
        "d",
        "M-5 5 0 -6 5 5Z",
        "transform",
        at + " rotate(" + Svg.number(turn) + ")");
    svg.open(
        "text",
        "class",
        "outsider",
        "x",
        right ? x - 12 : x + 12,
        "y",
        y + 4,
        "text-anchor",
        right ? "end" : "start");
    svg.text(shown);
    svg.close().close();
  }

  private String distance(Optional<Reasoned<Double>> distance) {
    return distance.map(d -> ", " + ground.units().wholeDistance(d.value())).orElse("");
  }

  private void compass() {
    double metres = ground.ruler();
    double y = height - 12;
    svg.leaf(
        "path",
        "class",
        "ruler",
        "d",
        "M"
            + Svg.number(MARGIN)
            + " "
            + Svg.number(y - 4)
            + "v4h"
            + Svg.number(metres * scale)
            + "v-4");
    svg.open("text", "class", "ruler", "x", MARGIN + metres * scale + 6, "y", y + 3);
    svg.text(ground.units().gap(metres)).close();
    svg.open("text", "class", "ruler", "x", width - MARGIN, "y", y + 3, "text-anchor", "end");
    svg.text("N ↑").close();
  }
}
