package slipday.command;

import java.nio.file.Path;

/** Commands run in memory for tests of other packages. */
public final class CommandRuns {
  private CommandRuns() {}

  /** What a command prints, run from the project's folder. */
  public static String out(String... args) {
    return Run.in(Path.of(""), args).out();
  }
}
