package slipday.command;

import slipday.editor.EditorServer;

final class LanguageServerCommand {
  private LanguageServerCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Serves an editor over standard input and output (LSP 3.17).",
            "Editors start it by themselves; docs/editors says how to tell each of them to.")
        .examples("slipday language-server")
        .runs(args -> run(streams));
  }

  private static int run(Streams streams) {
    EditorServer server =
        new EditorServer(
            Version.number(),
            () -> Today.latest(streams),
            fault -> {
              streams.err().print(fault);
              streams.err().flush();
            });
    return server.serve(streams.in(), streams.bytes()) ? Exit.CLEAN : Exit.FINDINGS;
  }
}
