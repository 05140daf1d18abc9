package slipday.app;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Something reckoned on a thread of its own while the asker goes on with what does not need it.
 * What it takes never changes, so that what it gives does not depend on when it is done.
 */
final class Meanwhile<T> {
  private final FutureTask<T> task;

  private Meanwhile(Supplier<T> work) {
    this.task = new FutureTask<>(work::get);
  }

  /** Begins at once, unless there is no second processor to do it. */
  static <T> Meanwhile<T> begin(Supplier<T> work) {
    Meanwhile<T> meanwhile = new Meanwhile<>(work);
    if (Runtime.getRuntime().availableProcessors() > 1) {
      Thread thread = new Thread(meanwhile.task, "meanwhile");
      thread.setDaemon(true);
      thread.start();
    }
    return meanwhile;
  }

  /** Begins when it is first asked for, on the thread that asks. */
  static <T> Meanwhile<T> later(Supplier<T> work) {
    return new Meanwhile<>(work);
  }

  /** What came of it. Where it has not begun yet, the asker does it. */
  T get() {
    task.run();
    boolean interrupted = false;
    try {
      while (true) {
        try {
          return task.get();
        } catch (InterruptedException e) {
          interrupted = true;
        }
      }
    } catch (ExecutionException e) {
      throw rethrown(e.getCause());
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private static RuntimeException rethrown(@Nullable Throwable cause) {
    if (cause instanceof Error error) {
      throw error;
    }
    return cause instanceof RuntimeException fault ? fault : new IllegalStateException(cause);
  }
}
