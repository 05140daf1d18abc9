package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** A command line read without the library asks for what the library has it ask for. */
class PlainArgsProperties {
  private static final List<String> WORDS =
      List.of(
          "plan.season",
          "-",
          "--",
          "-x",
          "-1",
          "text",
          "json",
          "a b",
          "",
          "\"q\"",
          "'q'",
          "@file",
          "${x}",
          "a=b",
          "--no",
          "--form",
          "-h",
          "--help",
          "12",
          "\u043B");

  private static final Map<String, Spec> COMMANDS = Commands.all(streams());

  private static Streams streams() {
    return Streams.of(
        InputStream.nullInputStream(),
        OutputStream.nullOutputStream(),
        OutputStream.nullOutputStream(),
        Map.of(),
        Path.of(""),
        () -> false);
  }

  @Provide
  Arbitrary<String> commands() {
    return Arbitraries.of(COMMANDS.keySet());
  }

  @Property(tries = 3000)
  void whatIsReadIsWhatTheLibraryReads(@ForAll("commands") String command, @ForAll long seed) {
    Spec spec = COMMANDS.get(command);
    List<String> typed = typed(spec, new SplittableRandom(seed));
    Optional<Args> plain = PlainArgs.read(spec, typed);
    if (plain.isPresent() && spec.parts().isEmpty()) {
      assertThat(library(spec, typed)).as(typed.toString()).isEqualTo(plain);
    }
  }

  private static List<String> typed(Spec spec, SplittableRandom random) {
    List<String> typed = new ArrayList<>();
    int count = random.nextInt(5);
    for (int i = 0; i < count; i++) {
      typed.add(WORDS.get(random.nextInt(random.nextBoolean() ? 1 : WORDS.size())));
    }
    for (Spec.Option option : spec.options()) {
      if (random.nextInt(4) == 0) {
        int at = random.nextInt(typed.size() + 1);
        String name = option.names().get(random.nextInt(option.names().size()));
        String value = WORDS.get(random.nextInt(WORDS.size()));
        switch (random.nextInt(4)) {
          case 0 -> typed.add(at, name + "=" + value);
          case 1 -> typed.add(at, name);
          default -> typed.addAll(at, option.isFlag() ? List.of(name) : List.of(name, value));
        }
      }
    }
    return typed;
  }

  private static Optional<Args> library(Spec spec, List<String> typed) {
    CommandLine line = Library.of("slipday", spec, streams());
    try {
      return Optional.of(Library.args(spec, line.parseArgs(typed.toArray(String[]::new))));
    } catch (ParameterException e) {
      return Optional.empty();
    }
  }

  @Example
  void whatMostPeopleTypeIsReadWithoutTheLibrary() {
    assertThat(read("check", "plan.season")).isPresent();
    assertThat(read("check", "-", "--format", "json", "--color=never", "--allowed")).isPresent();
    assertThat(read("why", "plan.season", "ropewalk", "first", "male")).isPresent();
    assertThat(read("crops")).isPresent();
    assertThat(read("report", "plan.season", "-o", "season.html")).isPresent();
    assertThat(read("report", "plan.season", "-oseason.html")).isEmpty();
    assertThat(read("format", "a.season", "b.season", "--check")).isPresent();
  }

  @Example
  void aMistakeIsLeftToTheLibrary() {
    assertThat(read("check")).isEmpty();
    assertThat(read("check", "a", "b")).isEmpty();
    assertThat(read("check", "a", "--help")).isEmpty();
    assertThat(read("check", "a", "--fromat", "json")).isEmpty();
    assertThat(read("check", "a", "--format")).isEmpty();
    assertThat(read("check", "a", "--allowed=yes")).isEmpty();
    assertThat(read("check", "a", "--allowed", "--allowed")).isEmpty();
    assertThat(read("why", "a")).isEmpty();
  }

  private static Optional<Args> read(String command, String... typed) {
    return PlainArgs.read(COMMANDS.get(command), List.of(typed));
  }
}
