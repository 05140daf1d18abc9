package slipday.command;

import java.util.List;
import java.util.OptionalInt;
import slipday.finding.Nearest;
import slipday.garden.record.Fact;
import slipday.output.LotsText;
import slipday.output.Tables;
import slipday.output.data.LotsData;
import slipday.season.Season;
import slipday.seed.SeedBox;
import slipday.seed.SeedLot;

final class LotsCommand {
  private static final String DIGITS = "[1-9]\\d{0,4}";

  private LotsCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Lists the seed in hand: what is left, how good it is, what to sow.",
            "What was sown, tested and given away by the record is taken off. Seeds to sow are",
            "for the plantings not yet sown, enough in 19 of 20 cases, by the lot's test or its",
            "kind's least germination for sale, or by what its age leaves where that is less.")
        .plan()
        .words("1..*", "0..*", "LOT", "Only these lots, with all that is known of each.")
        .option("--plants", "N", "Seeds to sow for so many plants of each lot instead.")
        .flag("--labels", "Writes a label for each packet instead of the table.")
        .forms("text, json or csv.", Form.TEXT, Form.JSON, Form.CSV)
        .examples(
            "slipday lots plan.season",
            "slipday lots plan.season tern-amber-f3",
            "slipday lots plan.season --plants 12",
            "slipday lots plan.season --labels > labels.txt")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    OptionalInt plants = plants(args);
    if (args.has("--labels") && form != Form.TEXT) {
      throw new CommandFailure("Labels are text only.", "Leave --labels or --format off.");
    }
    PlanInput plan = new PlanInput(args, streams);
    return plan.withSeason(
        season -> {
          List<String> asked = args.words("LOT");
          List<SeedLot> lots = asked(SeedBox.lots(season.garden(), plants), asked, plan.name());
          LotsData data = LotsData.of(plan.name(), season, lots);
          LotsText text = new LotsText(data, !asked.isEmpty(), givenAway(lots, season), plan.ink());
          streams
              .out()
              .print(
                  form.of(
                      data,
                      () -> Tables.of(data),
                      () -> args.has("--labels") ? text.labels() : text.text()));
        });
  }

  private static boolean givenAway(List<SeedLot> lots, Season season) {
    return season
        .garden()
        .record()
        .every(Fact.GivenAway.class)
        .anyMatch(g -> lots.stream().anyMatch(l -> l.lot().name().equals(g.lot().name())));
  }

  /** All lots, or those that are named. */
  private static List<SeedLot> asked(List<SeedLot> all, List<String> names, String plan) {
    List<String> known = all.stream().map(l -> l.lot().name()).toList();
    for (String name : names) {
      if (!known.contains(name)) {
        throw new CommandFailure(
            "There is no lot `" + name + "` in `" + plan + "`.", Nearest.help(name, known, "lot"));
      }
    }
    return names.isEmpty()
        ? all
        : all.stream().filter(l -> names.contains(l.lot().name())).toList();
  }

  private static OptionalInt plants(Args args) {
    if (!args.has("--plants")) {
      return OptionalInt.empty();
    }
    String plants = args.text("--plants", "");
    if (!plants.matches(DIGITS)) {
      throw new CommandFailure(
          "--plants takes a whole number from 1 to 99999, and not `" + plants + "`.",
          "For example --plants 12.");
    }
    return OptionalInt.of(Integer.parseInt(plants));
  }
}
