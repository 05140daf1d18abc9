package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code -o} writes to, and what it never does. */
class OutputFileTest {
  private static final String PLAN =
      """
      season 2026
      include "beds.season"

      site hill
        place          44 N, 72 W
        time zone      America/New_York
        weather        file "w.csv"
        last frost     18 May, 1 in 10 after 30 May
        first frost    27 September, 1 in 10 before 14 September
      """;

  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(folder.resolve("plan.season"), PLAN);
    Files.writeString(folder.resolve("beds.season"), "bed south\n  size           3 m x 1 m\n");
    Files.writeString(folder.resolve("w.csv"), "date,low (C),high (C)\n2020-05-01,3,12\n");
  }

  private Run run(String command, String output) {
    return Run.in(folder, command, "plan.season", "-o", output);
  }

  @ParameterizedTest
  @ValueSource(strings = {"report", "sheet", "labels", "calendar"})
  void whatWasReadIsNeverWrittenOver(String command) throws IOException {
    Files.createSymbolicLink(folder.resolve("link.html"), Path.of("beds.season"));
    for (String read : new String[] {"plan.season", "./beds.season", "w.csv", "link.html"}) {
      Run run = run(command, read);
      assertThat(run.exit()).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.err())
          .isEqualTo(
              "slipday: `"
                  + read
                  + "` is one of the files that were read, and is left as it is.\n"
                  + "Name another file to write.\n");
    }
    assertThat(folder.resolve("plan.season")).content().isEqualTo(PLAN);
    assertThat(folder.resolve("beds.season")).content().startsWith("bed south");
  }

  @ParameterizedTest
  @ValueSource(strings = {"report", "sheet", "labels", "calendar"})
  void aHyphenIsStandardOutput(String command) {
    Run plain = Run.in(folder, command, "plan.season");
    assertThat(run(command, "-")).isEqualTo(plain);
    assertThat(folder.resolve("-")).doesNotExist();
  }

  @ParameterizedTest
  @ValueSource(strings = {"sheet", "calendar"})
  void aPipeTakesWhatIsWritten(String command) throws Exception {
    Path pipe = folder.resolve("pipe");
    assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    CompletableFuture<String> taken =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return Files.readString(pipe);
              } catch (IOException e) {
                return e.toString();
              }
            });
    Run run = run(command, "pipe");
    assertThat(run.err()).doesNotContain("can't be written");
    assertThat(taken.get(30, TimeUnit.SECONDS))
        .isEqualTo(Run.in(folder, command, "plan.season").out());
    assertThat(Files.isRegularFile(pipe)).isFalse();
  }

  @Test
  void aLinkLeadsToItsTargetAlsoWhereThatIsYetToBeMade() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("week.html"), Path.of("made.html"));
    for (int i = 0; i < 2; i++) {
      assertThat(run("sheet", "week.html").out()).startsWith("week.html: ");
      assertThat(Files.isSymbolicLink(link)).isTrue();
      assertThat(folder.resolve("made.html")).isRegularFile();
    }
  }
}
