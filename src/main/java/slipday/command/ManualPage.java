package slipday.command;

import java.util.List;
import java.util.Map;
import slipday.command.CommandWords.OptionWords;

/** The manual page, in the words of the commands' own help, for {@code man}. */
final class ManualPage {
  private final StringBuilder page = new StringBuilder();

  private ManualPage() {}

  static String of(CommandWords root, String version) {
    ManualPage manual = new ManualPage();
    manual.whole(root, version);
    return manual.page.toString();
  }

  private void whole(CommandWords root, String version) {
    page.append(".TH SLIPDAY 1 \"\" \"slipday ").append(version).append("\" \"Slipday\"\n");
    page.append(".SH NAME\nslipday \\- ").append(plain(root.sentence())).append('\n');
    page.append(".SH SYNOPSIS\n.B slipday\n.I COMMAND\n[options] [arguments]\n");
    page.append(".SH DESCRIPTION\n");
    root.more().forEach(this::line);
    options(root.options());
    page.append(".SH COMMANDS\n");
    root.words().forEach(c -> command("slipday", c));
    page.append(".SH EXIT STATUS\n");
    for (Map.Entry<String, String> exit : Exit.MEANINGS.entrySet()) {
      item("\\fB" + exit.getKey().strip() + "\\fR", exit.getValue());
    }
    page.append(".SH EXAMPLES\n");
    examples(root.examples());
  }

  private void command(String above, CommandWords command) {
    String called = above + " " + command.name();
    page.append(".SS \"").append(plain(called));
    command.arguments().forEach(a -> page.append(' ').append(plain(a)));
    page.append("\"\n");
    line(command.sentence());
    command.more().forEach(this::line);
    options(command.options());
    if (!command.examples().isEmpty()) {
      page.append(".PP\n");
      examples(command.examples());
    }
    command.words().forEach(c -> command(called, c));
  }

  private void options(List<OptionWords> options) {
    for (OptionWords option : options) {
      StringBuilder names = new StringBuilder();
      for (String name : option.names()) {
        names.append(names.length() == 0 ? "" : ", ").append("\\fB").append(plain(name));
        names.append("\\fR");
      }
      if (!option.label().isEmpty()) {
        names.append(" \\fI").append(plain(option.label())).append("\\fR");
      }
      item(names.toString(), option.says());
    }
  }

  private void item(String tag, String text) {
    page.append(".TP\n").append(tag).append('\n');
    line(text);
  }

  private void examples(List<String> lines) {
    page.append(".nf\n");
    lines.forEach(this::line);
    page.append(".fi\n");
  }

  /** A line that begins with a dot or a quote would be a request. */
  private void line(String text) {
    if (text.isBlank()) {
      page.append(".PP\n");
      return;
    }
    String plain = plain(text);
    boolean request = plain.startsWith(".") || plain.startsWith("'");
    page.append(request ? "\\&" : "").append(plain).append('\n');
  }

  private static String plain(String text) {
    return text.replace("\\", "\\e").replace("-", "\\-").replace("\"", "\\(dq");
  }
}
