package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileWritingTest {
  @TempDir Path folder;

  @Test
  void aFolderIsNoFileToWriteAndNothingIsLeftBehind() throws IOException {
    Path there = Files.createDirectory(folder.resolve("there"));
    assertThatThrownBy(() -> FileWriting.replace(there, "there", "text"))
        .isInstanceOf(CommandFailure.class)
        .hasMessage("`there` is a folder, not a file.");
    assertThatThrownBy(() -> FileWriting.create(there, "there", "text"))
        .isInstanceOf(CommandFailure.class)
        .hasMessageContaining("is there already");
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(there);
    }
  }
}
