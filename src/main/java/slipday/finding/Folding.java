package slipday.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import slipday.source.Source;

/** Says once what would otherwise be said of line after line in the same words. */
public final class Folding {
  private static final int MOST_ALIKE = 3;
  private static final int MOST_LINES_LISTED = 8;

  private Folding() {}

  /**
   * Findings of one rule with one message in one file, if there are more than three, become the
   * first of them, with a note that says on which lines the same stands. The others stay, and all
   * keep their order. Findings without a place are never folded.
   */
  public static List<Finding> fold(List<Finding> findings) {
    Map<Alike, List<Integer>> alike = new HashMap<>();
    for (int i = 0; i < findings.size(); i++) {
      if (findings.get(i).place().isPresent()) {
        alike.computeIfAbsent(Alike.of(findings.get(i)), a -> new ArrayList<>()).add(i);
      }
    }
    List<Finding> folded = new ArrayList<>();
    for (int i = 0; i < findings.size(); i++) {
      Finding finding = findings.get(i);
      List<Integer> same =
          finding.place().isPresent()
              ? alike.getOrDefault(Alike.of(finding), List.of())
              : List.of();
      if (same.size() <= MOST_ALIKE) {
        folded.add(finding);
      } else if (same.get(0) == i) {
        folded.add(finding.withNote(note(findings, same)));
      }
    }
    return List.copyOf(folded);
  }

  private static String note(List<Finding> findings, List<Integer> same) {
    List<Integer> more =
        same.stream()
            .skip(1)
            .flatMap(i -> findings.get(i).place().stream())
            .map(l -> l.span().line())
            .distinct()
            .toList();
    String listed =
        more.stream()
            .limit(MOST_LINES_LISTED)
            .map(String::valueOf)
            .collect(Collectors.joining(", "));
    String rest = more.size() > MOST_LINES_LISTED ? " …" : ".";
    return "The same stands on " + more.size() + " more lines: " + listed + rest;
  }

  /** What findings have in common that say the same of one file. */
  private record Alike(Source source, String rule, Level level, String message, String allowed) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Alike alike
          && source.equals(alike.source)
          && rule.equals(alike.rule)
          && level == alike.level
          && message.equals(alike.message)
          && allowed.equals(alike.allowed);
    }

    @Override
    public int hashCode() {
      return message.hashCode();
    }

    static Alike of(Finding finding) {
      return new Alike(
          finding.place().orElseThrow().span().source(),
          finding.rule(),
          finding.level(),
          finding.message(),
          finding.allowed().orElse(""));
    }
  }
}
