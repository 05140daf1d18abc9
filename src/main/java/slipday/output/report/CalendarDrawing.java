package slipday.output.report;

import java.time.LocalDate;
import java.util.Optional;
import slipday.climate.Climate;
import slipday.climate.FrostLaw;
import slipday.output.Days;

/** The months over the bars of a season, and the risk of frost behind them. */
final class CalendarDrawing {
  private static final int HEAD = 46;
  private static final int MONTHS = 20;
  private static final double CURVE = 26;
  private static final int EVERY_DAYS = 3;

  /** Far off the drawing: a day that is not on its axis. */
  private static final String NOWHERE = "-500%";

  private static final double FIELD = 1000;
  private final Axis axis;
  private final Climate climate;

  CalendarDrawing(Axis axis, Climate climate) {
    this.axis = axis;
    this.climate = climate;
  }

  /** Names of the months above a curve of the risk of frost. */
  Svg head() {
    Svg svg = begun(HEAD);
    svg.open(
        "svg",
        "width",
        "100%",
        "y",
        HEAD - CURVE,
        "height",
        CURVE,
        "viewBox",
        "0 0 1000 " + Svg.number(CURVE),
        "preserveAspectRatio",
        "none");
    svg.leaf("polygon", "class", "risk", "points", curve());
    svg.close();
    names(svg, HEAD);
    return svg.close();
  }

  /** Names of the months alone. */
  Svg months() {
    Svg svg = begun(MONTHS);
    names(svg, MONTHS);
    return svg.close();
  }

  private static Svg begun(int height) {
    return new Svg()
        .open("svg", "class", "head", "width", "100%", "height", height, "aria-hidden", "true");
  }

  private void names(Svg svg, int height) {
    for (LocalDate month : axis.months()) {
      double middle = axis.at(month) + month.lengthOfMonth() / 2.0 / axis.days();
      svg.leaf("line", "class", "month", "x1", at(month), "x2", at(month), "y1", 0, "y2", height);
      svg.open("text", "class", "month", "x", Svg.percent(middle), "y", 13);
      svg.text(Days.month(month.getMonthValue())).close();
    }
  }

  private String at(LocalDate month) {
    return Svg.percent(axis.at(month) - 0.5 / axis.days());
  }

  private String curve() {
    StringBuilder points = new StringBuilder("0," + Svg.number(CURVE));
    for (int day = 0; day < axis.days(); day += EVERY_DAYS) {
      LocalDate date = axis.first().plusDays(day);
      double y = CURVE * (1 - risk(date));
      points.append(' ').append(Svg.number(axis.at(date) * FIELD)).append(',');
      points.append(Svg.number(y));
    }
    return points.append(" 1000,").append(Svg.number(CURVE)).toString();
  }

  /** The chance of a frost later than a spring day, or earlier than an autumn one. */
  private double risk(LocalDate date) {
    int slot = climate.axis().slotOf(date);
    boolean autumn = slot >= climate.axis().midsummer();
    Optional<FrostLaw> law = autumn ? climate.firstAutumnFrost() : climate.lastSpringFrost();
    return law.map(l -> l.risk(slot)).orElse(0.0);
  }

  /** What lies behind the bars of the season: frost as a shade, the months as lines, and today. */
  Svg under(Optional<LocalDate> today) {
    Svg svg = behind();
    svg.open("defs").open("linearGradient", "id", "frost");
    for (int day = 0; day < axis.days(); day += EVERY_DAYS) {
      LocalDate date = axis.first().plusDays(day);
      svg.leaf("stop", "offset", axis.at(date), "stop-opacity", Math.rint(risk(date) * 50) / 100);
    }
    svg.close().close();
    svg.leaf("rect", "width", "100%", "height", "100%", "fill", "url(#frost)");
    lines(svg, today);
    return svg.close();
  }

  /** The months as lines, and today. */
  Svg lines(Optional<LocalDate> today) {
    Svg svg = behind();
    lines(svg, today);
    return svg.close();
  }

  private static Svg behind() {
    return new Svg()
        .open("svg", "class", "under", "aria-hidden", "true", "width", "100%", "height", "100%");
  }

  private void lines(Svg svg, Optional<LocalDate> today) {
    for (LocalDate month : axis.months()) {
      svg.leaf("line", "class", "month", "x1", at(month), "x2", at(month), "y1", 0, "y2", "100%");
    }
    String x = today.filter(axis::holds).map(axis::at).map(Svg::percent).orElse(NOWHERE);
    svg.open("svg", "class", "at now", "x", x, "height", "100%", "width", 1);
    svg.leaf("line", "class", "today", "y1", 0, "y2", "100%");
    svg.open("text", "class", "today", "x", 5, "y", 14).text("today").close().close();
  }
}
