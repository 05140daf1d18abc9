package slipday.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipday.testing.Cases;

/**
 * Each case holds files, the commands that are run on them in {@code commands.txt}, and what they
 * print in {@code transcript.txt}.
 */
class TranscriptTest {
  static Stream<Cases.Case> cases() {
    return Cases.in("command", "commands.txt");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theCommandsPrintWhatTheyShould(Cases.Case each) {
    StringBuilder transcript = new StringBuilder();
    each.read("commands.txt")
        .lines()
        .filter(line -> !line.isBlank())
        .forEach(line -> transcript.append(shown(each.folder(), line)));
    each.golden("transcript.txt", transcript.toString());
  }

  private static String shown(Path folder, String line) {
    int redirect = line.indexOf(" < ");
    String command = redirect < 0 ? line : line.substring(0, redirect);
    byte[] stdin = redirect < 0 ? new byte[0] : bytes(folder.resolve(line.substring(redirect + 3)));
    List<String> words = List.of(command.split(" "));
    Run run =
        Run.in(
            folder,
            stdin,
            Run.AT_YEARS_END,
            false,
            words.subList(1, words.size()).toArray(new String[0]));
    String err = run.err().isEmpty() ? "" : "--- messages\n" + run.err();
    return "$ " + line + "\n" + run.out() + err + "--- exit code " + run.exit() + "\n\n";
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
