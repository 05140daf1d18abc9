package slipday.command;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import picocli.CommandLine;

/** {@code slipday}: a season plan in text becomes dates, crossings and a calendar. */
public final class Main {
  private static final String NAME = "slipday";

  /** The options that ask for the version. */
  static final List<String> VERSION = List.of("-V", "--version");

  private Main() {}

  public static void main(String[] args) {
    OutputStream out = new FileOutputStream(FileDescriptor.out);
    OutputStream err = new FileOutputStream(FileDescriptor.err);
    Streams streams =
        Streams.of(System.in, out, err, System.getenv(), Path.of(""), Main::onTerminal);
    System.exit(run(streams, args));
  }

  /** From Java 22 on there is a console even where its output goes to a file. */
  @SuppressWarnings("SystemConsoleNull") // What it warns of is asked next.
  static boolean onTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }

  /**
   * Runs a command as {@code main} does, without ending the process.
   *
   * @return the exit code: 0 all is well, 1 findings of error level, 2 unusable
   */
  public static int run(
      InputStream in, OutputStream out, OutputStream err, Map<String, String> env, String... args) {
    return run(Streams.of(in, out, err, env, Path.of(""), () -> false), args);
  }

  static int run(Streams streams, String... args) {
    int code = execute(streams, args);
    streams.out().flush();
    String failure = streams.out().failure().orElse("");
    if (!failure.isEmpty()) {
      streams.err().print("slipday: The result can't be written: " + failure + ".\n");
      code = Exit.UNUSABLE;
    }
    streams.err().flush();
    return code;
  }

  /** {@code help check} as it is known from elsewhere: {@code check --help}. */
  private static String[] asOption(Streams streams, String... args) {
    if (args.length == 0 || args.length > 2 || !args[0].equals("help")) {
      return args;
    }
    if (args.length == 1) {
      return new String[] {"--help"};
    }
    boolean known = Commands.named(args[1], streams).isPresent();
    return known ? new String[] {args[1], "--help"} : new String[] {args[1]};
  }

  /** Only the command asked for is made ready, since to make them all takes a while. */
  private static int execute(Streams streams, String... typed) {
    String[] args = asOption(streams, typed);
    if (args.length == 1 && VERSION.contains(args[0])) {
      streams.out().print(version() + "\n");
      return Exit.CLEAN;
    }
    Optional<Spec> asked = args.length == 0 ? Optional.empty() : Commands.named(args[0], streams);
    if (asked.isEmpty()) {
      return whole(streams).execute(args);
    }
    Spec command = asked.get();
    List<String> rest = Arrays.asList(args).subList(1, args.length);
    Optional<Args> plain = PlainArgs.read(command, rest);
    return plain.isPresent() && command.run().isPresent()
        ? run(command.run().get(), plain.get(), streams)
        : Library.of(NAME + " " + args[0], command, streams).execute(rest.toArray(String[]::new));
  }

  private static int run(ToIntFunction<Args> command, Args args, Streams streams) {
    try {
      return command.applyAsInt(args);
    } catch (RuntimeException e) {
      return Mishaps.fault(e, streams);
    }
  }

  private static String version() {
    return NAME + " " + Version.number();
  }

  /** Every command. */
  static CommandLine whole(Streams streams) {
    Spec root =
        Spec.of(
                "The season of a seed-saving garden.",
                "From a plan in text to its dates, its crossings and its chores.")
            .examples(
                "slipday check plan.season        what is mistaken, what goes wrong",
                "slipday schedule plan.season     when to sow, plant out, pollinate, pick",
                "slipday check --help             more about one command")
            .parts(Commands.all(streams));
    return Library.of(NAME, root, version(), streams);
  }
}
