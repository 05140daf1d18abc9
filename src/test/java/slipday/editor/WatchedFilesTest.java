package slipday.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that change behind the editor's back, as when a command adds to the record. */
class WatchedFilesTest {
  @TempDir Path folder;

  @Test
  void whatACommandWritesShowsWithoutAKeyStruck() throws IOException {
    folder = folder.toRealPath();
    Path plan = Files.writeString(folder.resolve("plan.season"), EditorServerTest.PLAN);
    Path record = Files.createDirectories(folder.resolve("record")).resolve("2026.season");
    Files.writeString(record, "2026-05-12 sowed tern-amber-f3, 16 seeds\n");
    try (Editor editor = new Editor()) {
      assertThat(Editor.get(editor.asked)).isEqualTo("workspace/didChangeWatchedFiles");
      editor.open(plan);
      Files.writeString(record, "2026-07-15 took 3A\n", StandardOpenOption.APPEND);
      FileEvent changed = new FileEvent(record.toUri().toString(), FileChangeType.Changed);
      editor
          .server
          .getWorkspaceService()
          .didChangeWatchedFiles(new DidChangeWatchedFilesParams(List.of(changed)));
      assertThat(editor.awaitRule(record, "unknown-tag")).isNotEmpty();
      assertThat(editor.leave()).isTrue();
      assertThat(editor.log).isEmpty();
    }
  }
}
