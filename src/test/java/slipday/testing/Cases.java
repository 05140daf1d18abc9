package slipday.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The case folders {@code src/test/resources/cases/<area>/<name>/}: one folder a behaviour, its
 * name saying which.
 */
public final class Cases {
  private static final Path ROOT = Path.of("src/test/resources/cases");

  private Cases() {}

  /**
   * The cases of an area by name, for a {@code @MethodSource}. Fails if there is none, so that a
   * folder moved away is not a test that passes over nothing.
   *
   * @param needed the files that each case must hold, such as {@code input.season}
   */
  public static Stream<Case> in(String area, String... needed) {
    return in(ROOT.resolve(area), List.of(needed)).stream();
  }

  static List<Case> in(Path folder, List<String> needed) {
    List<Case> cases = folders(folder).stream().map(Case::new).toList();
    if (cases.isEmpty()) {
      throw new IllegalStateException("There is no case in " + folder + ".");
    }
    for (Case each : cases) {
      for (String file : needed) {
        if (!Files.isRegularFile(each.file(file))) {
          throw new IllegalStateException("There is no " + each.file(file) + ".");
        }
      }
    }
    return cases;
  }

  private static List<Path> folders(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.filter(Files::isDirectory).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One case folder; shown by its name. */
  public record Case(Path folder) {
    public String name() {
      return folder.getFileName().toString();
    }

    public Path file(String name) {
      return folder.resolve(name);
    }

    public String read(String name) {
      return Golden.read(file(name));
    }

    /** Compares with a file of this case; see {@link Golden}. */
    public void golden(String name, String actual) {
      Golden.check(file(name), actual);
    }

    @Override
    public String toString() {
      return name();
    }
  }
}
