package slipday.command;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.NextPlan;
import slipday.output.Json;
import slipday.output.NextSeasonText;
import slipday.output.data.NextSeasonData;

final class NextSeasonCommand {
  private static final String STDOUT = "-";

  private NextSeasonCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Writes next season's plan out of this season's lots and record.",
            "Lines go on from the seed saved of them; a line that is being fixed in a few",
            "families, with an older generation beside them; crosses made are grown. Beds",
            "move on for rotation as far as there is room. What must be decided is marked in",
            "the plan by comments. A file that is there already is never touched.")
        .plan()
        .option(new String[] {"-o", "--output"}, "NEXT", "The new plan's file; - prints it.")
        .forms("text or json, of what was put in it.", Form.TEXT, Form.JSON)
        .examples(
            "slipday next-season plan.season -o plan-2027.season",
            "slipday next-season plan.season -o -")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    String output = args.text("--output", "").replace('\\', '/');
    if (output.isEmpty()) {
      throw new CommandFailure(
          "Nothing says where next season's plan is to go.", "Add `-o NEXT`; `-o -` prints it.");
    }
    boolean print = output.equals(STDOUT);
    PlanInput plan = new PlanInput(args, streams);
    Path file = print ? streams.path(plan.name()) : streams.path(output);
    if (!print) {
      refuseThere(file, output);
    }
    Checked checked = plan.read();
    if (checked.season().isEmpty()) {
      return plan.tellErrors(checked);
    }
    String name = print ? "next season's plan" : output;
    NextPlan.Place place = print ? besides(plan, streams) : new NextPlan.Place(file, output);
    NextPlan.Draft draft =
        NextPlan.draft(
            FileTexts.onDisk(),
            checked,
            new NextPlan.Place(streams.path(plan.name()), plan.name()),
            place,
            args.has("--include-outside"),
            Today.latest(streams));
    Optional<String> written = print ? Optional.empty() : Optional.of(name);
    NextSeasonData data = NextSeasonData.of(plan.name(), draft.next(), written, draft.open());
    if (!print) {
      FileWriting.create(file, output, draft.text());
    }
    if (form == Form.JSON) {
      streams.out().print(Json.text(data));
    } else {
      streams.out().print(print ? draft.text() : NextSeasonText.of(data, plan.ink()));
    }
    return plan.tellErrors(checked);
  }

  /** A printed plan is made to stand beside this season's. */
  private static NextPlan.Place besides(PlanInput plan, Streams streams) {
    String name = plan.name();
    String next = name.substring(0, name.lastIndexOf('/') + 1) + "next.season";
    return new NextPlan.Place(streams.path(next), next);
  }

  private static void refuseThere(Path file, String output) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw FileWriting.thereAlready(output);
    }
  }
}
