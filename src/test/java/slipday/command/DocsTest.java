package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import slipday.testing.Golden;

/** Every command shown in the docs is run, and what it prints is what the docs show. */
class DocsTest {
  /** Pages on a garden that the project has; they write into a copy of it. */
  static final List<String> IN_THE_PROJECT = List.of("docs/tour.md");

  /** Pages on a garden that their reader writes. */
  static final List<String> FROM_NOTHING = List.of("docs/first-season.md");

  @TempDir Path folder;

  @ParameterizedTest
  @FieldSource("IN_THE_PROJECT")
  void showsWhatTheCommandsPrint(String file) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("plans"))) {
      for (Path each : files.toList()) {
        Files.copy(each, folder.resolve(each));
      }
    }
    Path path = Path.of(file);
    Golden.check(path, new DocPage(folder).rerun(Golden.read(path)));
  }

  @ParameterizedTest
  @FieldSource("FROM_NOTHING")
  void canBeFollowedFromNothing(String file) {
    Path path = Path.of(file);
    Golden.check(path, new DocPage(folder).rerun(Golden.read(path)));
  }

  @Test
  void cutsAsTheShellDoes() {
    List<String> lines = List.of("a", "b", "c");
    assertThat(DocPage.cut(lines, "head -2")).containsExactly("a", "b");
    assertThat(DocPage.cut(lines, "tail -1")).containsExactly("c");
  }
}
