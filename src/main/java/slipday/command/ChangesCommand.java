package slipday.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.app.Revision;
import slipday.change.Changes;
import slipday.change.Comparison;
import slipday.change.Side;
import slipday.finding.Level;
import slipday.garden.SeasonYear;
import slipday.output.ChangesText;
import slipday.output.Ink;
import slipday.output.Json;
import slipday.output.data.ChangesData;

final class ChangesCommand {
  private static final String OLD = "OLD";
  private static final String NEW = "NEW";

  private ChangesCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Says what a change of plan or record changes in the season.",
            "Dates that moved and why, findings that came or went, flowers and seeds wanted,",
            "chores added or withdrawn. With --git the one plan named is compared with itself",
            "as it was at a revision, the files it includes with it.")
        .words("0", "1", OLD, "The plan as it was; with --git, the one plan.")
        .words("1", "0..1", NEW, "The plan as it is; left off with --git.")
        .option("--git", "REV", "A revision of the folder, such as HEAD, HEAD~3 or main.")
        .flag("--include-outside", "Lets the plans include files from outside their folders.")
        .colour()
        .choice(
            "--fail-on",
            "LEVEL",
            List.of("error", "warning", "note"),
            "Exit code 1 if a finding of this level or worse came.")
        .forms("text, json or markdown.", Form.TEXT, Form.JSON, Form.MARKDOWN)
        .examples(
            "slipday changes plan-before.season plan.season",
            "slipday changes --git HEAD plan.season              since the last commit",
            "slipday changes --git main plan.season --format markdown > review.md",
            "slipday changes --git HEAD~1 plan.season --fail-on error")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    Optional<Level> failOn =
        args.choice("--fail-on").map(word -> Level.valueOf(word.toUpperCase(Locale.ROOT)));
    List<String> plans = new ArrayList<>(args.words(OLD));
    plans.addAll(args.words(NEW));
    boolean git = args.has("--git");
    if (plans.size() != (git ? 1 : 2)) {
      throw new CommandFailure(
          git ? "With --git one plan is named." : "Two plans are to be named, old and new.",
          "For example slipday changes "
              + (git ? "--git HEAD plan.season." : "old.season new.season."));
    }
    String last = plans.get(plans.size() - 1).replace('\\', '/');
    Side before =
        git ? then(args, streams, last) : side(FileTexts.onDisk(), args, streams, plans.get(0));
    Side after = side(FileTexts.onDisk(), args, streams, last);
    Changes changes = Comparison.of(before, after);
    streams.out().print(text(changes, form, Colour.ink(args, streams)));
    boolean failed = failOn.map(changes::worse).orElse(false);
    boolean unreckoned = after.season().isEmpty();
    return failed || unreckoned ? Exit.FINDINGS : Exit.CLEAN;
  }

  private static String text(Changes changes, Form form, Ink ink) {
    ChangesData data = ChangesData.of(changes);
    if (form == Form.JSON) {
      return Json.text(data);
    }
    Optional<SeasonYear> year =
        Stream.of(changes.after(), changes.before())
            .flatMap(s -> s.garden().stream())
            .map(g -> g.season())
            .findFirst();
    LocalDate first = year.map(SeasonYear::first).orElse(LocalDate.MIN);
    LocalDate last = year.map(SeasonYear::last).orElse(LocalDate.MAX);
    boolean markdown = form == Form.MARKDOWN;
    return new ChangesText(data, first, last, markdown, markdown ? Ink.of(false) : ink).text();
  }

  /** The plan as git keeps it. */
  private static Side then(Args args, Streams streams, String plan) {
    Path path = streams.path(plan).toAbsolutePath().normalize();
    Path folder = path.getParent() == null ? path : path.getParent();
    String revision = args.text("--git", "HEAD");
    try {
      FileTexts texts = new Revision(folder).at(revision, args.has("--include-outside"));
      Side side = side(texts, args, streams, plan);
      return new Side(plan + " at " + revision, side.garden(), side.season(), side.findings());
    } catch (Revision.Refused e) {
      throw new CommandFailure(String.valueOf(e.getMessage()), e.help());
    }
  }

  private static Side side(FileTexts texts, Args args, Streams streams, String plan) {
    String name = plan.replace('\\', '/');
    Checked checked =
        new Pipeline(texts, args.has("--include-outside"), Today.latest(streams))
            .check(streams.path(name), name);
    if (!checked.usable()) {
      throw CommandFailure.of(checked.findings());
    }
    return new Side(name, checked.garden(), checked.season(), checked.findings());
  }
}
