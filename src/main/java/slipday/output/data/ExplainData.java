package slipday.output.data;

import java.util.List;
import java.util.Optional;
import slipday.finding.Level;
import slipday.rules.Rule;
import slipday.rules.RuleCatalog;
import slipday.rules.RulePage;

/**
 * What rules mean.
 *
 * @param rules the rule asked for, or all of them
 */
public record ExplainData(Head slipday, List<RuleData> rules) {
  /**
   * One rule, or one mistake of the text.
   *
   * @param kind {@code rule}, which a plan can allow at one place, or {@code mistake}, which it
   *     can't
   * @param level what it usually is
   * @param milder what it is at times instead; empty for most
   * @param sentence what it finds, in one sentence
   * @param page the whole page, in Markdown
   */
  public record RuleData(
      String id, String kind, String level, String milder, String sentence, String page) {
    static RuleData of(RulePage page) {
      Optional<Rule> rule = RuleCatalog.rule(page.id());
      return new RuleData(
          page.id(),
          rule.isPresent() ? "rule" : "mistake",
          rule.map(r -> r.level().word()).orElse(Level.ERROR.word()),
          rule.map(Rule::milderLevel)
              .filter(milder -> milder != rule.get().level())
              .map(Level::word)
              .orElse(""),
          page.sentence(),
          page.text());
    }
  }

  public static ExplainData of(List<RulePage> pages) {
    return new ExplainData(Head.of("explain"), pages.stream().map(RuleData::of).toList());
  }
}
