package slipday.output;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipday.output.data.ChosenData;
import slipday.output.data.EventData;
import slipday.output.data.ScheduleData;
import slipday.output.data.ScheduleData.PlantingDates;

/** The dates of every planting, for people. */
public final class ScheduleText {
  /** The events of the short table at the top, with their headings. */
  private static final List<String> OVERVIEW =
      List.of("sow", "plant-out", "first-fruiting", "last-set", "ripe", "seed-ripe");

  private final Ink ink;
  private final ScheduleData data;
  private final Days days;

  public ScheduleText(ScheduleData data, Ink ink) {
    this.data = data;
    this.ink = ink;
    this.days = new Days(data.season().first(), data.season().last());
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    out.append(ink.strong(Titles.of("Schedule", data.season()))).append('\n');
    out.append(Titles.model(data.season()));
    if (data.plantings().size() > 1) {
      out.append('\n').append(overview());
    }
    data.plantings().forEach(p -> out.append('\n').append(planting(p)));
    if (data.plantings().isEmpty()) {
      out.append("\nNothing is grown in this plan.\n");
    } else {
      out.append(
          data.season().weatherYears() > 0
              ? "\nEarly, usual, late: by this day in 1, 5 and 9 years of 10.\n"
              : "\nEarly, usual, late: a quick, a usual and a slow one of its kind, in a usual"
                  + " summer.\n");
      String name = data.plantings().get(0).name();
      out.append("Why a date: ")
          .append(Shell.command("why", data.plan(), name + " ripe"))
          .append('\n');
    }
    return out.toString();
  }

  private String overview() {
    Grid grid = new Grid("lrrrrrr");
    grid.row("Usual dates", "sow", "plant out", "flowers", "set until", "ripe", "seed");
    for (PlantingDates p : data.plantings()) {
      String[] cells = new String[OVERVIEW.size() + 1];
      cells[0] = p.name();
      for (int i = 0; i < OVERVIEW.size(); i++) {
        cells[i + 1] = cell(p, OVERVIEW.get(i));
      }
      grid.row(cells);
    }
    return grid.text("");
  }

  private String cell(PlantingDates planting, String event) {
    Optional<EventData> found =
        planting.events().stream().filter(e -> e.event().equals(event)).findFirst();
    return found.map(e -> days.day(e.usual()) + doubt(planting, e)).orElse("");
  }

  /** A question mark from the flowers on, where they wait for short days. */
  private static String doubt(PlantingDates planting, EventData event) {
    boolean early = event.decided() || event.event().equals("emerged");
    return planting.sureOfFlowers() || early || event.usual().isEmpty() ? "" : "?";
  }

  private String planting(PlantingDates p) {
    StringBuilder out = new StringBuilder();
    out.append(ink.strong(p.name())).append(": ").append(p.crop());
    p.plants().ifPresent(n -> out.append(", ").append(Lines.count(n, "plant")));
    p.bed().ifPresent(b -> out.append(" in ").append(b));
    out.append('\n');
    Grid grid = new Grid("lrrrl");
    grid.row("", "early", "usual", "late", "");
    p.events().forEach(e -> event(p, e, grid));
    out.append(grid.text("  "));
    chosen(p, out);
    p.cover()
        .ifPresent(
            c ->
                out.append(
                    Lines.hung(
                        "  ",
                        "Under the "
                            + c.what()
                            + " from "
                            + days.day(c.from())
                            + " to "
                            + days.day(c.off())
                            + ".")));
    if (!p.flowersThisSeason()) {
      out.append(Lines.hung("  ", "It flowers and bears seed in its second year."));
    }
    if (!p.sureOfFlowers()) {
      String doubt =
          "It may flower only as the days shorten: the dates marked ? leave that out of account.";
      out.append(Lines.hung("  ", doubt));
    }
    return out.toString();
  }

  private void event(PlantingDates p, EventData e, Grid grid) {
    String remark = remark(p, e);
    if (e.decided()) {
      grid.row(words(p, e), "", days.day(e.usual()), "", remark);
    } else if (p.sureOfFlowers() || e.event().equals("emerged")) {
      grid.row(words(p, e), days.day(e.early()), days.day(e.usual()), days.day(e.late()), remark);
    } else {
      grid.row(words(p, e), "", days.day(e.usual()) + doubt(p, e), "", remark);
    }
  }

  private static String words(PlantingDates p, EventData e) {
    return switch (e.event()) {
      case "sow" -> p.indoors() ? "sow indoors" : "sow in place";
      case "last-set" -> "pollinate until";
      default -> e.words();
    };
  }

  private static String remark(PlantingDates p, EventData e) {
    boolean chosen = e.event().equals(p.chosen().event());
    if (chosen && p.chosen().fixed()) {
      return p.chosen().recorded() ? "by the record" : "fixed in the plan";
    }
    return e.never() >= 0.005 ? "never in " + Lines.percent(e.never()) + " of years" : "";
  }

  private void chosen(PlantingDates p, StringBuilder out) {
    ChosenData c = p.chosen();
    if (!c.possible()) {
      out.append(
          Lines.hung("  ", doing(c, "") + ": no day meets every condition (" + failing(c) + ")."));
      c.mends().forEach(mend -> out.append(Lines.hung("  - ", mend)));
    } else {
      String begin = c.fixed() ? "Were the day not fixed: " : "";
      out.append(Lines.hung("  ", begin + doing(c, begin) + " from " + bounds(c) + "."));
    }
    String chances = chances(c);
    if (!chances.isEmpty()) {
      out.append(Lines.hung("  ", "On " + days.day(c.date()) + ": " + chances + "."));
    }
  }

  private static String doing(ChosenData c, String after) {
    String doing = c.event().equals("sow") ? "Sow in place" : "Plant out";
    return after.isEmpty() ? doing : doing.toLowerCase(Locale.ROOT);
  }

  private static String failing(ChosenData c) {
    return c.earliest().isEmpty() ? c.earlyBound().words() : c.lateBound().words();
  }

  private String bounds(ChosenData c) {
    String early = days.day(c.earliest()) + " (" + c.earlyBound().words() + ")";
    return c.latest().isEmpty()
        ? early
        : early + " to " + days.day(c.latest()) + " (" + c.lateBound().words() + ")";
  }

  private static String chances(ChosenData c) {
    return String.join(
        ", ",
        c.chances().stream()
            .map(chance -> met(chance.condition()) + " " + Lines.percent(chance.met()))
            .toList());
  }

  /** A condition as it reads where it is met. */
  private static String met(String condition) {
    return switch (condition) {
      case "frost" -> "no frost";
      case "soil" -> "soil warm";
      case "chill" -> "nights warm";
      case "heat" -> "mornings cool enough";
      case "ripening" -> "fruit ripe";
      case "seed-ripening" -> "seed ripe";
      default -> condition;
    };
  }
}
