package slipday.output;

import java.util.List;
import java.util.stream.Collectors;
import slipday.measure.Quantity;
import slipday.measure.Units;
import slipday.output.data.ClimateData;
import slipday.output.data.ClimateData.FrostData;
import slipday.output.data.ClimateData.RecordData;
import slipday.output.data.ClimateData.SunData;
import slipday.output.data.ClimateData.YearData;

/** The climate of a site, for people. */
public final class ClimateText {
  private final Ink ink;
  private final ClimateData data;
  private final Days days;
  private final Units units;

  /**
   * @param units those the gardener is answered in
   */
  public ClimateText(ClimateData data, Ink ink, Units units) {
    this.units = units;
    this.data = data;
    this.ink = ink;
    this.days = new Days(data.season().first(), data.season().last());
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    out.append(ink.strong(Lines.clean("Climate of " + data.season().title()))).append('\n');
    out.append(place()).append('\n');
    out.append(data.record().map(this::record).orElse("No weather record.\n"));
    if (data.warmerThanStation() != 0) {
      String way = data.warmerThanStation() > 0 ? " warmer" : " colder";
      String by = units.writtenDifference(Math.abs(data.warmerThanStation()));
      out.append("All figures are the garden's, ").append(by).append(way);
      out.append(" than the station.\n");
    }
    frost("spring", "Last frost of spring", "after", out);
    frost("autumn", "First frost of autumn", "before", out);
    years(out);
    soil(out);
    out.append(sun(data.sun()));
    return out.toString();
  }

  private String place() {
    double north = data.place().latitude();
    double east = data.place().longitude();
    String height = data.place().height().map(h -> ", " + units.wholeDistance(h)).orElse("");
    return Quantity.plain(Math.abs(north))
        + (north < 0 ? " S, " : " N, ")
        + Quantity.plain(Math.abs(east))
        + (east < 0 ? " W" : " E")
        + height
        + ", clocks of "
        + data.timeZone();
  }

  private String record(RecordData r) {
    StringBuilder out = new StringBuilder();
    String says =
        "`"
            + r.file()
            + "`, "
            + r.layout()
            + ", "
            + days.day(r.first())
            + " to "
            + days.day(r.last())
            + ": "
            + Lines.count(r.seasonsUsed(), "season")
            + " used, "
            + r.leftOut().size()
            + " left out.";
    out.append(Lines.hung("", says));
    r.leftOut().forEach(why -> out.append(Lines.hung("  ", why)));
    if (r.missingDays() > 0) {
      String gaps =
          r.gaps().stream()
              .map(
                  g ->
                      g.days() == 1
                          ? days.day(g.first())
                          : days.day(g.first()) + " to " + days.day(g.last()))
              .collect(Collectors.joining("; "));
      out.append(Lines.hung("  ", Lines.count(r.missingDays(), "day") + " missing: " + gaps + "."));
    }
    if (r.flagged() > 0) {
      out.append(
          Lines.hung(
              "  ", Lines.count(r.flagged(), "value") + " flagged by the station left out."));
    }
    return out.toString();
  }

  private void frost(String side, String title, String way, StringBuilder out) {
    List<FrostData> laws = data.frost().stream().filter(f -> f.side().equals(side)).toList();
    if (laws.isEmpty()) {
      return;
    }
    Grid grid = new Grid("lrrrrrl");
    grid.row("", "9 in 10 " + way, "usual", "1 in 10 " + way, "curve: usual", "1 in 10", "");
    for (FrostData f : laws) {
      grid.row(
          f.words() + " (" + units.written(f.celsius()) + ")",
          days.day(f.nineInTen()),
          days.day(f.usual()),
          days.day(f.oneInTen()),
          days.day(f.normalUsual()),
          days.day(f.normalOneInTen()),
          remark(f));
    }
    out.append('\n').append(ink.strong(title)).append('\n').append(grid.text("  "));
    if (laws.stream().anyMatch(f -> f.from().equals("record") && !f.counted())) {
      out.append("  Fewer than 15 seasons: no day can be counted off, so all are the curve's.\n");
    }
  }

  private static String remark(FrostData f) {
    if (f.from().equals("plan")) {
      return "as the plan states";
    }
    String none = f.without() >= 0.005 ? "none in " + Lines.percent(f.without()) + " of years" : "";
    return none;
  }

  private void years(StringBuilder out) {
    if (data.years().isEmpty() || data.heat().isEmpty()) {
      return;
    }
    ClimateData.HeatData heat = data.heat().get();
    Grid grid = new Grid("lrrr");
    grid.row("", "last frost", "first frost", units.heatUnit());
    for (YearData y : data.years()) {
      grid.row(
          y.year(),
          y.lastSpringFrost().map(ClimateText::short_).orElse("none"),
          y.firstAutumnFrost().map(ClimateText::short_).orElse("none"),
          String.valueOf(Math.round(units.heat(y.degreeDays()))));
    }
    out.append('\n').append(ink.strong("Year by year")).append('\n').append(grid.text("  "));
    String kind =
        "Frost: a low of "
            + units.written(0)
            + " or less. "
            + units.heatUnit()
            + " above "
            + units.written(heat.base())
            + ", "
            + heat.from()
            + " to "
            + heat.to()
            + ", "
            + heat.method()
            + ".";
    out.append(Lines.hung("  ", kind));
  }

  private static String short_(java.time.LocalDate date) {
    return date.getDayOfMonth() + " " + Days.month(date.getMonthValue());
  }

  private void soil(StringBuilder out) {
    if (data.soil().isEmpty()) {
      return;
    }
    String months =
        data.soil().stream()
            .map(m -> Days.month(m.month()) + " " + units.wholeDegrees(m.celsius()))
            .collect(Collectors.joining(", "));
    String width = Quantity.plain(Math.rint(10 * units.inDegrees(data.soilWidth())) / 10);
    out.append('\n')
        .append(ink.strong("Soil at sowing depth, " + (units.fahrenheit() ? "F" : "C")))
        .append('\n');
    String says = months + " (estimated from the air, give or take " + width + ").";
    out.append(Lines.hung("  ", says));
  }

  private String sun(SunData s) {
    String day = s.dayMinutes() / 60 + " h " + s.dayMinutes() % 60 + " min";
    String says =
        "dawn "
            + s.dawn().orElse("-")
            + ", sunrise "
            + s.sunrise().orElse("-")
            + ", noon "
            + s.noon()
            + ", sunset "
            + s.sunset().orElse("-")
            + ", dusk "
            + s.dusk().orElse("-")
            + "; "
            + day
            + " of day.";
    return "\n" + ink.strong("Sun on " + days.day(s.date())) + "\n" + Lines.hung("  ", says);
  }
}
