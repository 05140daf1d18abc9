package slipday.testing;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.util.diff.DiffUtils;

/**
 * Compares what a test got with a file kept beside it. Run with {@code -Dupdate} to renew the files
 * that differ: the run then fails all the same, so that what changed is read before it passes.
 */
public final class Golden {
  private static final int LINES_AROUND = 3;

  private Golden() {}

  /**
   * Line ends count as one kind, everything else counts.
   *
   * @param expectedFile under the project's folder, in the sources rather than in target
   */
  public static void check(Path expectedFile, String actual) {
    check(expectedFile, actual, System.getProperty("update") != null, System.getenv("CI") != null);
  }

  static void check(Path expectedFile, String actual, boolean update, boolean inCi) {
    String got = plainLineEnds(actual);
    String expected = Files.exists(expectedFile) ? plainLineEnds(read(expectedFile)) : null;
    if (got.equals(expected)) {
      return;
    }
    if (update && !inCi) {
      write(expectedFile, got);
      fail(expectedFile + " is renewed: read what changed, then run again without -Dupdate.");
    }
    if (expected == null) {
      fail("There is no " + expectedFile + "; -Dupdate writes it. It would hold:\n" + got);
    }
    fail(expectedFile + " differs; -Dupdate renews it.\n" + difference(expected, got));
  }

  /** Reads a text as UTF-8. */
  public static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void write(Path file, String text) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String plainLineEnds(String text) {
    return text.replace("\r\n", "\n").replace('\r', '\n');
  }

  private static String difference(String expected, String got) {
    List<String> before = lines(expected);
    var patch = DiffUtils.diff(before, lines(got));
    return String.join(
        "\n", DiffUtils.generateUnifiedDiff("expected", "got", before, patch, LINES_AROUND));
  }

  /** Splits at line ends, keeping a last line that has none apart from one that has. */
  private static List<String> lines(String text) {
    return List.of(text.split("\n", -1));
  }
}
