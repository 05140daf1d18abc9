package slipday.command;

import java.util.List;
import slipday.command.CommandWords.OptionWords;

/** A script for fish that completes commands, options and their values. */
final class FishScript {
  private static final String COMMAND = "complete -c slipday";

  private FishScript() {}

  static String of(CommandWords root) {
    StringBuilder script = new StringBuilder("# Completes slipday in fish.\n");
    script.append(COMMAND).append(" -f\n");
    for (OptionWords option : root.options()) {
      option(script, "__fish_use_subcommand", option);
    }
    for (CommandWords command : root.words()) {
      line(
          script,
          "__fish_use_subcommand",
          "-a " + command.name() + " -d " + quoted(command.sentence()));
      String there = "__fish_seen_subcommand_from " + command.name();
      command.allOptions().forEach(o -> option(script, there, o));
      for (CommandWords under : command.words()) {
        line(script, there, "-a " + under.name() + " -d " + quoted(under.sentence()));
      }
      if (!command.values().isEmpty()) {
        line(script, there, "-a " + quoted(String.join(" ", command.values())));
      }
      if (command.takesFiles()) {
        line(script, there, "-F");
      }
    }
    return script.toString();
  }

  private static void option(StringBuilder script, String where, OptionWords option) {
    StringBuilder words = new StringBuilder();
    for (String name : option.names()) {
      words.append(name.startsWith("--") ? "-l " : "-s ").append(name.replaceFirst("^-+", ""));
      words.append(' ');
    }
    if (option.takesFile()) {
      words.append("-r -F ");
    } else if (!option.label().isEmpty()) {
      words.append("-x ");
      if (!option.values().isEmpty()) {
        words.append("-a ").append(quoted(String.join(" ", option.values()))).append(' ');
      }
    }
    line(script, where, words + "-d " + quoted(option.says()));
  }

  private static void line(StringBuilder script, String where, String words) {
    for (String part : List.of(COMMAND, " -n ", quoted(where), " ", words, "\n")) {
      script.append(part);
    }
  }

  private static String quoted(String text) {
    return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }
}
