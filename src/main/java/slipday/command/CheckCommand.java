package slipday.command;

import java.util.List;
import java.util.Locale;
import slipday.app.Checked;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.output.FindingsText;
import slipday.output.Json;
import slipday.output.Sarif;
import slipday.output.Tables;
import slipday.output.data.CheckData;

final class CheckCommand {
  private CheckCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of("Says every mistake in a plan and every rule it breaks.")
        .plan()
        .forms("text, json, csv or sarif (2.1.0).", Form.TEXT, Form.JSON, Form.CSV, Form.SARIF)
        .choice(
            "--fail-on",
            "LEVEL",
            List.of("error", "warning", "note"),
            "The least level that makes the exit code 1: error, warning or note.")
        .flag("--allowed", "Shows what is allowed, too.")
        .option("--date", "DAY", "Checks as if it were that day; later facts are in the future.")
        .examples(
            "slipday check plan.season",
            "slipday check plan.season --fail-on warning --allowed",
            "slipday check plan.season --format sarif > findings.sarif",
            "slipday check - --stdin-name plans/plan.season < draft.season")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    Level failOn =
        args.choice("--fail-on")
            .map(word -> Level.valueOf(word.toUpperCase(Locale.ROOT)))
            .orElse(Level.ERROR);
    PlanInput plan = new PlanInput(args, streams);
    Checked checked = plan.read(Today.latest(args, streams));
    List<Finding> findings = checked.findings();
    streams
        .out()
        .print(
            switch (form) {
              case JSON -> Json.text(CheckData.of(plan.name(), findings));
              case CSV -> Tables.of(CheckData.of(plan.name(), findings));
              case SARIF -> Sarif.text(findings, Version.number());
              default -> text(findings, args.has("--allowed"), plan);
            });
    return checked.has(failOn) ? Exit.FINDINGS : Exit.CLEAN;
  }

  private static String text(List<Finding> findings, boolean allowed, PlanInput plan) {
    List<Finding> shown = findings.stream().filter(f -> allowed || f.allowed().isEmpty()).toList();
    return new FindingsText(plan.ink()).text(shown)
        + FindingsText.errorsAmong(shown)
        + FindingsText.count(findings);
  }
}
