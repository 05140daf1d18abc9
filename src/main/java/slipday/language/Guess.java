package slipday.language;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import slipday.finding.Nearest;
import slipday.syntax.Line;
import slipday.syntax.WordKind;

/**
 * Guesses what a line was meant to begin, so that the lines under it are still checked: by a
 * declaration word that is near, or else by the lines below.
 */
final class Guess {
  /** How far down to look; enough for any block, and no more work than that for a wrong line. */
  private static final int LINES_BELOW = 12;

  private Guess() {}

  /** What was meant, and the values of its line where they fit. */
  record Meant(Declaration declaration, Optional<Bound> head) {}

  /** A block whose lines are still coming. */
  interface Under {
    Declaration declaration();

    /** Whether a clause that may come once has come. */
    boolean hasSaid(Clause clause);
  }

  static Optional<Meant> byWord(Line line, @Nullable Under under) {
    if (!line.first().is(WordKind.WORD)) {
      return Optional.empty();
    }
    Stream<String> clauseWords =
        under == null
            ? Stream.empty()
            : Clauses.under(under.declaration()).stream().map(c -> c.words().get(0));
    List<String> known = Stream.concat(Declaration.words().stream(), clauseWords).toList();
    return Nearest.to(line.first().text(), known)
        .flatMap(Declaration::named)
        .map(d -> new Meant(d, fit(d, line, 1)))
        .filter(m -> m.head.isPresent() || under == null);
  }

  /**
   * The declaration that knows most of the lines below, where it knows more than the block they
   * would otherwise fall to.
   */
  static Optional<Meant> byLinesBelow(Line line, @Nullable Under under, List<Line> rest) {
    List<Line> below = below(rest);
    long best = under == null ? 0 : below.stream().filter(l -> takes(under, l)).count();
    Optional<Meant> meant = Optional.empty();
    for (Declaration declaration : Declaration.values()) {
      long known = below.stream().filter(l -> knows(declaration, l)).count();
      if (known > best) {
        Optional<Bound> head = fit(declaration, line, 1).or(() -> fit(declaration, line, 0));
        if (head.isPresent() || known > 1 || (under != null && known == below.size())) {
          best = known;
          meant = Optional.of(new Meant(declaration, head));
        }
      }
    }
    return meant;
  }

  private static List<Line> below(List<Line> rest) {
    int end = 0;
    while (end < Math.min(rest.size(), LINES_BELOW)
        && Declaration.begunBy(rest.get(end)).isEmpty()
        && !DatedLine.isBegunBy(rest.get(end))) {
      end++;
    }
    return rest.subList(0, end);
  }

  private static boolean takes(Under under, Line line) {
    return Clauses.of(under.declaration(), line.words()).filter(c -> !under.hasSaid(c)).isPresent();
  }

  private static boolean knows(Declaration declaration, Line line) {
    return Clauses.of(declaration, line.words()).isPresent();
  }

  private static Optional<Bound> fit(Declaration declaration, Line line, int from) {
    return declaration.head().match(line.words(), from).bound();
  }
}
