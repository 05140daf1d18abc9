package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A writer that is killed leaves the old record or the new one, never less. {@code -Dkills} says
 * how often; a process is started for each.
 */
class KilledWriterTest {
  private static final int KILLS = Integer.getInteger("kills", 40);

  @TempDir Path folder;

  @Test
  void whatWasWrittenStays() throws IOException, InterruptedException {
    Random random = new Random(20270708);
    Path file = folder.resolve("2026.season");
    long least = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      long told = least + writeUntilKilled(random);
      List<String> lines = Files.exists(file) ? Files.readString(file).lines().toList() : List.of();
      for (int i = 0; i < lines.size(); i++) {
        assertThat(lines.get(i)).isEqualTo("2026-07-08 note \"" + (i + 1) + "\"");
      }
      assertThat((long) lines.size()).as("after kill %d", kill).isBetween(told, told + 1);
      assertThat(lines.isEmpty() || Files.readString(file).endsWith("\"\n")).isTrue();
      least = lines.size();
    }
    assertThat(least).isGreaterThan(KILLS / 2);
  }

  /** How many lines the writer told of before its end. */
  private long writeUntilKilled(Random random) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    Path told = Files.writeString(folder.resolve("told.txt"), "");
    Process writer =
        new ProcessBuilder(
                java,
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classes,
                AppendingWriter.class.getName(),
                folder.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .redirectOutput(told.toFile())
            .start();
    while (writer.isAlive() && Files.size(told) == 0) {
      Thread.sleep(1);
    }
    Thread.sleep(random.nextInt(12), random.nextInt(1_000_000));
    writer.destroyForcibly().waitFor();
    return Files.size(told);
  }
}
