package slipday.outside;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Finds the outside readers that {@code .ci/outside} brings. A test that asks for one that isn't
 * there is skipped; where {@code CI=true} it fails instead, so that no check goes missing unseen.
 */
public final class OutsideTools {
  static final String CHROMIUM = "/usr/bin/chromium";

  private static final long SECONDS_AT_MOST = 60;

  private OutsideTools() {}

  /**
   * A Python that can {@code import icalendar}: the one that SLIPDAY_PYTHON names, the one on the
   * PATH, or Debian's.
   */
  public static Tool pythonWithIcalendar() {
    Optional<Tool> found =
        Stream.of(set("SLIPDAY_PYTHON").orElse(""), "python3", "/usr/bin/python3")
            .filter(program -> !program.isEmpty())
            .map(program -> new Tool(List.of(program, "-c"), Map.of("PYTHONIOENCODING", "utf-8")))
            .filter(tool -> tool.runs("import icalendar"))
            .findFirst();
    return requireOrSkip(found, "a python3 with icalendar");
  }

  /**
   * A node that can {@code require('ical.js')} from the folder SLIPDAY_NODE_MODULES, or else from
   * target/outside/node_modules.
   */
  public static Tool nodeWithIcalJs() {
    Path modules = Path.of(set("SLIPDAY_NODE_MODULES").orElse("target/outside/node_modules"));
    Tool node =
        new Tool(List.of("node", "-e"), Map.of("NODE_PATH", modules.toAbsolutePath().toString()));
    return requireOrSkip(
        Optional.of(node).filter(tool -> tool.runs("require('ical.js')")), "a node with ical.js");
  }

  /** A program that takes a script after the options given, such as a shell. */
  public static Tool program(String name, String... options) {
    List<String> line = new ArrayList<>(List.of(name));
    line.addAll(List.of(options));
    Optional<Tool> found = Optional.of(new Tool(line, Map.of())).filter(tool -> tool.runs("true"));
    return requireOrSkip(found, name);
  }

  /** An Rscript that can {@code library(lme4)}; it takes the file of a script. */
  public static Tool rscriptWithLme4() {
    Tool asks = new Tool(List.of("Rscript", "--vanilla", "-e"), Map.of());
    return requireOrSkip(
        Optional.of(new Tool(List.of("Rscript", "--vanilla"), Map.of()))
            .filter(tool -> asks.runs("library(lme4)")),
        "an Rscript with lme4");
  }

  /** A compiler of C for Windows; it takes the file of a program. */
  public static Tool windowsCompiler() {
    Tool compiler = new Tool(List.of("x86_64-w64-mingw32-gcc"), Map.of());
    return requireOrSkip(Optional.of(compiler).filter(tool -> tool.runs("--version")), "mingw-w64");
  }

  /** Wine's command interpreter; it takes the interpreter's options. */
  public static Tool wine(Map<String, String> environment) {
    Map<String, String> all = new HashMap<>(environment);
    all.put("WINEPREFIX", Path.of("target/outside/wine").toAbsolutePath().toString());
    all.put("WINEDEBUG", "-all");
    all.put("DISPLAY", "");
    all.putIfAbsent("JAVA_HOME", "");
    Tool asked = new Tool(List.of("wine"), all);
    requireOrSkip(Optional.of(asked).filter(tool -> tool.runs("wineboot")), "wine");
    return new Tool(List.of("wine", "cmd"), all);
  }

  /** Chromium, and the driver that comes with it. */
  static void chromium() {
    Tool driver = new Tool(List.of("chromedriver"), Map.of());
    Optional<String> found =
        Optional.of(CHROMIUM)
            .filter(program -> Files.isExecutable(Path.of(program)))
            .filter(program -> driver.runs("--version"));
    requireOrSkip(found, "Chromium with its driver");
  }

  /** What zbar reads of the codes in pictures, in their order. */
  public static List<String> barcodes(List<Path> pictures) {
    Tool zbar = new Tool(List.of("zbarimg", "--quiet", "--raw"), Map.of());
    Tool found =
        requireOrSkip(Optional.of(zbar).filter(z -> z.runs("--version")), "zbarimg of zbar");
    String[] names = pictures.stream().map(Path::toString).toArray(String[]::new);
    String[] others = java.util.Arrays.copyOfRange(names, 1, names.length);
    return found.run(names[0], others).lines().filter(l -> !l.startsWith("Connection ")).toList();
  }

  /** The script of axe-core, which judges how well a page can be used by everybody. */
  public static String axe() {
    Path file =
        Path.of(set("SLIPDAY_NODE_MODULES").orElse("target/outside/node_modules"))
            .resolve("axe-core/axe.min.js");
    Path found = requireOrSkip(Optional.of(file).filter(Files::isRegularFile), "axe-core");
    try {
      return Files.readString(found);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What was found; else the test is skipped, or fails under CI. */
  public static <T> T requireOrSkip(Optional<T> found, String what) {
    return requireOrSkip(found, what, "true".equals(System.getenv("CI")));
  }

  static <T> T requireOrSkip(Optional<T> found, String what, boolean inCi) {
    if (found.isPresent()) {
      return found.get();
    }
    String missing = "There is no " + what + " here; `.ci/outside` brings it.";
    return inCi ? fail(missing) : abort(missing);
  }

  private static Optional<String> set(String variable) {
    return Optional.ofNullable(System.getenv(variable)).filter(value -> !value.isBlank());
  }

  /** A program that takes a script as its last option. */
  public record Tool(List<String> command, Map<String, String> environment) {
    public Tool {
      command = List.copyOf(command);
      environment = Map.copyOf(environment);
    }

    /**
     * Runs a script and gives what it printed; the test fails if it exits with anything but 0.
     *
     * @param arguments given to the script, in {@code sys.argv[1:]} or {@code
     *     process.argv.slice(1)}
     */
    public String run(String script, String... arguments) {
      Result result = start(script, arguments);
      if (result.exitCode != 0) {
        fail(command.get(0) + " exited with " + result.exitCode + ":\n" + result.printed);
      }
      return result.printed;
    }

    /** What it prints, whatever it exits with. */
    public String print(String script, String... arguments) {
      return start(script, arguments).printed;
    }

    boolean runs(String script) {
      try {
        return start(script).exitCode == 0;
      } catch (UncheckedIOException e) {
        return false; // no such program
      }
    }

    private Result start(String script, String... arguments) {
      List<String> line = new ArrayList<>(command);
      line.add(script);
      line.addAll(List.of(arguments));
      try {
        Path printed = Files.createTempFile("outside", ".txt");
        try {
          ProcessBuilder builder = new ProcessBuilder(line).redirectErrorStream(true);
          builder.environment().putAll(environment);
          Process process = builder.redirectOutput(printed.toFile()).start();
          process.getOutputStream().close();
          if (!process.waitFor(SECONDS_AT_MOST, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            return fail(line.get(0) + " took more than " + SECONDS_AT_MOST + " s.");
          }
          return new Result(process.exitValue(), Files.readString(printed, StandardCharsets.UTF_8));
        } finally {
          Files.delete(printed);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return fail("Interrupted while waiting for " + line.get(0) + ".");
      }
    }
  }

  private record Result(int exitCode, String printed) {}
}
