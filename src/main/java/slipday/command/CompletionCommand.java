package slipday.command;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(
    description = {"Prints a script for bash and zsh that completes commands."},
    footerHeading = "%nExamples:%n",
    footer = {
      "  source <(slipday completion)                                   for this shell",
      "  slipday completion > ~/.local/share/bash-completion/completions/slipday"
    })
final class CompletionCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private final HelpOption help = new HelpOption();

  CompletionCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    streams.out().print(AutoComplete.bash("slipday", Main.commandLine(streams)));
    return Exit.CLEAN;
  }
}
