package slipday.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slipday.app.Checked;
import slipday.output.ClimateText;
import slipday.output.Json;
import slipday.output.Tables;
import slipday.output.data.ClimateData;

@Command(
    description = {
      "Shows the site's frost dates, degree-days, soil and sun.",
      "",
      "With the years they are from, the gaps of the weather record, and what is left out."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  slipday climate plan.season",
      "  slipday climate plan.season --format csv > years.csv"
    })
final class ClimateCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private final PlanInput plan = new PlanInput();
  @Mixin private final HelpOption help = new HelpOption();

  @Option(
      names = "--format",
      paramLabel = "FORM",
      completionCandidates = Form.OrCsv.class,
      description = "text, json, or csv (one line for each year).")
  private Form form = Form.TEXT;

  ClimateCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    form.oneOf(Form.TEXT, Form.JSON, Form.CSV);
    Checked checked = plan.read(streams);
    if (checked.season().isEmpty()) {
      return plan.tellErrors(checked, streams);
    }
    ClimateData data = ClimateData.of(plan.name(), checked.season().get());
    streams
        .out()
        .print(
            switch (form) {
              case JSON -> Json.text(data);
              case CSV -> Tables.of(data);
              default -> new ClimateText(data, plan.ink(streams)).text();
            });
    return Exit.CLEAN;
  }
}
