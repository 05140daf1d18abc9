package slipday.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import slipday.measure.Listed;

/** The nearest known word to one that is not known, and how people are asked about it. */
public final class Nearest {
  private static final int MOST_LISTED = 8;
  private static final int SHORTEST_PART = 3;

  private Nearest() {}

  /**
   * The known word fewest edits away, if near enough: at most one edit per three letters, and at
   * least one. A swap of two neighbours is one edit. Ties go to the first in the alphabet.
   */
  public static Optional<String> to(String word, Collection<String> known) {
    String lower = word.toLowerCase(Locale.ROOT);
    int allowed = Math.max(1, lower.length() / 3);
    return known.stream()
        .filter(k -> !k.isEmpty())
        .filter(k -> Math.abs(k.length() - lower.length()) <= allowed)
        .map(k -> new Scored(k, distance(lower, k.toLowerCase(Locale.ROOT))))
        .filter(s -> s.edits <= allowed)
        .min(Comparator.comparingInt(Scored::edits).thenComparing(Scored::word))
        .map(Scored::word);
  }

  /** A sentence for {@code help}: the nearest word, or else what there is. */
  public static String help(String word, Collection<String> known, String kind) {
    return help(word, known, () -> listed(word, known, kind));
  }

  /** The same with another sentence where no word is near. */
  public static String help(String word, Collection<String> known, Supplier<String> otherwise) {
    return to(word, known).map(Nearest::meant).orElseGet(otherwise);
  }

  /** The question whether another word was meant. */
  public static String meant(String word) {
    return meant(List.of(word));
  }

  /** The same of several words. */
  public static String meant(List<String> words) {
    return "Did you mean " + Listed.either(words.stream().map(w -> "`" + w + "`").toList()) + "?";
  }

  /** What there is; first of all the names that hold the word. */
  static String listed(String word, Collection<String> known, String kind) {
    List<String> holding = holding(word, known);
    return holding.isEmpty() ? listed(known, kind) : meant(holding);
  }

  /** The same, naming the command that lists all of them where none is like the word. */
  public static String listed(String word, Collection<String> known, String kind, String command) {
    String help = listed(word, known, kind);
    return help.startsWith("Known") ? help + " `" + command + "` lists them all." : help;
  }

  private static List<String> holding(String word, Collection<String> known) {
    String lower = word.toLowerCase(Locale.ROOT);
    return lower.length() < SHORTEST_PART
        ? List.of()
        : known.stream()
            .filter(k -> isPart(lower, k.toLowerCase(Locale.ROOT)))
            .sorted()
            .limit(MOST_LISTED)
            .toList();
  }

  /** Whether a name is a word with others joined to it: {@code acorn} of {@code acorn-squash}. */
  private static boolean isPart(String word, String name) {
    int at = name.indexOf(word);
    int end = at + word.length();
    return at >= 0
        && (at == 0 || name.charAt(at - 1) == '-')
        && (end == name.length() || name.charAt(end) == '-');
  }

  private static String listed(Collection<String> known, String kind) {
    if (known.isEmpty()) {
      return "No " + kind + " is declared.";
    }
    String some =
        known.stream()
            .sorted()
            .limit(MOST_LISTED)
            .map(k -> "`" + k + "`")
            .collect(Collectors.joining(", "));
    int more = known.size() - MOST_LISTED;
    return "Known: " + some + (more > 0 ? " and " + more + " more" : "") + ".";
  }

  private record Scored(String word, int edits) {}

  /** Optimal string alignment distance (restricted Damerau–Levenshtein). */
  static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(row[j - 1] + 1, last[j] + 1), last[j - 1] + same);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      int[] spare = before;
      before = last;
      last = row;
      row = spare;
    }
    return last[b.length()];
  }
}
