package slipday.command;

import java.util.List;
import picocli.AutoComplete;
import picocli.CommandLine;

final class CompletionCommand {
  private static final List<String> SHELLS = List.of("bash", "zsh", "fish");

  private CompletionCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of("Prints a script that completes commands, for bash, zsh or fish.")
        .word("SHELL", SHELLS, "bash, zsh or fish; bash if none is named.")
        .examples(
            "source <(slipday completion bash)                   for this shell",
            "slipday completion bash > ~/.local/share/bash-completion/completions/slipday",
            "slipday completion zsh > ~/.zfunc/_slipday          a folder on zsh's fpath",
            "slipday completion fish > ~/.config/fish/completions/slipday.fish")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    String shell = args.words("SHELL").stream().findFirst().orElse("bash");
    CommandLine whole = Main.whole(streams);
    streams
        .out()
        .print(
            switch (shell) {
              case "bash" -> AutoComplete.bash("slipday", whole);
              case "zsh" -> ZshScript.of(CommandWords.of(whole.getCommandSpec()));
              case "fish" -> FishScript.of(CommandWords.of(whole.getCommandSpec()));
              default ->
                  throw new CommandFailure(
                      "There is no script for `" + shell + "`.",
                      "There is one for " + String.join(", ", SHELLS) + ".");
            });
    return Exit.CLEAN;
  }
}
