package slipday.command;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * What a run reads and writes; no command touches the process's own.
 *
 * @param out results
 * @param bytes where results go in the end, for what is not text
 * @param err messages
 * @param env the environment's variables
 * @param folder the folder names of files are relative to
 * @param onTerminal whether results go to a terminal
 */
record Streams(
    InputStream in,
    Sink out,
    OutputStream bytes,
    Sink err,
    Map<String, String> env,
    Path folder,
    BooleanSupplier onTerminal) {
  static Streams of(
      InputStream in,
      OutputStream out,
      OutputStream err,
      Map<String, String> env,
      Path folder,
      BooleanSupplier onTerminal) {
    return new Streams(in, new Sink(out), out, new Sink(err), env, folder, onTerminal);
  }

  /**
   * Where a file lies that the user names.
   *
   * @throws CommandFailure if no file can have that name
   */
  Path path(String name) {
    try {
      return folder.resolve(name);
    } catch (InvalidPathException e) {
      throw new CommandFailure("`" + name + "` can't be a path.", "");
    }
  }
}
