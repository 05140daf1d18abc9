package slipday.command;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** Text out, as UTF-8 whatever the machine's own encoding; it remembers what went wrong. */
final class Sink {
  private final Writer writer;
  private Optional<IOException> failure = Optional.empty();

  Sink(OutputStream out) {
    this.writer = new OutputStreamWriter(new BufferedOutputStream(out), StandardCharsets.UTF_8);
  }

  void print(String text) {
    if (failure.isPresent()) {
      return;
    }
    try {
      writer.write(text);
    } catch (IOException e) {
      failure = Optional.of(e);
    }
  }

  void flush() {
    if (failure.isPresent()) {
      return;
    }
    try {
      writer.flush();
    } catch (IOException e) {
      failure = Optional.of(e);
    }
  }

  /** What kept the text from being written; a reader that left early is no failure. */
  Optional<String> failure() {
    return failure
        .map(e -> String.valueOf(e.getMessage()))
        .filter(m -> !m.toLowerCase(Locale.ROOT).contains("pipe"));
  }

  /** For the command-line library, which prints help by itself. */
  PrintWriter printer() {
    return new PrintWriter(
        new Writer() {
          @Override
          public void write(char[] text, int from, int length) {
            print(new String(text, from, length));
          }

          @Override
          public void flush() {
            Sink.this.flush();
          }

          @Override
          public void close() {
            Sink.this.flush();
          }
        });
  }
}
