package slipday.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What no text of the project says. Each pattern is put together so as not to match itself. */
class RepositoryTest {
  private static final Pattern REGISTRY =
      Pattern.compile(
          "(registry\\.)?npmjs"
              + "\\.(org|com)|repo1?\\.maven"
              + "\\.|maven\\.org"
              + "\\b"
              + "|central\\.sonatype"
              + "|deb\\.debian"
              + "|pypi"
              + "\\.org|crates"
              + "\\.io"
              + "|proxy\\.golang"
              + "|plugins\\.gradle"
              + "|rubygems"
              + "\\.org|jitpack"
              + "\\.io");

  private static final Pattern MACHINE_PATH =
      Pattern.compile("(?m)(?<![\\w.$}/-])/(work|root|home|tmp|Users)(/|$|(?=[\\s\"'`),;:]))");

  private static final Pattern UNFINISHED =
      Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b");

  @Test
  void noTextNamesAPackageRegistry() {
    assertThat(found(REGISTRY)).isEmpty();
  }

  @Test
  void noTextNamesAPlaceOnSomeMachine() {
    assertThat(found(MACHINE_PATH)).isEmpty();
  }

  @Test
  void whatIsRunByItsNameMayBeRun() throws IOException {
    for (String folder : List.of(".ci", "src/dist/bin")) {
      try (Stream<Path> files = Files.list(Path.of(folder))) {
        assertThat(files.filter(f -> !f.toString().endsWith(".bat"))).allMatch(Files::isExecutable);
      }
    }
  }

  @Test
  void nothingIsMarkedAsUnfinished() {
    assertThat(found(UNFINISHED)).isEmpty();
  }

  @Test
  void thePatternsFindWhatTheyAreFor() {
    assertThat("see https://repo1." + "maven" + ".org/x").containsPattern(REGISTRY);
    assertThat("http://maven.apache.org/POM/4.0.0").doesNotContainPattern(REGISTRY);
    assertThat("cd " + "/wo" + "rk/main").containsPattern(MACHINE_PATH);
    assertThat("\"/t" + "mp\"").containsPattern(MACHINE_PATH);
    assertThat("in target/tmp/x, shoot/root, /usr/bin/env").doesNotContainPattern(MACHINE_PATH);
    assertThat("// TO" + "DO: prune").containsPattern(UNFINISHED);
  }

  @Test
  void theTextsAreAllThere() {
    assertThat(Texts.all().keySet())
        .contains("pom.xml", ".ci/run", "src/main/java/slipday/package-info.java")
        .noneMatch(name -> name.startsWith("target/") || name.startsWith(".git/"));
  }

  private static List<String> found(Pattern pattern) {
    List<String> found = new ArrayList<>();
    Texts.all()
        .forEach(
            (file, text) -> {
              Matcher matcher = pattern.matcher(text);
              while (matcher.find()) {
                long line = text.substring(0, matcher.start()).lines().count();
                found.add(file + ":" + Math.max(1, line) + ": " + matcher.group());
              }
            });
    return found;
  }
}
