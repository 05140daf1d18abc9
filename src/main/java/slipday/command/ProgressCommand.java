package slipday.command;

import slipday.choice.Progress;
import slipday.output.ProgressTable;
import slipday.output.ProgressText;
import slipday.output.data.ProgressData;

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
    return plan.withSeason(
        season -> {
          Progress found =
              Progress.of(season.garden(), LineArgument.of(args, season.garden(), plan.name()));
          ProgressData data = ProgressData.of(plan.name(), season, found);
          streams
              .out()
              .print(
                  form.of(
                      data,
                      () -> ProgressTable.of(data),
                      () -> new ProgressText(data, found, plan.ink()).text()));
        });
  }
}
