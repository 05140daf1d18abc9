package slipday.command;

import java.util.ArrayList;
import java.util.List;
import slipday.command.CommandWords.OptionWords;

/** A script for zsh that completes commands, options and their values. */
final class ZshScript {
  private ZshScript() {}

  static String of(CommandWords root) {
    StringBuilder script = new StringBuilder();
    script.append("#compdef slipday\n# Completes slipday in zsh.\n\n_slipday() {\n");
    described(script, "  ", "commands", root.words());
    script.append("  if (( CURRENT == 2 )); then\n");
    script.append("    _describe -t commands command commands\n");
    options(script, "    ", root.options(), List.of());
    script.append("    return\n  fi\n  shift words\n  (( CURRENT-- ))\n  case $words[1] in\n");
    root.words().forEach(c -> command(script, c));
    script.append("  esac\n}\n\n");
    script.append("if [[ $funcstack[1] == _slipday ]]; then\n  _slipday \"$@\"\n");
    script.append("else\n  compdef _slipday slipday\nfi\n");
    return script.toString();
  }

  private static void command(StringBuilder script, CommandWords command) {
    script.append("    ").append(command.name()).append(")\n");
    if (!command.words().isEmpty()) {
      described(script, "      ", "under", command.words());
      script.append("      (( CURRENT == 2 )) && _describe -t commands command under\n");
    }
    List<String> arguments = new ArrayList<>();
    if (command.takesFiles()) {
      arguments.add(quoted("*:file:_files"));
    } else if (!command.values().isEmpty()) {
      arguments.add(quoted("1:word:(" + String.join(" ", command.values()) + ")"));
    }
    options(script, "      ", command.allOptions(), arguments);
    script.append("      ;;\n");
  }

  private static void described(
      StringBuilder script, String indent, String array, List<CommandWords> commands) {
    script.append(indent).append("local -a ").append(array).append('\n');
    script.append(indent).append(array).append("=(\n");
    for (CommandWords c : commands) {
      script.append(indent).append("  ");
      script.append(quoted(c.name() + ":" + c.sentence().replace(":", "\\:"))).append('\n');
    }
    script.append(indent).append(")\n");
  }

  private static void options(
      StringBuilder script, String indent, List<OptionWords> options, List<String> more) {
    script.append(indent).append("_arguments -S");
    for (OptionWords option : options) {
      for (String name : option.names()) {
        script.append(" \\\n").append(indent).append("  ").append(quoted(option(name, option)));
      }
    }
    for (String words : more) {
      script.append(" \\\n").append(indent).append("  ").append(words);
    }
    script.append('\n');
  }

  private static String option(String name, OptionWords option) {
    String says = "[" + option.says().replace("\\", "\\\\").replace("]", "\\]") + "]";
    if (option.label().isEmpty()) {
      return name + says;
    }
    String joint = name.startsWith("--") ? "=" : "+";
    String value =
        option.takesFile()
            ? "_files"
            : option.values().isEmpty() ? " " : "(" + String.join(" ", option.values()) + ")";
    return name + joint + says + ":" + option.label() + ":" + value;
  }

  private static String quoted(String text) {
    return "'" + text.replace("'", "'\\''") + "'";
  }
}
