package slipday.command;

import java.util.List;
import slipday.finding.Nearest;
import slipday.output.ExplainText;
import slipday.output.Json;
import slipday.output.data.ExplainData;
import slipday.rules.RuleCatalog;
import slipday.rules.RulePage;

final class ExplainCommand {
  private ExplainCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Explains a rule: what it means, why the trade cares, and examples.",
            "One that breaks it, and one that does not. Without a rule, all are listed.")
        .words("0", "0..1", "RULE", "The id of a rule, as findings carry it.")
        .forms("text or json.", Form.TEXT, Form.JSON)
        .colour()
        .examples("slipday explain", "slipday explain same-family-again")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    List<String> asked = args.words("RULE");
    ExplainData data =
        ExplainData.of(asked.isEmpty() ? RulePage.all() : List.of(page(asked.get(0))));
    ExplainText text = new ExplainText(data, Colour.ink(args, streams));
    String words = asked.isEmpty() ? text.list() : text.page();
    streams.out().print(form == Form.JSON ? Json.text(data) : words);
    return Exit.CLEAN;
  }

  private static RulePage page(String id) {
    return RulePage.of(id)
        .orElseThrow(
            () ->
                new CommandFailure(
                    "There is no rule `" + id + "`.", Nearest.help(id, RuleCatalog.ids(), "rule")));
  }
}
