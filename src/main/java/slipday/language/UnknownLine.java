package slipday.language;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.finding.Nearest;
import slipday.measure.Listed;
import slipday.source.Span;
import slipday.syntax.Line;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Says of a line that no clause of its block begins with, what it may have been meant for. */
final class UnknownLine {
  private UnknownLine() {}

  static Finding outside(Line line) {
    Word first = line.first();
    if (!first.is(WordKind.WORD)) {
      return noWord(first);
    }
    return Finding.error(
            "nothing-begun",
            line.span(),
            "`" + first.text() + "` stands before anything has begun.")
        .withHelp(
            "A plan begins with a line such as `season 2026`, then `site`, `bed`, `grow` and so"
                + " on.");
  }

  static Finding misspeltDeclaration(Line line, Declaration meant) {
    return doesNotBegin(line, meant).withHelp(Nearest.meant(meant.word())).writing(meant.word());
  }

  private static Finding doesNotBegin(Line line, Declaration meant) {
    Word first = line.first();
    return Finding.error(
            "unknown-declaration", first.span(), "`" + first.text() + "` does not begin anything.")
        .labelled("read as `" + meant.word() + "`");
  }

  static Finding tellingFromBelow(Line line, Declaration meant) {
    return doesNotBegin(line, meant)
        .withHelp("The lines below belong to a `" + meant.word() + "`: `" + meant.example() + "`.");
  }

  /**
   * @param near what may have been meant
   */
  static Finding under(Declaration declaration, Line block, Line line, Optional<Near> near) {
    if (!line.first().is(WordKind.WORD)) {
      return noWord(line.first());
    }
    String under = "`" + declaration.word() + "`";
    Optional<Near> wordy = near.filter(n -> n.words() > 1);
    List<String> elsewhere = wordy.isPresent() ? List.of() : elsewhere(line);
    Span place = near.map(n -> beginning(line, n.words())).orElse(line.first().span());
    String words = place.text().replaceAll("\\s+", " ");
    Finding finding =
        elsewhere.isEmpty()
            ? helped(
                Finding.error(
                    "unknown-clause", place, "`" + words + "` is not known under " + under + "."),
                declaration,
                line,
                near)
            : Finding.error(
                    "unknown-clause",
                    line.first().span(),
                    "`" + line.first().text() + "` does not belong under " + under + ".")
                .withHelp("It belongs under " + Listed.either(elsewhere) + ".");
    return finding.also(block.span(), "the " + under + " it stands under");
  }

  private static Finding noWord(Word first) {
    return Finding.error(
            "line-start",
            first.span(),
            "A line begins with a word, and `" + first.text() + "` is none.")
        .withHelp(
            "Begin it with what it tells of, such as `bed` or `grow`, or what it says, such as"
                + " `size`.");
  }

  private static List<String> elsewhere(Line line) {
    return Stream.of(Declaration.values())
        .filter(d -> Clauses.of(d, line.words()).isPresent())
        .map(d -> "`" + d.word() + "`")
        .toList();
  }

  private static Finding helped(
      Finding unknown, Declaration declaration, Line line, Optional<Near> near) {
    List<Clause> here = Clauses.under(declaration);
    if (here.isEmpty()) {
      return unknown.withHelp("Nothing is said under `" + declaration.word() + "`.");
    }
    return near.map(n -> n.helped(unknown))
        .orElseGet(
            () ->
                unknown.nearest(
                    line.first().text(), here.stream().map(Clause::name).toList(), "clause"));
  }

  /** A clause that a line may have been meant for, and how many of its words were compared. */
  record Near(Clause clause, int words) {
    /** The finding, marked at those words, with the clause asked for. */
    Finding helped(Finding unknown) {
      return unknown.withHelp(Nearest.meant(clause.name())).writing(clause.name());
    }
  }

  /**
   * The clause of a block that a line may have been meant for. As many words of the line are
   * compared as each clause has, so that clauses of several words are found; last comes the only
   * clause that begins with the same word.
   */
  static Optional<Near> near(Declaration declaration, Line line) {
    return near(Clauses.under(declaration), line);
  }

  /** The same among any clauses. */
  static Optional<Near> near(List<Clause> here, Line line) {
    if (!line.first().is(WordKind.WORD)) {
      return Optional.empty();
    }
    for (int words = longest(here); words > 0; words--) {
      Optional<Near> near = near(here, line, words);
      if (near.isPresent()) {
        return near;
      }
    }
    List<Clause> sameFirst =
        here.stream().filter(c -> line.first().isWord(c.words().get(0))).toList();
    return sameFirst.size() == 1 ? Optional.of(new Near(sameFirst.get(0), 1)) : Optional.empty();
  }

  private static int longest(List<Clause> clauses) {
    return clauses.stream().mapToInt(c -> c.words().size()).max().orElse(0);
  }

  private static Optional<Near> near(List<Clause> here, Line line, int words) {
    if (line.words().stream().limit(words).filter(w -> w.is(WordKind.WORD)).count() < words) {
      return Optional.empty();
    }
    String text =
        line.words().stream().limit(words).map(Word::text).collect(Collectors.joining(" "));
    Map<String, Clause> byName =
        here.stream()
            .filter(c -> c.words().size() == words)
            .collect(Collectors.toMap(Clause::name, c -> c));
    return Nearest.to(text, byName.keySet())
        .map(n -> new Near(Objects.requireNonNull(byName.get(n)), words));
  }

  static Span beginning(Line line, int words) {
    return line.first().span().to(line.words().get(words - 1).span());
  }
}
