package slipday.output;

import slipday.output.data.ExplainData;
import slipday.output.data.ExplainData.RuleData;

/** Pages of rules for a terminal. */
public final class ExplainText {
  private static final String FENCE = "```";

  private final ExplainData data;
  private final Ink ink;

  public ExplainText(ExplainData data, Ink ink) {
    this.data = data;
    this.ink = ink;
  }

  /** One page: its headings bare, its examples set in. */
  public String page() {
    StringBuilder out = new StringBuilder();
    RuleData rule = data.rules().get(0);
    boolean code = false;
    for (String line : rule.page().strip().lines().toList()) {
      if (line.startsWith(FENCE)) {
        code = !code;
      } else if (line.startsWith("# ")) {
        String milder = rule.milder().isEmpty() ? "" : ", at times " + rule.milder();
        out.append(ink.strong(rule.id())).append(" (").append(rule.level());
        out.append(milder).append(")\n");
      } else if (line.startsWith("## ")) {
        out.append(ink.strong(line.substring(3))).append('\n');
      } else {
        out.append(code && !line.isEmpty() ? "  " : "").append(line).append('\n');
      }
    }
    return out.toString().replaceAll("\n{3,}", "\n\n");
  }

  /** Every rule with what it finds. */
  public String list() {
    StringBuilder out = new StringBuilder();
    list(out, "Rules of the trade; a plan can allow one at one place, with a reason", "rule");
    out.append('\n');
    list(out, "Mistakes of the text, of names and of files", "mistake");
    out.append("\nMore of one: slipday explain RULE\n");
    return out.toString();
  }

  private void list(StringBuilder out, String title, String kind) {
    out.append(ink.strong(title)).append('\n');
    for (RuleData rule : data.rules()) {
      if (rule.kind().equals(kind)) {
        Lines.wrapped("  " + ink.strong(rule.id()) + ": ", "    ", rule.sentence())
            .forEach(line -> out.append(line).append('\n'));
      }
    }
  }
}
