package slipday.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

/** A command run in memory, in a folder. */
record Run(int exit, String out, String err) {
  /** The last hour of 2026, by the clock of a run that must repeat. */
  static final Map<String, String> AT_YEARS_END = Map.of("SOURCE_DATE_EPOCH", "1830294000");

  static Run in(Path folder, String... args) {
    return in(folder, new byte[0], AT_YEARS_END, false, args);
  }

  static Run in(
      Path folder, byte[] stdin, Map<String, String> env, boolean onTerminal, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Streams streams =
        Streams.of(new ByteArrayInputStream(stdin), out, err, env, folder, () -> onTerminal);
    int exit = Main.run(streams, args);
    return new Run(
        exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
