package slipday.command;

import slipday.app.Checked;
import slipday.output.BloomText;
import slipday.output.Tables;
import slipday.output.data.BloomData;

final class BloomCommand {
  private BloomCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Says who is in flower when and whose pollen reaches whom.",
            "And whose seed is in danger, whether the parents of a cross meet, and how many",
            "flowers to pollinate by hand.")
        .plan()
        .forms(
            "text, json, or csv (one line for each pair that can cross).",
            Form.TEXT,
            Form.JSON,
            Form.CSV)
        .examples("slipday bloom plan.season", "slipday bloom plan.season --format csv > pairs.csv")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    PlanInput plan = new PlanInput(args, streams);
    Checked checked = plan.read();
    if (checked.season().isPresent()) {
      BloomData data = BloomData.of(plan.name(), checked.season().get());
      streams
          .out()
          .print(
              form.of(data, () -> Tables.of(data), () -> new BloomText(data, plan.ink()).text()));
    }
    return plan.tellErrors(checked);
  }
}
