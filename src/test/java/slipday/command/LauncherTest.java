package slipday.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The start-up archive of a folder that was copied, with a Java that only says how it was called:
 * made beside on the first run, used from then on. The real Java is tried by {@code src/dist}.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "it has a launcher of its own")
class LauncherTest {
  private static final Path DIST = Path.of("src/dist/bin");
  private static final String JAVA =
      """
      #!/bin/sh
      here=${0%/*}
      for word in "$@"; do
        case $word in
          -Xshare:dump) echo dump >>"$here/dumps"; dumps=yes ;;
          -XX:SharedArchiveFile=*) archive=${word#*=} ;;
        esac
      done
      if [ -z "$dumps" ]; then
        echo "$@"
      elif [ -e "$here/unable" ]; then
        exit 1
      else
        echo classes >"$archive"
      fi
      """;

  @TempDir Path place;
  private Path java;
  private Path folder;

  @BeforeEach
  void copyTheFolder() throws IOException {
    place = place.toRealPath();
    java = place.resolve("java 17");
    script(java.resolve("bin/java"), JAVA);
    Files.writeString(java.resolve("release"), "JAVA_VERSION=\"17.0.1\"\n");
    folder = place.resolve("a garden's tool");
    script(folder.resolve("bin/slipday"), Files.readString(DIST.resolve("slipday")));
    script(folder.resolve("lib/prepare"), Files.readString(DIST.resolve("prepare")));
    Files.writeString(folder.resolve("lib/slipday.jar"), "");
    Files.writeString(folder.resolve("lib/classes.list"), "");
  }

  private static void script(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  /** What Java was called with; nothing else may be said. */
  private String run() throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder(folder.resolve("bin/slipday").toString(), "check", "plan.season");
    builder.environment().put("JAVA_HOME", java.toString());
    builder.redirectErrorStream(true);
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    assertThat(said).endsWith("slipday.command.Main check plan.season\n");
    assertThat(said.lines()).hasSize(1);
    return said;
  }

  private void await(String name) throws InterruptedException {
    for (int i = 0; i < 600 && !Files.exists(folder.resolve("lib").resolve(name)); i++) {
      Thread.sleep(100);
    }
    assertThat(folder.resolve("lib").resolve(name)).exists();
  }

  private List<String> left() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("lib"))) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private long dumps() throws IOException {
    return Files.readAllLines(java.resolve("bin/dumps")).size();
  }

  @Test
  void theFirstRunMakesWhatTheNextOnesUse() throws Exception {
    assertThat(run()).doesNotContain("SharedArchiveFile");
    await("slipday-17.0.1.for");
    assertThat(run()).contains("-XX:SharedArchiveFile=").contains("slipday-17.0.1.jsa");
    assertThat(dumps()).isEqualTo(1);
  }

  @Test
  void aFolderThatWasMovedMakesItAnew() throws Exception {
    run();
    await("slipday-17.0.1.for");
    Path moved = place.resolve("moved");
    Files.move(folder, moved);
    folder = moved;
    assertThat(run()).doesNotContain("SharedArchiveFile");
    for (int i = 0; i < 600 && dumps() < 2; i++) {
      Thread.sleep(100);
    }
    for (int i = 0; i < 600 && left().contains("slipday-17.0.1.jsa.maker"); i++) {
      Thread.sleep(100);
    }
    assertThat(run()).contains("-XX:SharedArchiveFile=");
    assertThat(left())
        .containsExactly(
            "classes.list", "prepare", "slipday-17.0.1.for", "slipday-17.0.1.jsa", "slipday.jar");
  }

  @Test
  void aJavaThatCannotIsAskedOnce() throws Exception {
    Files.writeString(java.resolve("bin/unable"), "");
    run();
    await("slipday-17.0.1.jsa.failed");
    assertThat(run()).doesNotContain("SharedArchiveFile");
    assertThat(dumps()).isEqualTo(1);
  }

  @Test
  void withoutTheListOfClassesNothingIsMade() throws Exception {
    Files.delete(folder.resolve("lib/classes.list"));
    assertThat(run()).doesNotContain("SharedArchiveFile");
    assertThat(java.resolve("bin/dumps")).doesNotExist();
  }
}
