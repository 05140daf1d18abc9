package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipday.testing.Golden;

/**
 * Every command shown in the docs is run, and what it prints is what the docs show. A block begins
 * with <code>```console</code> and a line {@code $ slipday …}; {@code | head -20} and {@code | tail
 * -20} cut what is shown.
 */
class DocsTest {
  private static final String OPENS = "```console";
  private static final String CLOSES = "```";

  @ParameterizedTest
  @ValueSource(strings = {"docs/tour.md"})
  void showsWhatTheCommandsPrint(String file) {
    Path path = Path.of(file);
    Golden.check(path, rerun(Golden.read(path)));
  }

  private static String rerun(String page) {
    List<String> lines = new ArrayList<>();
    boolean inside = false;
    for (String line : page.lines().toList()) {
      if (line.equals(CLOSES)) {
        inside = false;
      }
      if (!inside) {
        lines.add(line);
      } else if (line.startsWith("$ ")) {
        lines.add(line);
        lines.addAll(output(line.substring(2)));
      }
      if (line.equals(OPENS)) {
        inside = true;
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private static List<String> output(String command) {
    String[] parts = command.split(" \\| ");
    String[] words = parts[0].split(" ");
    assertThat(words[0]).isEqualTo("slipday");
    Run run = Run.in(Path.of(""), java.util.Arrays.copyOfRange(words, 1, words.length));
    assertThat(run.exit()).as(command).isNotEqualTo(Exit.UNUSABLE);
    List<String> lines = run.out().stripTrailing().lines().toList();
    for (int i = 1; i < parts.length; i++) {
      lines = cut(lines, parts[i]);
    }
    return lines;
  }

  private static List<String> cut(List<String> lines, String filter) {
    int count = Integer.parseInt(filter.substring(filter.indexOf('-') + 1));
    if (filter.startsWith("head -")) {
      return lines.subList(0, Math.min(count, lines.size()));
    }
    assertThat(filter).startsWith("tail -");
    return lines.subList(Math.max(0, lines.size() - count), lines.size());
  }

  @Test
  void cutsAsTheShellDoes() {
    List<String> lines = List.of("a", "b", "c");
    assertThat(cut(lines, "head -2")).containsExactly("a", "b");
    assertThat(cut(lines, "tail -1")).containsExactly("c");
  }
}
