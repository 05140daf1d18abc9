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

  private Misfit() {}

  /**
   * @param what the words the line begins with
   * @param example a whole line that fits
   * @param fact whether the line may end with its source
   */
  static Finding of(Line line, Shape.Failure failure, String what, String example, boolean fact) {
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
    return helped(finding, words, failure, "For example: `" + example + "`.", fact);
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
        .orElseGet(
            () -> splitsName(words, failure) ? joined(finding, words) : finding.withHelp(likeThis));
  }

  private static Finding joined(Finding finding, List<Word> words) {
    String name = words.stream().skip(1).map(Word::text).collect(Collectors.joining("-"));
    Span split = words.get(1).span().to(words.get(words.size() - 1).span());
    return finding
        .withHelp("A name is one word, its parts joined: `" + name + "`.")
        .withMend(Mend.writing(split, name));
  }

  /** A declaration, and after it more words than one that could all be of a name. */
  private static boolean splitsName(List<Word> words, Shape.Failure failure) {
    return failure.at() == 2
        && failure.expected().contains(END)
        && Declaration.begunBy(new Line(words)).isPresent()
        && words.get(1).is(WordKind.WORD)
        && words.stream().skip(2).allMatch(w -> w.is(WordKind.WORD) || w.is(WordKind.NUMBER));
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
