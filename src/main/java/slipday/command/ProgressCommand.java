package slipday.command;

import slipday.app.Checked;
import slipday.choice.Progress;
import slipday.output.Json;
import slipday.output.ProgressTable;
import slipday.output.ProgressText;
import slipday.output.data.ProgressData;
import slipday.season.Season;

/** A line over its generations. */
final class ProgressCommand {
  private ProgressCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Shows a line over its generations: what was chosen, what was gained.",
            "For each trait and generation the mean, the spread, the best plant, how inbred they",
            "are, and by how much the chosen parents were better. A gain is told only where season",
            "and generation can be told apart: by remnant seed of an older generation grown beside",
            "a newer one, or by a line that is kept as it is and was grown beside both.")
        .plan()
        .words("1", "1", LineArgument.LABEL, "The line, as the plan calls it.")
        .forms("text, json or csv.", Form.TEXT, Form.JSON, Form.CSV)
        .examples(
            "slipday progress plan.season tern-amber",
            "slipday progress plan.season tern-amber --format csv > progress.csv")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    PlanInput plan = new PlanInput(args, streams);
    Checked checked = plan.read();
    if (checked.season().isEmpty()) {
      return plan.tellErrors(checked);
    }
    Season season = checked.season().get();
    Progress found =
        Progress.of(season.garden(), LineArgument.of(args, season.garden(), plan.name()));
    ProgressData data = ProgressData.of(plan.name(), season, found);
    streams
        .out()
        .print(
            switch (form) {
              case JSON -> Json.text(data);
              case CSV -> ProgressTable.of(data);
              default -> new ProgressText(data, found, plan.ink()).text();
            });
    return Exit.CLEAN;
  }
}
