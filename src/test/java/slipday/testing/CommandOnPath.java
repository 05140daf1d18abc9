package slipday.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;

/** A {@code slipday} for other programs to start: the classes under test, at the end of 2035. */
public final class CommandOnPath {
  private CommandOnPath() {}

  /** Puts the command into a folder, and gives the search path that begins with it. */
  public static String in(Path folder) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    String absolute =
        Arrays.stream(classes.split(":", -1))
            .map(c -> Path.of(c).toAbsolutePath().toString())
            .collect(Collectors.joining(":"));
    Path command = Files.createDirectories(folder).resolve("slipday");
    Files.writeString(
        command,
        "#!/bin/sh\nSOURCE_DATE_EPOCH=2082672000 exec '"
            + java
            + "' -XX:TieredStopAtLevel=1 -cp '"
            + absolute
            + "' slipday.command.Main \"$@\"\n");
    if (!command.toFile().setExecutable(true)) {
      throw new IOException(command + " can't be made executable");
    }
    return folder + ":" + System.getenv("PATH");
  }
}
