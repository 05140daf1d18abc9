package slipday.output.report;

import java.util.Optional;
import slipday.choice.Trait;
import slipday.genetics.Aim;
import slipday.measure.Quantity;
import slipday.output.Lines;

/** The axes of a plot, and where on them figures are wanted. */
final class PlotFrame {
  static final double WIDTH = 340;
  static final double LEFT = 40;
  static final double RIGHT = 328;
  static final double TOP = 26;

  /** Room below the plot for ticks and a title. */
  static final double BELOW = 36;

  private static final int ABOUT = 5;

  /** An aim farther off than so many times what is shown takes up is told and not drawn. */
  private static final double TOO_FAR = 2;

  /** How much of what is wanted is drawn, as a share of what is shown. */
  private static final double BEYOND = 0.1;

  private static final double STRIP = 5;
  private static final int MOST_LETTERS = 50;

  private final Svg svg;
  private final double bottom;

  /**
   * Begins the drawing.
   *
   * @param kind its class beside {@code plot}; may be empty
   * @param bottom of the plot itself, px
   * @param below room under it, px
   * @param label what it shows
   */
  PlotFrame(Svg svg, String kind, double bottom, double below, String label) {
    this.svg = svg;
    this.bottom = bottom;
    String box = "0 0 " + Svg.number(WIDTH) + " " + Svg.number(bottom + below);
    String style = ("plot " + kind).trim();
    svg.open("svg", "class", style, "viewBox", box, "role", "group", "aria-label", label);
  }

  /** An axis from the lowest to the highest figure that is shown, and to the aim if it is near. */
  static Ticks ticks(double low, double high, Optional<Aim> aim) {
    double far = TOO_FAR * (high - low);
    double beyond = BEYOND * (high - low);
    Optional<Double> least = aim.flatMap(Aim::low).filter(l -> l >= low - far && l <= high + far);
    Optional<Double> most = aim.flatMap(Aim::high).filter(h -> h >= low - far && h <= high + far);
    double start = Math.min(low, Math.min(least.orElse(low), most.orElse(low + beyond) - beyond));
    double end = Math.max(high, Math.max(most.orElse(high), least.orElse(high - beyond) + beyond));
    return Ticks.over(start, end, ABOUT);
  }

  /** Whether an axis reaches to where figures are wanted. */
  static boolean reaches(Ticks ticks, Optional<Aim> aim) {
    return aim.map(
            a ->
                a.low().map(l -> l <= ticks.high()).orElse(true)
                    && a.high().map(h -> h >= ticks.low()).orElse(true))
        .orElse(true);
  }

  static Scale across(Ticks ticks) {
    return new Scale(ticks, LEFT, RIGHT);
  }

  Scale up(Ticks ticks) {
    return new Scale(ticks, bottom, TOP);
  }

  void drawAcross(Scale x, String title) {
    StringBuilder grid = new StringBuilder();
    for (double tick : x.ticks().values()) {
      double at = x.at(tick);
      grid.append("M" + Svg.number(at) + " " + Svg.number(TOP) + "V" + Svg.number(bottom));
      text(at, bottom + 15, "middle", x.ticks().label(tick));
    }
    svg.leaf("path", "class", "grid", "d", grid);
    text(RIGHT, bottom + 30, "end", Lines.shortened(title, MOST_LETTERS) + " →");
  }

  void drawUp(Scale y, String title) {
    StringBuilder grid = new StringBuilder();
    for (double tick : y.ticks().values()) {
      double at = y.at(tick);
      grid.append("M" + Svg.number(LEFT) + " " + Svg.number(at) + "H" + Svg.number(RIGHT));
      text(LEFT - 7, at + 4, "end", y.ticks().label(tick));
    }
    svg.leaf("path", "class", "grid", "d", grid);
    text(0, 12, "start", "↑ " + Lines.shortened(title, MOST_LETTERS));
  }

  private void text(double x, double y, String anchor, String text) {
    svg.open("text", "x", x, "y", y, "text-anchor", anchor).text(text).close();
  }

  /** A strip along the axis where figures are wanted, and a line where that begins and ends. */
  void wantedAcross(Scale x, Aim aim) {
    double from = x.at(x.held(aim.low().orElse(x.ticks().low())));
    double to = x.at(x.held(aim.high().orElse(x.ticks().high())));
    if (to > from) {
      rect(from, bottom - STRIP, to - from, STRIP);
    }
    edge(x, aim.low(), true);
    edge(x, aim.high(), true);
  }

  void wantedUp(Scale y, Aim aim) {
    double from = y.at(y.held(aim.low().orElse(y.ticks().low())));
    double to = y.at(y.held(aim.high().orElse(y.ticks().high())));
    if (from > to) {
      rect(LEFT, to, STRIP, from - to);
    }
    edge(y, aim.low(), false);
    edge(y, aim.high(), false);
  }

  private void rect(double x, double y, double width, double height) {
    svg.leaf("rect", "class", "wanted", "x", x, "y", y, "width", width, "height", height, "rx", 1);
  }

  private void edge(Scale scale, Optional<Double> figure, boolean upright) {
    if (figure.filter(scale::holds).isPresent()) {
      double at = scale.at(figure.get());
      svg.leaf(
          "line",
          "class",
          "aim",
          "x1",
          upright ? at : LEFT,
          "x2",
          upright ? at : RIGHT,
          "y1",
          upright ? TOP : at,
          "y2",
          upright ? bottom : at);
    }
  }

  /** What stands at an axis: a trait, its unit and where it is wanted. */
  static String title(Trait trait, Optional<Aim> aim) {
    return trait.name()
        + trait.unit().map(u -> ", " + u.word()).orElse("")
        + aim.map(a -> " (wanted " + wanted(a) + ")").orElse("");
  }

  /** That no axis of the plot reaches to where figures are wanted. */
  static String beyond(Trait trait, Optional<Aim> aim) {
    String wanted = aim.map(PlotFrame::wanted).orElse("");
    return "What is wanted of " + trait.name() + ", " + wanted + ", lies beyond the drawing.";
  }

  /** Where figures are wanted, such as {@code 36 or less}. */
  static String wanted(Aim aim) {
    if (aim.low().isPresent() && aim.high().isPresent()) {
      String low = Quantity.plain(aim.low().get());
      String high = Quantity.plain(aim.high().get());
      return low.equals(high) ? low : low + " to " + high;
    }
    return aim.low().map(l -> Quantity.plain(l) + " or more").orElse("")
        + aim.high().map(h -> Quantity.plain(h) + " or less").orElse("");
  }
}
