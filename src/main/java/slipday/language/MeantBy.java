package slipday.language;

import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.source.Span;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/**
 * Characters that stand beside figures in other writing: what was meant by one is said, since
 * leaving it off would leave another figure.
 */
final class MeantBy {
  private static final String FEET = "'’′";
  private static final String INCHES = "\"”″";

  private MeantBy() {}

  /** What a stray character was meant for, by the words about it; empty if that is not known. */
  static Optional<Finding> stray(List<Word> words, int i) {
    Word word = words.get(i);
    String c = word.text();
    boolean afterFigure = i > 0 && isFigure(words.get(i - 1));
    boolean beforeFigure = i + 1 < words.size() && isFigure(words.get(i + 1));
    if (c.equals(".") && beforeFigure && word.end() == words.get(i + 1).start()) {
      Span place = word.span().to(words.get(i + 1).span());
      String whole = "0" + place.text();
      return Optional.of(
          error(place, "`" + place.text() + "` has no figure before its point.")
              .withHelp("Write `" + whole + "`.")
              .writing(whole));
    }
    if (c.equals("/") && afterFigure && beforeFigure) {
      Span place = words.get(i - 1).span().to(words.get(i + 1).span());
      return Optional.of(slash(place, words.get(i - 1).text(), words.get(i + 1).text()));
    }
    if (c.equals("×") || (c.equals("*") && i > 0)) {
      return Optional.of(
          error(word.span(), "`" + c + "` is not read between two lengths.")
              .withHelp("Write `x`.")
              .writing("x"));
    }
    boolean touches = afterFigure && words.get(i - 1).end() == word.start();
    if (touches && (FEET.contains(c) || INCHES.contains(c))) {
      return Optional.of(
          error(word.span(), "`" + c + "` is not read as a unit.")
              .withHelp(
                  "Write feet as `5 ft`, inches as `6 inch`, and a place in degrees with a point,"
                      + " as `44.21 N`."));
    }
    return Optional.empty();
  }

  /** {@code 1/2} and {@code 44/50}, which could be a share or a fraction. */
  static Finding slash(Span place, String first, String second) {
    return error(place, "`" + place.text() + "` can be read two ways.")
        .withHelp(
            "Write what was counted as `"
                + first
                + " of "
                + second
                + "`, a chance as `1 in 10`, and part of a whole with a point, as `0.5`.");
  }

  private static boolean isFigure(Word word) {
    return word.is(WordKind.NUMBER) || word.is(WordKind.MIXED);
  }

  private static Finding error(Span place, String message) {
    return Finding.error("stray-character", place, message);
  }
}
