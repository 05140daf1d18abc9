package slipday.command;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.ToIntFunction;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParseResult;

/**
 * Commands as the command-line library knows them. They are put together by calls rather than read
 * off annotations: reading those by reflection takes longer than checking a plan.
 */
final class Library {
  private final Streams streams;

  private Library(Streams streams) {
    this.streams = streams;
  }

  /**
   * @param name as typed, such as {@code slipday check}
   */
  static CommandLine of(String name, Spec spec, Streams streams) {
    return ready(new Library(streams).command(spec).name(name), streams);
  }

  /** The same, and it tells its version. */
  static CommandLine of(String name, Spec spec, String version, Streams streams) {
    CommandSpec root = new Library(streams).command(spec).name(name);
    root.version(version);
    root.usageMessage().synopsisSubcommandLabel("COMMAND");
    root.usageMessage().commandListHeading("Commands:%n");
    root.addOption(
        OptionSpec.builder(Main.VERSION.toArray(String[]::new))
            .versionHelp(true)
            .description("Shows the version.")
            .build());
    return ready(root, streams);
  }

  private static CommandLine ready(CommandSpec spec, Streams streams) {
    CommandLine line = new CommandLine(spec);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setOut(streams.out().printer());
    line.setErr(streams.err().printer());
    line.setParameterExceptionHandler((e, a) -> Mishaps.usage(e, streams));
    line.setExecutionExceptionHandler((e, l, r) -> Mishaps.fault(e, streams));
    return line;
  }

  private CommandSpec command(Spec spec) {
    Body body = new Body();
    CommandSpec command = CommandSpec.wrapWithoutInspection(body);
    describe(command, spec);
    spec.options().forEach(option -> command.addOption(option(option)));
    spec.places().forEach(place -> command.addPositional(place(place)));
    spec.parts().forEach((name, part) -> command.addSubcommand(name, command(part)));
    body.run = () -> run(command, spec);
    return command;
  }

  private static final class Body implements Callable<Integer> {
    private Callable<Integer> run = () -> Exit.UNUSABLE;

    @Override
    public Integer call() throws Exception {
      return run.call();
    }
  }

  private static void describe(CommandSpec command, Spec spec) {
    UsageMessageSpec usage = command.usageMessage();
    int more = spec.more().size();
    String[] description = new String[more == 0 ? 2 : more + 3];
    Arrays.fill(description, "");
    description[0] = spec.sentence();
    for (int i = 0; i < more; i++) {
      description[i + 2] = spec.more().get(i);
    }
    usage.description(escaped(description));
    usage.width(80);
    usage.exitCodeListHeading("%nExit codes:%n");
    usage.exitCodeList(Exit.MEANINGS);
    usage.footerHeading("%nExamples:%n");
    usage.footer(spec.examples().stream().map(l -> "  " + escaped(l)[0]).toArray(String[]::new));
    usage.synopsisSubcommandLabel("QUESTION");
    usage.commandListHeading("%nQuestions:%n");
    command.exitCodeOnExecutionException(Exit.UNUSABLE);
    command.exitCodeOnInvalidInput(Exit.UNUSABLE);
    command.addOption(
        OptionSpec.builder("-h", "--help").usageHelp(true).description("Shows this help.").build());
  }

  /** The library takes a percent sign for the start of a format. */
  private static String[] escaped(String... lines) {
    return Arrays.stream(lines).map(l -> l.replace("%", "%%")).toArray(String[]::new);
  }

  private static OptionSpec option(Spec.Option option) {
    OptionSpec.Builder built =
        OptionSpec.builder(option.names().toArray(String[]::new))
            .description(escaped(option.description()));
    if (option.many()) {
      built.type(String[].class).arity("1..*").paramLabel(option.label());
    } else if (!option.isFlag()) {
      built.type(String.class).paramLabel(option.label());
    }
    if (!option.words().isEmpty()) {
      built.completionCandidates(option.words());
    }
    return built.build();
  }

  private static PositionalParamSpec place(Spec.Place place) {
    PositionalParamSpec.Builder built =
        PositionalParamSpec.builder()
            .index(place.index())
            .arity(place.arity())
            .required(place.isNeeded())
            .type(String[].class)
            .paramLabel(place.label())
            .description(escaped(place.description()));
    if (!place.words().isEmpty()) {
      built.completionCandidates(place.words());
    }
    return built.build();
  }

  private int run(CommandSpec command, Spec spec) {
    CommandLine line = command.commandLine();
    if (spec.run().isEmpty()) {
      streams.err().print(line.getUsageMessage());
      return Exit.UNUSABLE;
    }
    ToIntFunction<Args> run = spec.run().get();
    return run.applyAsInt(args(spec, line.getParseResult()));
  }

  /** What was asked for, in our own terms. */
  static Args args(Spec spec, ParseResult parsed) {
    Map<String, String> options = new HashMap<>();
    for (OptionSpec option : parsed.matchedOptions()) {
      Object value = option.getValue();
      for (String name : option.names()) {
        options.put(
            name,
            value instanceof String[] words
                ? String.join(" ", words)
                : value instanceof String text ? text : "");
      }
    }
    Map<String, List<String>> words = new HashMap<>();
    for (PositionalParamSpec place : parsed.matchedPositionals()) {
      words.put(place.paramLabel(), Arrays.asList(place.<String[]>getValue()));
    }
    return new Args(spec, options, words);
  }
}
