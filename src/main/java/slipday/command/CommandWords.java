package slipday.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * A command as its scripts and its manual page tell of it.
 *
 * @param name as typed, such as {@code check}
 * @param sentence what it does, in one sentence
 * @param more further lines about it, without the sentence
 * @param options in the order of its help
 * @param arguments the labels of what follows the options, such as {@code PLAN}
 * @param values words that an argument can be, where they are few
 * @param words words that may stand first among its arguments, where it has commands of its own
 * @param examples lines as typed, with their remark
 */
record CommandWords(
    String name,
    String sentence,
    List<String> more,
    List<OptionWords> options,
    List<String> arguments,
    List<String> values,
    List<CommandWords> words,
    List<String> examples) {

  /**
   * An option.
   *
   * @param names with their hyphens, the shorter first
   * @param label of its value; empty where it takes none
   * @param values what its value can be, where that is a list
   * @param says what it does
   */
  record OptionWords(List<String> names, String label, List<String> values, String says) {
    private static OptionWords of(OptionSpec option) {
      String label = option.arity().max() == 0 ? "" : option.paramLabel();
      List<String> names =
          Arrays.stream(option.names())
              .sorted((a, b) -> Integer.compare(a.length(), b.length()))
              .toList();
      return new OptionWords(names, label, candidates(option), joined(option.description()));
    }

    /** Whether its value is the name of a file. */
    boolean takesFile() {
      return label.equals("FILE") || label.equals("NEXT") || label.equals("OLD");
    }
  }

  static CommandWords of(CommandSpec command) {
    List<String> description = lines(command.usageMessage().description());
    return new CommandWords(
        command.name(),
        description.isEmpty() ? "" : description.get(0),
        description.isEmpty() ? List.of() : description.subList(1, description.size()),
        command.options().stream().map(OptionWords::of).toList(),
        command.positionalParameters().stream().map(PositionalParamSpec::paramLabel).toList(),
        command.positionalParameters().stream().flatMap(p -> candidates(p).stream()).toList(),
        command.subcommands().values().stream().map(s -> of(s.getCommandSpec())).toList(),
        lines(command.usageMessage().footer()));
  }

  private static List<String> candidates(ArgSpec argument) {
    List<String> values = new ArrayList<>();
    if (argument.completionCandidates() != null) {
      argument.completionCandidates().forEach(values::add);
    }
    return values;
  }

  /** Whether a file's name can stand among its arguments. */
  boolean takesFiles() {
    return arguments.stream().anyMatch(l -> l.equals("PLAN") || l.equals("FILE"))
        || words.stream().anyMatch(CommandWords::takesFiles);
  }

  /** Its options and those of the commands under it, each name once. */
  List<OptionWords> allOptions() {
    List<OptionWords> all = new ArrayList<>(options);
    for (CommandWords under : words) {
      for (OptionWords option : under.allOptions()) {
        if (all.stream().noneMatch(o -> o.names().equals(option.names()))) {
          all.add(option);
        }
      }
    }
    return all;
  }

  private static String joined(String[] description) {
    return lines(description).stream().collect(Collectors.joining(" "));
  }

  /** The library reads its texts as formats; here they are plain again. */
  private static List<String> lines(String[] texts) {
    return Arrays.stream(texts)
        .flatMap(t -> Arrays.stream(t.replace("%n", "\n").replace("%%", "%").split("\n", -1)))
        .toList();
  }
}
