package slipday.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What stands before any command. */
@Command(
    name = "slipday",
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    description = {
      "",
      "The season of a seed-saving garden: from a plan in text to its dates,",
      "its crossings and its chores.",
      ""
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  slipday check plan.season        what is mistaken, what goes wrong",
      "  slipday schedule plan.season     when to sow, plant out, pollinate, pick",
      "  slipday check --help             more about one command"
    })
final class SlipdayCommand implements Callable<Integer> {
  private final Streams streams;

  @Spec private CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Shows this help.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Shows the version.")
  private boolean version;

  SlipdayCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    streams.err().print(spec.commandLine().getUsageMessage());
    return Exit.UNUSABLE;
  }
}
