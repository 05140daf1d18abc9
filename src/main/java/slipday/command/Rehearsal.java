package slipday.command;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Runs commands as their user would, and shows nothing: the build keeps the classes they take in an
 * archive, from which the real ones start sooner.
 */
final class Rehearsal {
  private Rehearsal() {}

  /**
   * @param args plans
   */
  public static void main(String[] args) {
    for (String plan : args) {
      for (String command : List.of("check", "schedule", "bloom", "calendar", "climate")) {
        run(command, plan);
        run(command, plan, "--format", "json");
      }
      run("report", plan);
      run("why", plan, "beds-overlap");
      run("crops", "--plan", plan);
      run("format", "--check", plan);
    }
    run("explain");
    run("--help");
  }

  private static void run(String... args) {
    // The surroundings are asked for, as by a real run, and left aside.
    Map<String, String> none = new HashMap<>(System.getenv());
    none.clear();
    Streams streams =
        Streams.of(
            InputStream.nullInputStream(),
            OutputStream.nullOutputStream(),
            OutputStream.nullOutputStream(),
            none,
            Path.of(""),
            () -> Main.onTerminal() && !none.isEmpty());
    Main.run(streams, args);
  }
}
