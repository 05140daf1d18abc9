package slipday.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slipday.app.Checked;
import slipday.output.BloomText;
import slipday.output.Json;
import slipday.output.Tables;
import slipday.output.data.BloomData;

@Command(
    description = {
      "Says who is in flower when and whose pollen reaches whom.",
      "",
      "And whose seed is in danger, whether the parents of a cross meet, and how many",
      "flowers to pollinate by hand."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  slipday bloom plan.season",
      "  slipday bloom plan.season --format csv > pairs.csv"
    })
final class BloomCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private final PlanInput plan = new PlanInput();
  @Mixin private final HelpOption help = new HelpOption();

  @Option(
      names = "--format",
      paramLabel = "FORM",
      completionCandidates = Form.OrCsv.class,
      description = "text, json, or csv (one line for each pair that can cross).")
  private Form form = Form.TEXT;

  BloomCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    form.oneOf(Form.TEXT, Form.JSON, Form.CSV);
    Checked checked = plan.read(streams);
    if (checked.season().isPresent()) {
      BloomData data = BloomData.of(plan.name(), checked.season().get());
      streams
          .out()
          .print(
              switch (form) {
                case JSON -> Json.text(data);
                case CSV -> Tables.of(data);
                default -> new BloomText(data, plan.ink(streams)).text();
              });
    }
    return plan.tellErrors(checked, streams);
  }
}
