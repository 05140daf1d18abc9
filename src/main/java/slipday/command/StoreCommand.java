package slipday.command;

import java.time.LocalDate;
import slipday.app.Checked;
import slipday.output.Json;
import slipday.output.StoreText;
import slipday.output.Tables;
import slipday.output.data.StoreData;
import slipday.season.Season;
import slipday.storage.Store;

final class StoreCommand {
  private StoreCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Shows the fruit in store: how it keeps, when it is best eaten, and by when.",
            "By the record of what was stored and looked at, of this season and others. Best",
            "is when fruit of the line was scored highest for flavour; eat by is when the first",
            "of the line had gone soft, rotten or shrivelled.")
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
    Checked checked = plan.read();
    if (checked.season().isEmpty()) {
      return plan.tellErrors(checked);
    }
    Season season = checked.season().get();
    StoreData data = StoreData.of(plan.name(), season, Store.of(season.garden()), today);
    streams
        .out()
        .print(
            switch (form) {
              case JSON -> Json.text(data);
              case CSV -> Tables.of(data);
              default -> new StoreText(data, plan.ink(), season.garden().units()).text();
            });
    return Exit.CLEAN;
  }
}
