package slipday.climate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import slipday.finding.Finding;
import slipday.source.Source;
import slipday.source.Span;

/** What is wrong in a weather file: each rule's first twenty places, then a count. */
final class RowFindings {
  private static final int MOST_OF_A_RULE = 20;
  private static final int MOST_QUOTED = 40;

  private final Source source;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, Integer> counts = new LinkedHashMap<>();
  private final Map<String, Span> firstFolded = new LinkedHashMap<>();

  RowFindings(Source source) {
    this.source = source;
  }

  void error(String rule, int start, int end, String message, UnaryOperator<Finding> more) {
    int nth = counts.merge(rule, 1, Integer::sum);
    if (nth <= MOST_OF_A_RULE) {
      findings.add(more.apply(Finding.error(rule, source.span(start, end), message)));
    } else {
      firstFolded.computeIfAbsent(rule, r -> source.span(start, end));
    }
  }

  void error(String rule, int start, int end, String message, String help) {
    error(rule, start, end, message, f -> f.withHelp(help));
  }

  void add(Finding finding) {
    findings.add(finding);
  }

  Span span(int start, int end) {
    return source.span(start, end);
  }

  boolean isEmpty() {
    return findings.isEmpty();
  }

  /** In the order found, each rule's overflow last. */
  List<Finding> all() {
    List<Finding> all = new ArrayList<>(findings);
    firstFolded.forEach(
        (rule, span) -> {
          int more = counts.getOrDefault(rule, 0) - MOST_OF_A_RULE;
          all.add(
              Finding.error(
                  rule,
                  span,
                  String.format(
                      Locale.ROOT,
                      "From here on, `%s` has %d more %s of this kind.",
                      source.name(),
                      more,
                      more == 1 ? "mistake" : "mistakes")));
        });
    return List.copyOf(all);
  }

  /** The gardener's own text in backticks, on one line and cut to a readable length. */
  static String quoted(String text) {
    StringBuilder shown = new StringBuilder("`");
    text.codePoints()
        .limit(MOST_QUOTED)
        .map(c -> Character.isISOControl(c) || c == '`' ? '?' : c)
        .forEach(shown::appendCodePoint);
    if (text.codePointCount(0, text.length()) > MOST_QUOTED) {
      shown.append('…');
    }
    return shown.append('`').toString();
  }
}
