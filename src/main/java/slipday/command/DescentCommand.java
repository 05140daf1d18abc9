package slipday.command;

import java.util.List;
import java.util.Optional;
import slipday.descent.Lineage;
import slipday.descent.Subjects;
import slipday.garden.record.Subject;
import slipday.output.DescentText;
import slipday.output.Json;
import slipday.output.data.DescentData;
import slipday.season.Season;

final class DescentCommand {
  private DescentCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Shows the ancestors of a lot, a fruit or a plant.",
            "With its cross, how inbred it is, how near of kin it is to another, and what of that",
            "nobody recorded. The cross is written as Purdy and others (1968) do: seed parent",
            "first, / the first cross, // the second, * the doses of a recurrent parent.")
        .plan()
        .words(
            "1..*",
            "0..*",
            "SUBJECT",
            "A lot, a tag (3A, or 3A of 2025), or a plant (PLANTING plant 3).")
        .phrase("--with", "OTHER", "Another, named likewise, to tell the kinship with.")
        .forms("text or json.", Form.TEXT, Form.JSON)
        .examples(
            "slipday descent plan.season tern-amber-f3",
            "slipday descent plan.season tern-amber-f3 plant 3 --with ropewalk-2023",
            "slipday descent plan.season tern-amber-f3 plant 3 --with tern-amber-f3 plant 8",
            "slipday descent plan.season 3A of 2025 --format json")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    List<String> words = args.words("SUBJECT");
    if (words.isEmpty()) {
      throw new CommandFailure(
          "Nothing is named to tell the descent of.",
          "Name a lot, a tag or a plant after the plan"
              + (args.has("--with") ? ", and put `--with` and the other one last." : "."));
    }
    PlanInput plan = new PlanInput(args, streams);
    return plan.withSeason(
        season -> {
          Subject subject = subject(season, String.join(" ", words), plan);
          Optional<Subject> other =
              args.has("--with")
                  ? Optional.of(subject(season, args.text("--with", ""), plan))
                  : Optional.empty();
          Lineage lineage = Lineage.of(season.garden(), subject, other);
          DescentData data = DescentData.of(plan.name(), season, subject, lineage);
          streams
              .out()
              .print(
                  form == Form.JSON ? Json.text(data) : new DescentText(data, plan.ink()).text());
        });
  }

  private static Subject subject(Season season, String words, PlanInput plan) {
    Subjects subjects = new Subjects(season.garden());
    return subjects
        .find(words)
        .orElseThrow(
            () ->
                new CommandFailure(
                    "There is no lot, fruit or plant `" + words + "` in `" + plan.name() + "`.",
                    subjects.help(words)));
  }
}
