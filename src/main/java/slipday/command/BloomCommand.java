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
        .flag(Charts.FLAG, "Draws bars of bloom alone, to be read without colour.")
        .forms(
            "text, json, or csv (one line for each pair that can cross).",
            Form.TEXT,
            Form.JSON,
            Form.CSV)
        .examples(
            "slipday bloom plan.season",
            "slipday bloom plan.season --chart",
            "slipday bloom plan.season --format csv > pairs.csv")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    Charts.refuseOther(args, form);
    PlanInput plan = new PlanInput(args, streams);
    Checked checked = plan.read();
    if (checked.season().isPresent()) {
      BloomData data = BloomData.of(plan.name(), checked.season().get());
      streams
          .out()
          .print(
              form.of(
                  data,
                  () -> Tables.of(data),
                  () ->
                      text(
                          args,
                          new BloomText(
                              data, plan.ink(), checked.season().get().garden().units()))));
    }
    return plan.tellErrors(checked);
  }

  private static String text(Args args, BloomText text) {
    return args.has(Charts.FLAG) ? text.chart() : text.text();
  }
}
