package slipday.command;

import java.time.LocalDate;
import slipday.app.Checked;
import slipday.app.ReportAhead;
import slipday.output.report.ReportPage;

final class ReportCommand {
  private ReportCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Draws the season on one page to look at, on a laptop or a phone.",
            "One file that needs no network: the season as bars, the garden to scale, what",
            "was found, and the plan's text, linked both ways; point or tap to see why.")
        .plan()
        .option(PageOutput.OPTION, "FILE", PageOutput.SAYS)
        .option("--date", "DAY", "The day it is made for, as 2026-07-08; today if none is named.")
        .examples(
            "slipday report plan.season -o season.html",
            "slipday report plan.season -o season.html --date 2026-07-08")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    PlanInput plan = new PlanInput(args, streams);
    PageOutput output = new PageOutput(args, streams, plan);
    LocalDate day = Today.date(args, streams);
    ReportAhead ahead = new ReportAhead(day);
    Checked checked = plan.read(Today.latest(args, streams, "--date"), ahead::begin);
    checked
        .season()
        .ifPresent(
            season ->
                output.write(
                    ReportPage.html(
                        new ReportPage.Subject(
                            plan.name(),
                            season,
                            checked.findings(),
                            checked.files(),
                            day,
                            args.has("--date"),
                            ahead::breeding))));
    return plan.tellErrors(checked);
  }
}
