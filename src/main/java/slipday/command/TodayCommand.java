package slipday.command;

import java.time.LocalDate;
import slipday.app.Checked;
import slipday.output.Json;
import slipday.output.TodayText;
import slipday.output.data.TodayData;
import slipday.season.Season;
import slipday.season.today.DayAtHand;

final class TodayCommand {
  private static final String DIGITS = "\\d{1,3}";

  private TodayCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Says what is to be done today, out of plan and record.",
            "What the season asks of the day, less what is recorded: tonight's covering and",
            "tomorrow's pollinations with their hours, how many fruits are still wanted, takes",
            "to check, marked fruit that should be ripening with the signs of its type, seed to",
            "take, and what was planned but not recorded. Narrow enough for a phone.")
        .plan()
        .option("--date", "DAY", "The day, such as 2026-07-15; today if none is named.")
        .option("--days", "N", "Also what comes in the N days after it.")
        .forms("text or json.", Form.TEXT, Form.JSON)
        .examples(
            "slipday today plan.season",
            "slipday today plan.season --date 2026-07-15",
            "slipday today plan.season --days 7")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    LocalDate date = Today.date(args, streams);
    int days = days(args);
    PlanInput plan = new PlanInput(args, streams);
    LocalDate latest = Today.latest(streams);
    Checked checked = plan.read(date.isAfter(latest) ? date : latest);
    if (checked.season().isPresent()) {
      Season season = checked.season().get();
      TodayData data = TodayData.of(plan.name(), DayAtHand.of(season, date, days));
      streams
          .out()
          .print(form == Form.JSON ? Json.text(data) : new TodayText(data, plan.ink()).text());
    }
    return plan.tellErrors(checked);
  }

  private static int days(Args args) {
    String days = args.text("--days", "0");
    if (!days.matches(DIGITS)) {
      throw new CommandFailure(
          "--days takes a whole number from 0 to 999, and not `" + days + "`.",
          "For example --days 7.");
    }
    return Integer.parseInt(days);
  }
}
