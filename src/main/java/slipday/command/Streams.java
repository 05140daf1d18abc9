package slipday.command;

import java.io.InputStream;
import java.io.OutputStream;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * What a run reads and writes; no command touches the process's own.
 *
 * @param out results
 * @param err messages
 * @param env the environment's variables
 * @param onTerminal whether results go to a terminal
 */
record Streams(
    InputStream in, Sink out, Sink err, Map<String, String> env, BooleanSupplier onTerminal) {
  static Streams of(
      InputStream in,
      OutputStream out,
      OutputStream err,
      Map<String, String> env,
      BooleanSupplier onTerminal) {
    return new Streams(in, new Sink(out), new Sink(err), env, onTerminal);
  }
}
