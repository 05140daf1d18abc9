package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MainTest {
  private static final String SITE =
      "season 2026\nsite hill\n  place 44 N, 72 W\n  time zone America/New_York\n"
          + "  last frost 18 May\n  first frost 27 September\n";

  @TempDir Path folder;

  static Set<String> commands() {
    return Commands.all(
            Streams.of(
                InputStream.nullInputStream(),
                OutputStream.nullOutputStream(),
                OutputStream.nullOutputStream(),
                Map.of(),
                Path.of(""),
                () -> false))
        .keySet();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandHasHelpWithExamplesAndExitCodes(String command) {
    Run run = Run.in(folder, command, "--help");
    assertThat(run.exit()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Usage: slipday " + command)
        .contains("\nExit codes:\n", "\nExamples:\n", "slipday " + command);
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void theHelpOfAllNamesEveryCommand() {
    Run run = Run.in(folder, "--help");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).contains(commands()).contains("Exit codes:", "Examples:");
  }

  @Test
  void withoutACommandThereIsHelpAndExitCode2() {
    Run run = Run.in(folder);
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("Usage: slipday");
  }

  @Test
  void theVersionIsOneLine() {
    Run run = Run.in(folder, "--version");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).startsWith("slipday ").hasLineCount(1);
    assertThat(Run.in(folder, "-V")).isEqualTo(run);
  }

  @Test
  void theShellIsGivenEveryCommand() {
    Run run = Run.in(folder, "completion");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).startsWith("#!").contains(commands());
  }

  @Test
  void theThresholdDecidesTheExitCode() throws IOException {
    Path plan = folder.resolve("plan.season");
    Files.writeString(plan, SITE + "bed x\nbed x\n");
    assertThat(Run.in(folder, "check", "plan.season").exit()).isEqualTo(1);
    assertThat(Run.in(folder, "check", "plan.season", "--fail-on", "note").exit()).isEqualTo(1);
  }

  @Test
  void colourIsForTerminalsAndAddsNothing() throws IOException {
    Files.writeString(folder.resolve("plan.season"), SITE + "bed x\nbed x\n");
    String plain = check(Map.of(), false);
    assertThat(plain).doesNotContain("\u001b");
    assertThat(check(Map.of("NO_COLOR", "1"), true)).isEqualTo(plain);
    assertThat(check(Map.of("TERM", "dumb"), true)).isEqualTo(plain);
    assertThat(check(Map.of(), true, "--color", "never")).isEqualTo(plain);
    String coloured = check(Map.of(), true);
    assertThat(coloured).contains("\u001b[1;31merror[name-twice]\u001b[0m");
    assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(plain);
    assertThat(check(Map.of("NO_COLOR", "1"), false, "--color", "always")).isEqualTo(coloured);
  }

  private String check(Map<String, String> env, boolean onTerminal, String... more) {
    String[] args = new String[more.length + 2];
    args[0] = "check";
    args[1] = "plan.season";
    System.arraycopy(more, 0, args, 2, more.length);
    return Run.in(folder, new byte[0], env, onTerminal, args).out();
  }

  @Test
  void aReaderThatLeavesEarlyIsNoFailure() {
    assertThat(exitWith("Broken pipe")).isZero();
  }

  @Test
  void aFullDiskIs() {
    assertThat(exitWith("No space left on device")).isEqualTo(2);
  }

  private static int exitWith(String failure) {
    OutputStream out =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException(failure);
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exit = Main.run(InputStream.nullInputStream(), out, err, Map.of(), "crops");
    String said = err.toString(StandardCharsets.UTF_8);
    assertThat(said)
        .isEqualTo(exit == 0 ? "" : "slipday: The result can't be written: " + failure + ".\n");
    return exit;
  }

  @Test
  void filesAreLaidOutInPlaceWholeAndOnlyWhereTheyChange() throws IOException {
    Path loose = folder.resolve("loose.season");
    Path laid = folder.resolve("laid.season");
    Files.writeString(loose, "bed   x\r\n size 3 m x 1 m\r\n");
    Files.writeString(laid, "bed x\n  size           3 m x 1 m\n");
    var before = Files.getLastModifiedTime(laid);
    Run run = Run.in(folder, "format", "loose.season", "laid.season");
    assertThat(run).isEqualTo(new Run(0, "loose.season\n", ""));
    assertThat(loose).hasContent("bed x\n  size           3 m x 1 m\n");
    assertThat(Files.getLastModifiedTime(laid)).isEqualTo(before);
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(2);
    }
  }

  @Test
  void aFileWithMistakesIsLeftAsItIs() throws IOException {
    Path wrong = folder.resolve("wrong.season");
    Files.writeString(wrong, "bed   x\n sise 3 m x 1 m\n");
    Run run = Run.in(folder, "format", "wrong.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("`wrong.season` has mistakes and is left as it is.");
    assertThat(wrong).content().isEqualTo("bed   x\n sise 3 m x 1 m\n");
  }
}
