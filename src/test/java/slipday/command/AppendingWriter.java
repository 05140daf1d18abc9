package slipday.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A process that adds line after line to a record until it is killed. */
final class AppendingWriter {
  private AppendingWriter() {}

  /**
   * @param args the record's folder
   */
  public static void main(String[] args) {
    Path folder = Path.of(args[0]);
    while (true) {
      RecordLock.holding(folder, () -> append(folder.resolve("2026.season")));
    }
  }

  private static boolean append(Path file) {
    try {
      String text = Files.exists(file) ? Files.readString(file) : "";
      long next = text.lines().count() + 1;
      FileWriting.replace(file, "2026.season", text + "2026-07-08 note \"" + next + "\"\n");
      System.out.write('.');
      System.out.flush();
      return true;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
