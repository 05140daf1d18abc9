package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page of the docs done as its reader does it, in a folder, from top to bottom.
 *
 * <p>A block that begins with <code>```console</code> holds lines {@code $ slipday …} and below
 * each what it prints; {@code | head -20} and {@code | tail -20} cut what is shown. A comment above
 * a block says what else is done with one: {@code <!-- file NAME -->} begins a file with it, {@code
 * <!-- add to NAME -->} puts it at the end, {@code <!-- anew in NAME -->} in the place of what
 * began with the same line, up to an empty one.
 */
final class DocPage {
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");
  private static final Pattern ACTION =
      Pattern.compile("<!-- (?:file (?<file>\\S+)|add to (?<add>\\S+)|anew in (?<anew>\\S+)) -->");

  private final Path folder;

  DocPage(Path folder) {
    this.folder = folder;
  }

  /** The page again, with what its commands print now. */
  String rerun(String page) {
    List<String> lines = new ArrayList<>();
    for (DocBlocks.Part part : DocBlocks.parts(page)) {
      if (part.kind().equals("console")) {
        lines.add("```console");
        commands(part.lines())
            .forEach(
                command -> {
                  lines.add("$ " + command);
                  lines.addAll(output(command.replaceAll("\\\\\n *", "")));
                });
        lines.add("```");
      } else {
        lines.addAll(part.whole());
        Matcher action = ACTION.matcher(part.comment());
        if (part.fenced() && action.matches()) {
          act(action, String.join("\n", part.lines()));
        }
      }
    }
    return String.join("\n", lines) + "\n";
  }

  /** What follows a {@code $}, with the lines that a backslash joins to it. */
  private static List<String> commands(List<String> lines) {
    List<String> commands = new ArrayList<>();
    boolean open = false;
    for (String line : lines) {
      if (open) {
        commands.add(commands.remove(commands.size() - 1) + "\n" + line);
      } else if (line.startsWith("$ ")) {
        commands.add(line.substring(2));
      }
      open = (open || line.startsWith("$ ")) && line.endsWith("\\");
    }
    return commands;
  }

  private void act(Matcher action, String text) {
    if (action.group("file") != null) {
      write(action.group("file"), text + "\n");
    } else if (action.group("add") != null) {
      String file = action.group("add");
      write(file, read(file) + "\n" + text + "\n");
    } else {
      String file = action.group("anew");
      String before = read(file);
      int from = before.indexOf(text.substring(0, text.indexOf('\n') + 1));
      int to = before.indexOf("\n\n", from);
      assertThat(from).as(text).isNotNegative();
      write(file, before.substring(0, from) + text + (to < 0 ? "\n" : before.substring(to)));
    }
  }

  private String read(String file) {
    try {
      return Files.readString(folder.resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void write(String file, String text) {
    try {
      Files.writeString(folder.resolve(file), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private List<String> output(String command) {
    String[] parts = command.split(" \\| ");
    List<String> words =
        WORD.matcher(parts[0])
            .results()
            .map(m -> m.group(1) == null ? m.group(2) : m.group(1))
            .toList();
    assertThat(words.get(0)).isEqualTo("slipday");
    Run run = Run.in(folder, words.subList(1, words.size()).toArray(String[]::new));
    assertThat(run.exit()).as(command + "\n" + run.err()).isNotEqualTo(Exit.UNUSABLE);
    List<String> lines = (run.out() + run.err()).stripTrailing().lines().toList();
    for (int i = 1; i < parts.length; i++) {
      lines = cut(lines, parts[i]);
    }
    return lines;
  }

  static List<String> cut(List<String> lines, String filter) {
    int count = Integer.parseInt(filter.substring(filter.indexOf('-') + 1));
    if (filter.startsWith("head -")) {
      return lines.subList(0, Math.min(count, lines.size()));
    }
    assertThat(filter).startsWith("tail -");
    return lines.subList(Math.max(0, lines.size() - count), lines.size());
  }
}
