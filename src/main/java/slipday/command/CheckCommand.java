package slipday.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slipday.app.Checked;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.output.FindingsText;
import slipday.output.Json;
import slipday.output.Sarif;
import slipday.output.Tables;
import slipday.output.data.CheckData;

@Command(
    description = "Says every mistake in a plan and every rule it breaks.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  slipday check plan.season",
      "  slipday check plan.season --fail-on warning --allowed",
      "  slipday check plan.season --format sarif > findings.sarif",
      "  slipday check - --stdin-name plans/plan.season < draft.season"
    })
final class CheckCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private final PlanInput plan = new PlanInput();
  @Mixin private final HelpOption help = new HelpOption();

  @Option(
      names = "--format",
      paramLabel = "FORM",
      completionCandidates = Form.Findings.class,
      description = "text, json, csv or sarif (2.1.0).")
  private Form form = Form.TEXT;

  @Option(
      names = "--fail-on",
      paramLabel = "LEVEL",
      completionCandidates = Levels.class,
      description = "The least level that makes the exit code 1: error, warning or note.")
  private Level failOn = Level.ERROR;

  @Option(names = "--allowed", description = "Shows what is allowed, too.")
  private boolean allowed;

  /** The levels as people write them, the worst first. */
  static final class Levels extends ArrayList<String> {
    private static final long serialVersionUID = 1L;

    Levels() {
      super(List.of("error", "warning", "note"));
    }
  }

  CheckCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    form.oneOf(Form.TEXT, Form.JSON, Form.CSV, Form.SARIF);
    Checked checked = plan.read(streams);
    streams
        .out()
        .print(
            switch (form) {
              case JSON -> Json.text(CheckData.of(plan.name(), checked.findings()));
              case CSV -> Tables.of(CheckData.of(plan.name(), checked.findings()));
              case SARIF -> Sarif.text(checked.findings(), Version.number());
              default -> text(checked);
            });
    return checked.has(failOn) ? Exit.FINDINGS : Exit.CLEAN;
  }

  private String text(Checked checked) {
    List<Finding> shown =
        checked.findings().stream().filter(f -> allowed || f.allowed().isEmpty()).toList();
    return new FindingsText(plan.ink(streams)).text(shown) + FindingsText.count(checked.findings());
  }
}
