package slipday.command;

import picocli.AutoComplete;
import picocli.CommandLine.Model.CommandSpec;

final class CompletionCommand {
  private CompletionCommand() {}

  static CommandSpec spec(Streams streams) {
    return Spec.of("Prints a script for bash and zsh that completes commands.")
        .examples(
            "source <(slipday completion)                                   for this shell",
            "slipday completion > ~/.local/share/bash-completion/completions/slipday")
        .runs(
            args -> {
              streams.out().print(AutoComplete.bash("slipday", Main.whole(streams)));
              return Exit.CLEAN;
            });
  }
}
