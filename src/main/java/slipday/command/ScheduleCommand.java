package slipday.command;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import slipday.app.Checked;
import slipday.finding.Nearest;
import slipday.output.Ink;
import slipday.output.ScheduleChart;
import slipday.output.ScheduleText;
import slipday.output.Tables;
import slipday.output.data.ScheduleData;
import slipday.season.PlantingSeason;
import slipday.season.Season;

final class ScheduleCommand {
  private ScheduleCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Says when to sow, plant out and pollinate, and when it ripens.",
            "For each planting: early, usual and late dates, what bounds them, and what would",
            "make an impossible season possible.")
        .plan()
        .words("1..*", "0..*", "PLANTING", "The plantings to show; all if none is named.")
        .flag(Charts.FLAG, "Draws bars of signs instead, to be read without colour.")
        .forms("text, json or csv.", Form.TEXT, Form.JSON, Form.CSV)
        .examples(
            "slipday schedule plan.season",
            "slipday schedule plan.season ropewalk-2023",
            "slipday schedule plan.season --chart",
            "slipday schedule plan.season --format csv > dates.csv")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    Charts.refuseOther(args, form);
    PlanInput plan = new PlanInput(args, streams);
    Checked checked = plan.read();
    if (checked.season().isPresent()) {
      Season season = checked.season().get();
      Set<String> names = names(args, season, plan);
      ScheduleData data = ScheduleData.of(plan.name(), season, names);
      streams
          .out()
          .print(form.of(data, () -> Tables.of(data), () -> text(args, season, data, plan.ink())));
    }
    return plan.tellErrors(checked);
  }

  private static String text(Args args, Season season, ScheduleData data, Ink ink) {
    return args.has(Charts.FLAG)
        ? new ScheduleChart(season, data, ink).text()
        : new ScheduleText(data, ink).text();
  }

  private static Set<String> names(Args args, Season season, PlanInput plan) {
    List<String> wanted = args.words("PLANTING");
    List<String> known = season.plantings().stream().map(PlantingSeason::name).toList();
    for (String name : wanted) {
      if (!known.contains(name)) {
        throw new CommandFailure(
            "There is no planting `" + name + "` in `" + plan.name() + "`.",
            Nearest.help(name, known, "planting"));
      }
    }
    return new LinkedHashSet<>(wanted);
  }
}
