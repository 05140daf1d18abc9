package slipday.language;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slipday.finding.Finding;
import slipday.finding.Mend;
import slipday.finding.Nearest;
import slipday.measure.Listed;
import slipday.source.Span;
import slipday.syntax.Line;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Says where a line does not fit its shape, and what could have stood there. */
final class Misfit {
  private static final String END = "the end of the line";
  private static final int NOWHERE = -1;

  private Misfit() {}

  /** Of a line under a thing. */
  static Finding of(Line line, Shape.Failure failure, Clause clause) {
    boolean fact = CropClauses.isFact(clause);
    int names = clause.shape().beginsWithName() ? clause.words().size() : NOWHERE;
    return of(line, failure, clause.name(), clause.example(), fact, names);
  }

  /** Of a line that begins a thing, or one of the record. */
  static Finding of(Line line, Shape.Failure failure, String what, String example) {
    int names = Declaration.begunBy(line).isPresent() ? 1 : NOWHERE;
    return of(line, failure, what, example, false, names);
  }

  /**
   * @param what the words the line begins with
   * @param example a whole line that fits
   * @param fact whether the line may end with its source
   * @param name the index of a name in it, where one stands after those words
   */
  private static Finding of(
      Line line, Shape.Failure failure, String what, String example, boolean fact, int name) {
    List<Word> words = line.words();
    if (failure.mistake().isPresent()) {
      Shape.Mistake mistake = failure.mistake().get();
      Span place = place(words, failure.at() - mistake.back());
      Finding mistaken =
          Finding.error(mistake.rule(), place, mistake.message()).withHelp(mistake.help());
      for (String text : mistake.instead()) {
        mistaken = mistaken.writing(text);
      }
      return mistaken;
    }
    String expected = Listed.either(failure.expected());
    Finding finding =
        Finding.error(
                "clause-shape",
                place(words, failure.at()),
                message(words, failure, "`" + what + "`", expected))
            .labelled("expected " + expected);
    int end = endOfName(words, failure, name);
    String likeThis = "For example: `" + example + "`.";
    Finding helped = helped(finding, words, failure, likeThis, fact);
    return end > 0 && helped.help().equals(likeThis)
        ? joined(finding, words.subList(name, end))
        : helped;
  }

  private static Span place(List<Word> words, int at) {
    if (at < words.size()) {
      return words.get(at).span();
    }
    Word last = words.get(words.size() - 1);
    return new Span(last.source(), last.end(), last.end());
  }

  private static String message(
      List<Word> words, Shape.Failure failure, String what, String expected) {
    if (failure.at() >= words.size()) {
      return what + " wants more after it: " + expected + ".";
    }
    String found = "`" + words.get(failure.at()).text() + "`";
    return failure.expected().equals(List.of(END))
        ? what + " should end before " + found + "."
        : what + " wants " + expected + " where " + found + " stands.";
  }

  private static Finding helped(
      Finding finding, List<Word> words, Shape.Failure failure, String likeThis, boolean fact) {
    if (failure.at() >= words.size()) {
      return finding.withHelp(likeThis);
    }
    Word found = words.get(failure.at());
    if (splitsThousands(words, failure.at())) {
      String whole = words.get(failure.at() - 1).text() + found.text();
      Span split = words.get(failure.at() - 1).span().to(found.span());
      return finding
          .withHelp("Write thousands without a space, `" + whole + "`.")
          .withMend(Mend.writing(split, whole));
    }
    if (fact && found.is(WordKind.COMMA)) {
      return finding.withHelp(
          "After the comma may stand `says SOURCE`, `says SOURCE from memory` or"
              + " `common practice`.");
    }
    Optional<String> near =
        found.is(WordKind.WORD)
            ? Nearest.to(found.text(), literals(failure.expected()))
            : Optional.empty();
    return near.map(n -> finding.withHelp(Nearest.meant(n) + " " + likeThis).writing(n))
        .orElseGet(() -> finding.withHelp(likeThis));
  }

  private static Finding joined(Finding finding, List<Word> words) {
    String name = words.stream().map(Word::text).collect(Collectors.joining("-"));
    Span split = words.get(0).span().to(words.get(words.size() - 1).span());
    return finding
        .withHelp("A name is one word, its parts joined: `" + name + "`.")
        .withMend(Mend.writing(split, name));
  }

  /** Where more words than one end that could all be of a name; 0 if there is only one. */
  private static int endOfName(List<Word> words, Shape.Failure failure, int name) {
    if (name == NOWHERE || failure.at() != name + 1 || !words.get(name).is(WordKind.WORD)) {
      return 0;
    }
    List<String> literals = literals(failure.expected());
    int end = failure.at();
    while (end < words.size()
        && (words.get(end).is(WordKind.WORD) || words.get(end).is(WordKind.NUMBER))
        && !literals.contains(words.get(end).text())) {
      end++;
    }
    boolean whole =
        end == words.size()
            ? failure.expected().contains(END)
            : !words.get(end).is(WordKind.COMMA) || failure.expected().contains("a comma");
    return whole && end > failure.at() ? end : 0;
  }

  private static boolean splitsThousands(List<Word> words, int at) {
    return at > 0
        && words.get(at - 1).is(WordKind.NUMBER)
        && words.get(at).is(WordKind.NUMBER)
        && words.get(at).text().matches("\\d{3}");
  }

  private static List<String> literals(List<String> expected) {
    return expected.stream()
        .filter(e -> e.matches("`[a-z]+`"))
        .map(e -> e.substring(1, e.length() - 1))
        .toList();
  }
}
