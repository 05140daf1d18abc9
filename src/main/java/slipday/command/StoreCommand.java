package slipday.command;

import java.time.LocalDate;
import slipday.app.Checked;
import slipday.output.StoreText;
import slipday.output.Tables;
import slipday.output.data.StoreData;
import slipday.storage.Store;

final class StoreCommand {
  private StoreCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Shows the fruit in store: how it keeps, when it is best eaten, and by when.",
            "By the record of what was stored and looked at, of this season and others. Best",
            "is when fruit of the line was scored highest for flavour; eat by is when the",
            "first of the line had gone soft, rotten or shrivelled. Soft fruit is to be",
            "thrown away. For a day gone by, what was recorded later does not count.")
        .plan()
        .option("--date", "DAY", "The day, such as 2027-01-15; today if none is named.")
        .forms("text, json or csv.", Form.TEXT, Form.JSON, Form.CSV)
        .examples("slipday store plan.season", "slipday store plan.season --date 2027-01-15")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    LocalDate today = Today.date(args, streams);
    PlanInput plan = new PlanInput(args, streams);
    Checked checked = plan.read(Today.latest(args, streams, "--date"));
    return plan.withSeason(
        checked,
        season -> {
          Store store = Store.of(season.garden().asOf(today));
          StoreData data = StoreData.of(plan.name(), season, store, today);
          streams
              .out()
              .print(
                  form.of(
                      data,
                      () -> Tables.of(data),
                      () -> new StoreText(data, plan.ink(), season.garden().units()).text()));
        });
  }
}
