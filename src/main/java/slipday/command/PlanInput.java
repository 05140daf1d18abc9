package slipday.command;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.output.FindingsText;
import slipday.output.Ink;

/** The plan a command is about, and how it is read. */
final class PlanInput {
  @Parameters(
      index = "0",
      paramLabel = "PLAN",
      description = "The plan's first file; - for standard input.")
  private String plan = "";

  @Option(
      names = "--stdin-name",
      paramLabel = "NAME",
      description = "What to call standard input; its folder is where includes are looked for.")
  private String stdinName = "stdin.season";

  @Option(
      names = "--include-outside",
      description = "Lets the plan include files from outside its folder.")
  private boolean includeOutside;

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      description = "auto, always or never; auto colours on a terminal only.")
  private Colour colour = Colour.AUTO;

  /** The plan as it is called in results. */
  String name() {
    return (plan.equals("-") ? stdinName : plan).replace('\\', '/');
  }

  Ink ink(Streams streams) {
    return colour.ink(streams);
  }

  /**
   * The plan, checked.
   *
   * @throws CommandFailure if its first file can't be used
   */
  Checked read(Streams streams) {
    Pipeline pipeline = new Pipeline(FileTexts.onDisk(), includeOutside);
    Path path = streams.path(name());
    Checked checked =
        plan.equals("-")
            ? pipeline.check(streams.in(), name(), path)
            : pipeline.check(path, name());
    if (!checked.usable()) {
      Finding why = checked.findings().get(0);
      throw new CommandFailure(why.message(), why.help());
    }
    return checked;
  }

  /**
   * Says on the stream of messages what errors stand in the plan.
   *
   * @return the exit code they call for
   */
  int tellErrors(Checked checked, Streams streams) {
    List<Finding> errors =
        checked.findings().stream()
            .filter(f -> f.level() == Level.ERROR && f.allowed().isEmpty())
            .toList();
    if (errors.isEmpty()) {
      return Exit.CLEAN;
    }
    streams.err().print(new FindingsText(Ink.of(false)).text(errors));
    streams.err().print(FindingsText.count(errors));
    return Exit.FINDINGS;
  }
}
