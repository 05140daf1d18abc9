package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipday.outside.OutsideTools;

/** The shell scripts that start the tool, with a Java that only tells what it was asked. */
class LaunchersTest {
  private static final String TELLS = "#!/bin/sh\necho \"$@\"\n";

  @TempDir Path folder;

  @BeforeEach
  void aShell() {
    OutsideTools.program("sh", "-c");
  }

  private Path script(String from, String to) throws IOException {
    return program(to, Files.readString(Path.of(from)));
  }

  private Path program(String to, String text) throws IOException {
    Path program = folder.resolve(to);
    Files.createDirectories(program.getParent());
    Files.writeString(program, text);
    assertThat(program.toFile().setExecutable(true)).isTrue();
    return program;
  }

  /** On a path that lacks even {@code readlink}, through two links. */
  @Test
  void theToolIsFoundBehindLinksWhereThePathHoldsNothing() throws Exception {
    script("src/dist/bin/slipday", "tool/bin/slipday");
    program("java/bin/java", TELLS);
    Files.writeString(folder.resolve("java/release"), "JAVA_VERSION=\"17.0.1\"\n");
    Path first = Files.createDirectories(folder.resolve("links")).resolve("first");
    Files.createSymbolicLink(first, Path.of("../tool/bin/slipday"));
    Path second = Files.createSymbolicLink(folder.resolve("second"), first);
    String said = run(second, "check", "plan.season");
    assertThat(said).contains("-cp " + folder.toRealPath() + "/tool/bin/../lib/slipday.jar");
    assertThat(said).endsWith("slipday.command.Main check plan.season\n");
  }

  @Test
  void theArchiveIsMadeBesideAndMovedIntoItsPlace() throws Exception {
    Path prepare = script("src/dist/bin/prepare", "lib/prepare");
    Path server = Files.createDirectories(folder.resolve("lib/runtime/lib/server"));
    program(
        "lib/runtime/bin/java",
        "#!/bin/sh\nfor w in \"$@\"; do case $w in -XX:SharedArchiveFile=*)"
            + " echo \"$w\" >\"${w#*=}\" ;; esac; done\n");
    // One that was cut short left its number and what it had made so far.
    String gone = "4194304";
    Files.writeString(server.resolve("classes.jsa.maker"), gone + "\n");
    Files.writeString(server.resolve("classes.jsa.new"), "half");
    run(prepare);
    assertThat(Files.readString(server.resolve("classes.jsa"))).endsWith("classes.jsa.new\n");
    try (Stream<Path> left = Files.list(server)) {
      assertThat(left.map(f -> f.getFileName().toString())).containsExactly("classes.jsa");
    }
  }

  private String run(Path program, String... args) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(program.toString());
    builder.command().addAll(List.of(args));
    builder.environment().clear();
    builder.environment().put("PATH", folder.resolve("empty").toString());
    builder.environment().put("JAVA_HOME", folder.resolve("java").toString());
    File said = folder.resolve("said").toFile();
    Process process = builder.redirectErrorStream(true).redirectOutput(said).start();
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    String text = Files.readString(said.toPath());
    assertThat(process.exitValue()).as(text).isZero();
    return text;
  }
}
