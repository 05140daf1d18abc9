package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipday.outside.OutsideTools;
import slipday.testing.Golden;

/**
 * The launcher for Windows, read by a command interpreter that others wrote, Wine's, with a Java
 * that only says how it was called. Wine stands in for Windows, which this was not tried on; of a
 * batch file that another calls it gives no exit code but 0 and 1.
 */
class WindowsLauncherTest {
  private static final String JAVA =
      """
      #include <stdio.h>
      #include <stdlib.h>
      #include <string.h>

      int main(int count, char **words) {
        if (count > 1 && strcmp(words[1], "-version") == 0) {
          fprintf(stderr, "Picked up JAVA_TOOL_OPTIONS: -Dnothing\\n");
          fprintf(stderr, "openjdk version \\"%s\\" 2025-04-15\\n", getenv("SAYS_IT_IS"));
          return 0;
        }
        for (int i = 1; i < count; i++) {
          printf("[%s]\\n", words[i]);
        }
        return atoi(getenv("ENDS_WITH"));
      }
      """;

  @TempDir private static Path folder;
  private static Path place;

  @BeforeAll
  static void makeJava() throws IOException {
    place = folder.toRealPath().resolve("Program Files (x86)");
    Files.createDirectories(place.resolve("jdk/bin"));
    Path source = Files.writeString(place.resolve("java.c"), JAVA);
    OutsideTools.windowsCompiler()
        .run(source.toString(), "-o", place.resolve("jdk/bin/java.exe").toString());
  }

  @BeforeEach
  void copyTheFolder() throws IOException {
    Files.createDirectories(place.resolve("tool/bin"));
    Files.createDirectories(place.resolve("tool/lib"));
    Files.writeString(place.resolve("tool/lib/slipday.jar"), "");
    Files.writeString(
        place.resolve("tool/bin/slipday.bat"),
        Golden.read(Path.of("src/dist/bin/slipday.bat")).replace("\n", "\r\n"));
    Files.deleteIfExists(place.resolve("jdk/release"));
  }

  private static String windows(Path path) {
    return "Z:" + path.toString().replace('/', '\\');
  }

  private void release(String version) throws IOException {
    Files.writeString(
        place.resolve("jdk/release"),
        "IMPLEMENTOR=\"Nobody\"\r\nJAVA_VERSION=\"" + version + "\"\r\nJAVA_VERSION_DATE=\"\"\r\n");
  }

  private List<String> run(String words, Map<String, String> environment) throws IOException {
    Path caller = folder.toRealPath().resolve("caller.bat");
    Files.writeString(
        caller,
        (environment.containsKey("JAVA_HOME") ? "" : "@set JAVA_HOME=\r\n")
            + "@call \""
            + windows(place.resolve("tool/bin/slipday.bat"))
            + "\" "
            + words
            + "\r\n");
    return OutsideTools.wine(environment)
        .print("/c", windows(caller))
        .replace("\r", "")
        .lines()
        .toList();
  }

  private Map<String, String> home(String version) {
    return Map.of(
        "JAVA_HOME", windows(place.resolve("jdk")), "SAYS_IT_IS", version, "ENDS_WITH", "0");
  }

  @Test
  void wordsReachJavaAsTheyWereWritten() throws IOException {
    release("17.0.15");
    assertThat(run("check \"my plan.season\" --date 2026-07-01", home("none")))
        .endsWith(
            "[slipday.command.Main]", "[check]", "[my plan.season]", "[--date]", "[2026-07-01]")
        .contains("[-cp]", "[" + windows(place.resolve("tool/bin")) + "\\..\\lib\\slipday.jar]");
  }

  @Test
  void aJavaOfThePathDoes() throws IOException {
    release("17.0.15");
    Map<String, String> path =
        Map.of("WINEPATH", windows(place.resolve("jdk/bin")), "SAYS_IT_IS", "", "ENDS_WITH", "0");
    assertThat(run("--version", path)).endsWith("[slipday.command.Main]", "[--version]");
  }

  @Test
  void oneThatIsTooOldIsTold() throws IOException {
    release("1.8.0_302");
    assertThat(run("check x", home("1.8.0_302")))
        .first()
        .asString()
        .startsWith("slipday: Java 17 or newer is needed, but ")
        .endsWith("java.exe\" is Java 1.8.0_302.");
  }

  @Test
  void oneWithoutAReleaseFileIsAsked() throws IOException {
    assertThat(run("check x", home("21.0.1"))).endsWith("[check]", "[x]");
  }

  @Test
  void withoutAnyJavaItSaysWhatToDo() throws IOException {
    assertThat(run("check x", Map.of()))
        .containsExactly(
            "slipday: Java 17 or newer is needed, and no java was found.",
            "Install one and put it on the PATH, or point JAVA_HOME at it.");
    assertThat(run("check x", Map.of("JAVA_HOME", "Z:\\nowhere")))
        .containsExactly(
            "slipday: JAVA_HOME is \"Z:\\nowhere\", but there is no bin\\java.exe in it.",
            "Point JAVA_HOME at Java 17 or newer, or unset it to use the java on the PATH.");
  }
}
