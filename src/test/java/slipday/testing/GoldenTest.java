package slipday.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.AssertionFailedError;

class GoldenTest {
  @TempDir Path folder;

  @Test
  void theSameTextPassesWhateverItsLineEnds() throws IOException {
    Path file = Files.writeString(folder.resolve("a.txt"), "one\r\ntwo\n");
    assertThatCode(() -> Golden.check(file, "one\ntwo\r\n", false, false))
        .doesNotThrowAnyException();
  }

  @Test
  void aDifferenceShowsTheLinesThatDiffer() throws IOException {
    Path file = Files.writeString(folder.resolve("a.txt"), "one\ntwo\nthree\n");
    assertThatThrownBy(() -> Golden.check(file, "one\n2\nthree\n", false, false))
        .isInstanceOf(AssertionFailedError.class)
        .hasMessageContaining("\n-two\n+2\n");
    assertThat(file).hasContent("one\ntwo\nthree\n");
  }

  @Test
  void aMissingLastLineEndIsADifference() throws IOException {
    Path file = Files.writeString(folder.resolve("a.txt"), "one\n");
    assertThatThrownBy(() -> Golden.check(file, "one", false, false))
        .isInstanceOf(AssertionFailedError.class);
  }

  @Test
  void aMissingFileFails() {
    assertThatThrownBy(() -> Golden.check(folder.resolve("none.txt"), "one\n", false, false))
        .isInstanceOf(AssertionFailedError.class)
        .hasMessageContaining("There is no");
  }

  @Test
  void updatingWritesTheFileAndFails() {
    Path file = folder.resolve("deep/new.txt");
    assertThatThrownBy(() -> Golden.check(file, "one\n", true, false))
        .isInstanceOf(AssertionFailedError.class)
        .hasMessageContaining("renewed");
    assertThat(file).hasContent("one\n");
    assertThatCode(() -> Golden.check(file, "one\n", true, false)).doesNotThrowAnyException();
  }

  @Test
  void ciRenewsNothing() throws IOException {
    Path file = Files.writeString(folder.resolve("a.txt"), "one\n");
    assertThatThrownBy(() -> Golden.check(file, "two\n", true, true))
        .isInstanceOf(AssertionFailedError.class)
        .hasMessageContaining("differs");
    assertThat(file).hasContent("one\n");
  }
}
