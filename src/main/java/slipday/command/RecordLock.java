package slipday.command;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;

/** One writer of a record at a time, whether in this process or another. */
final class RecordLock {
  /** A file's lock is the whole process's; within it, writers wait for one another here. */
  private static final ReentrantLock WITHIN = new ReentrantLock();

  private RecordLock() {}

  /**
   * @param folder the record's; made where it is not there
   * @throws CommandFailure if nothing can be written there
   */
  static <T> T holding(Path folder, Supplier<T> work) {
    WITHIN.lock();
    try {
      Files.createDirectories(folder);
      try (FileChannel channel =
          FileChannel.open(
              folder.resolve(".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
        // Closing the channel gives it back.
        channel.lock();
        return work.get();
      }
    } catch (IOException e) {
      throw new CommandFailure("The record can't be written: " + e.getMessage() + ".", "");
    } finally {
      WITHIN.unlock();
    }
  }
}
