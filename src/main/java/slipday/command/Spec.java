package slipday.command;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.ToIntFunction;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/**
 * A command's words, put together by calls rather than read off annotations: reading those by
 * reflection takes longer than checking a plan.
 */
final class Spec {
  private final Body body = new Body();
  private final CommandSpec spec = CommandSpec.wrapWithoutInspection(body);

  private Spec() {}

  private static final class Body implements Callable<Integer> {
    private Callable<Integer> run = () -> Exit.UNUSABLE;

    @Override
    public Integer call() throws Exception {
      return run.call();
    }
  }

  /**
   * @param sentence what the command does, short enough for the list of commands
   * @param more a paragraph for its own help, line by line
   */
  static Spec of(String sentence, String... more) {
    Spec made = new Spec();
    made.describe(sentence, more);
    return made;
  }

  private void describe(String sentence, String... more) {
    UsageMessageSpec usage = spec.usageMessage();
    String[] description = new String[more.length == 0 ? 2 : more.length + 3];
    Arrays.fill(description, "");
    description[0] = sentence;
    System.arraycopy(more, 0, description, 2, more.length);
    usage.description(escaped(description));
    usage.width(80);
    usage.exitCodeListHeading("%nExit codes:%n");
    usage.exitCodeList(new TreeMap<>(Exit.MEANINGS));
    spec.exitCodeOnExecutionException(Exit.UNUSABLE);
    spec.exitCodeOnInvalidInput(Exit.UNUSABLE);
    spec.addOption(
        OptionSpec.builder("-h", "--help").usageHelp(true).description("Shows this help.").build());
  }

  /** The library takes a percent sign for the start of a format. */
  private static String[] escaped(String... lines) {
    return Arrays.stream(lines).map(l -> l.replace("%", "%%")).toArray(String[]::new);
  }

  /** The plan a command is about, and how it is read. */
  Spec plan() {
    return words("0", "1", "PLAN", "The plan's first file; - for standard input.")
        .option(
            "--stdin-name",
            "NAME",
            "What to call standard input; its folder is where includes are looked for.")
        .flag("--include-outside", "Lets the plan include files from outside its folder.")
        .colour();
  }

  Spec colour() {
    return choice(
        "--color",
        "WHEN",
        Colour.words(),
        "auto, always or never; auto colours on a terminal only.");
  }

  /** The forms a result can have; the first is what it has if none is asked for. */
  Spec forms(String description, Form... fitting) {
    List<String> words = Arrays.stream(fitting).map(Form::toString).toList();
    return choice("--format", "FORM", words, description);
  }

  /**
   * @param index which arguments, such as {@code 0} or {@code 1..*}
   * @param arity how many, such as {@code 1} or {@code 0..*}
   */
  Spec words(String index, String arity, String label, String description) {
    spec.addPositional(
        PositionalParamSpec.builder()
            .index(index)
            .arity(arity)
            .required(!arity.startsWith("0"))
            .type(String[].class)
            .paramLabel(label)
            .description(escaped(description))
            .build());
    return this;
  }

  /** One argument that may be left out, out of a few words. */
  Spec word(String label, List<String> words, String description) {
    spec.addPositional(
        PositionalParamSpec.builder()
            .index("0")
            .arity("0..1")
            .type(String[].class)
            .completionCandidates(words)
            .paramLabel(label)
            .description(description)
            .build());
    return this;
  }

  Spec flag(String name, String description) {
    spec.addOption(OptionSpec.builder(name).description(escaped(description)).build());
    return this;
  }

  Spec option(String name, String label, String description) {
    return option(new String[] {name}, label, description);
  }

  Spec option(String[] names, String label, String description) {
    spec.addOption(
        OptionSpec.builder(names)
            .type(String.class)
            .paramLabel(label)
            .description(escaped(description))
            .build());
    return this;
  }

  Spec choice(String name, String label, List<String> words, String description) {
    spec.addOption(
        OptionSpec.builder(name)
            .type(String.class)
            .completionCandidates(words)
            .paramLabel(label)
            .description(escaped(description))
            .build());
    return this;
  }

  /** Commands of its own, by name, of which one is asked for. */
  CommandSpec parts(Map<String, CommandSpec> parts, Streams streams) {
    parts.forEach(spec::addSubcommand);
    spec.usageMessage().synopsisSubcommandLabel("QUESTION");
    spec.usageMessage().commandListHeading("%nQuestions:%n");
    return runs(
        args -> {
          streams.err().print(args.parsed().commandSpec().commandLine().getUsageMessage());
          return Exit.UNUSABLE;
        });
  }

  Spec examples(String... lines) {
    spec.usageMessage().footerHeading("%nExamples:%n");
    spec.usageMessage()
        .footer(Arrays.stream(lines).map(l -> "  " + escaped(l)[0]).toArray(String[]::new));
    return this;
  }

  /**
   * @param run does what the command is for and returns the exit code
   */
  CommandSpec runs(ToIntFunction<Args> run) {
    body.run = () -> run.applyAsInt(new Args(spec.commandLine().getParseResult()));
    return spec;
  }
}
