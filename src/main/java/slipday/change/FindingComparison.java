package slipday.change;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slipday.finding.Finding;

/**
 * Findings that one plan has and another has not. The same finding may stand on another line and
 * with other figures: it is known by its rule and by the things it names.
 */
final class FindingComparison {
  private static final Pattern NAMED = Pattern.compile("`([^`]*)`");

  private FindingComparison() {}

  /** Those of {@code findings} that are not among {@code others}; none that is allowed. */
  static List<Finding> missingFrom(List<Finding> others, List<Finding> findings) {
    Map<String, Integer> there = new HashMap<>();
    others.stream()
        .filter(f -> f.allowed().isEmpty())
        .forEach(f -> there.merge(key(f), 1, Integer::sum));
    List<Finding> missing = new ArrayList<>();
    for (Finding f : findings) {
      if (f.allowed().isEmpty() && there.merge(key(f), -1, Integer::sum) < 0) {
        missing.add(f);
      }
    }
    return missing;
  }

  private static String key(Finding finding) {
    StringBuilder key = new StringBuilder(finding.rule()).append(' ').append(finding.subject());
    key.append(' ').append(finding.level());
    Matcher named = NAMED.matcher(finding.message());
    while (named.find()) {
      key.append(" `").append(named.group(1)).append('`');
    }
    return key.toString();
  }
}
