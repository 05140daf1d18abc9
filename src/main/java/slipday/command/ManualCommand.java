package slipday.command;

import picocli.CommandLine.Model.CommandSpec;

final class ManualCommand {
  private ManualCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of("Prints the manual page, made from every command's help.")
        .examples(
            "slipday manual > slipday.1 && man ./slipday.1",
            "slipday manual | sudo tee /usr/local/share/man/man1/slipday.1 > /dev/null")
        .runs(
            args -> {
              CommandSpec whole = Main.whole(streams).getCommandSpec();
              streams.out().print(ManualPage.of(CommandWords.of(whole), Version.number()));
              return Exit.CLEAN;
            });
  }
}
