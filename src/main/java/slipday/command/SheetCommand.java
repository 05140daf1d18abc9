package slipday.command;

import java.time.LocalDate;
import slipday.app.Checked;
import slipday.output.Json;
import slipday.output.data.SeasonData;
import slipday.output.data.SheetData;
import slipday.output.report.SheetPage;
import slipday.output.report.WeekSheet;
import slipday.season.Season;

final class SheetCommand {
  private SheetCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Makes the week's page for the clipboard, with boxes to fill in.",
            "What to sow, cover, pollinate, check, look at and take seed of in the week. Each",
            "line is one entry of the record: filled in, it is copied out as it reads. Black",
            "lines and no fills, for waterproof paper, A4 or Letter.")
        .plan()
        .option(PageOutput.OPTION, "FILE", PageOutput.SAYS)
        .option("--week", "DAY", "The week's first day, as 2026-07-06; today if none is named.")
        .forms("html or json.", Form.HTML, Form.JSON)
        .examples(
            "slipday sheet plan.season --week 2026-07-06 -o week.html",
            "slipday sheet plan.season --format json")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.HTML);
    LocalDate from = Today.date(args, streams, "--week");
    PlanInput plan = new PlanInput(args, streams);
    Checked checked = plan.read(Today.latest(args, streams, "--week"));
    if (checked.season().isEmpty()) {
      return plan.tellErrors(checked);
    }
    Season season = checked.season().get();
    SheetData data =
        SheetData.of(
            plan.name(),
            SeasonData.of(season),
            from,
            WeekSheet.lastDay(from),
            WeekSheet.of(season, from));
    new PageOutput(args, streams, plan)
        .write(form == Form.JSON ? Json.text(data) : SheetPage.html(data));
    return plan.tellErrors(checked);
  }
}
