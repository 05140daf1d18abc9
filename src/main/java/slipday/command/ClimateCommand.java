package slipday.command;

import slipday.app.Checked;
import slipday.output.ClimateText;
import slipday.output.Tables;
import slipday.output.data.ClimateData;

final class ClimateCommand {
  private ClimateCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Shows the site's frost dates, degree-days, soil and sun.",
            "With the years they are from, the gaps of the weather record, and what is left",
            "out.")
        .plan()
        .forms("text, json, or csv (one line for each year).", Form.TEXT, Form.JSON, Form.CSV)
        .examples(
            "slipday climate plan.season", "slipday climate plan.season --format csv > years.csv")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    PlanInput plan = new PlanInput(args, streams);
    Checked checked = plan.read();
    if (checked.season().isEmpty()) {
      return plan.tellErrors(checked);
    }
    ClimateData data = ClimateData.of(plan.name(), checked.season().get());
    streams
        .out()
        .print(
            form.of(
                data,
                () -> Tables.of(data),
                () ->
                    new ClimateText(data, plan.ink(), checked.season().get().garden().units())
                        .text()));
    return plan.tellWeatherErrors(checked);
  }
}
