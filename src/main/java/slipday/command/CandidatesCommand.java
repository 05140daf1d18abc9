package slipday.command;

import slipday.choice.Candidates;
import slipday.output.CandidatesTable;
import slipday.output.CandidatesText;
import slipday.output.data.CandidatesData;

/** The candidates of a line for the next generation. */
final class CandidatesCommand {
  private CandidatesCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Ranks the plants of a line as parents of the next generation.",
            "Every plant with a fruit marked or measured: what was measured, corrected for season",
            "and bed, what its offspring promise and how sure that is, and what speaks for it and",
            "against it. Ranked by the line's goal: its aims, what each matters, its refusals.")
        .plan()
        .words("1", "1", LineArgument.LABEL, "The line, as the plan calls it.")
        .forms("text, json or csv.", Form.TEXT, Form.JSON, Form.CSV)
        .examples(
            "slipday candidates plan.season tern-amber",
            "slipday candidates plan.season tern-amber --format csv > candidates.csv")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    PlanInput plan = new PlanInput(args, streams);
    return plan.withSeason(
        season -> {
          Candidates found =
              Candidates.of(season.garden(), LineArgument.of(args, season.garden(), plan.name()));
          CandidatesData data = CandidatesData.of(plan.name(), season, found);
          streams
              .out()
              .print(
                  form.of(
                      data,
                      () -> CandidatesTable.of(data),
                      () -> new CandidatesText(data, found, plan.ink()).text()));
        });
  }
}
