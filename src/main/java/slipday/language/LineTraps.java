package slipday.language;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.syntax.Line;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Mistakes that are mistakes in any clause: open quotes, decimal commas, stray characters. */
final class LineTraps {
  private static final String BRACKETS = "{}[]()<>";
  private static final String FRACTIONS = "¼½¾⅓⅔⅛⅜⅝⅞";

  private LineTraps() {}

  static Optional<Finding> check(Line line) {
    List<Word> words = line.words();
    for (int i = 0; i < words.size(); i++) {
      Word word = words.get(i);
      if (word.is(WordKind.OPEN_TEXT)) {
        return Optional.of(openText(word));
      }
      if (word.is(WordKind.OTHER)) {
        return Optional.of(stray(word));
      }
      if (isCommaInNumber(words, i)) {
        return Optional.of(commaInNumber(words, i));
      }
    }
    return Optional.empty();
  }

  private static Finding openText(Word word) {
    return Finding.error("open-text", word.span(), "This text has no closing quote.")
        .labelled("opened here")
        .withHelp("Put a `\"` where the text ends; a text ends on its own line.");
  }

  private static Finding stray(Word word) {
    String c = word.text();
    if (BRACKETS.contains(c)) {
      return Finding.error(
              "stray-character", word.span(), "A season file has no brackets: `" + c + "`.")
          .withHelp("Leave it off; a thing ends where the next one begins.");
    }
    if (FRACTIONS.contains(c)) {
      return Finding.error("stray-character", word.span(), "`" + c + "` is not read as a number.")
          .withHelp("Write it with a point, as `0.5`.");
    }
    boolean printable = !Character.isISOControl(c.codePointAt(0));
    String shown =
        printable
            ? "`" + c + "`"
            : String.format(Locale.ROOT, "The character %04X (hex)", c.codePointAt(0));
    return Finding.error("stray-character", word.span(), shown + " has no meaning here.")
        .withHelp("Leave it off, or put it in a text in quotes.");
  }

  /** {@code 2,31} and {@code 1,200}: digits on both sides of a comma with no space between. */
  private static boolean isCommaInNumber(List<Word> words, int i) {
    return words.get(i).is(WordKind.COMMA)
        && i > 0
        && i + 1 < words.size()
        && words.get(i - 1).is(WordKind.NUMBER)
        && (words.get(i + 1).is(WordKind.NUMBER) || words.get(i + 1).is(WordKind.MIXED))
        && words.get(i - 1).end() == words.get(i).start()
        && words.get(i).end() == words.get(i + 1).start();
  }

  private static Finding commaInNumber(List<Word> words, int i) {
    String whole = words.get(i - 1).text();
    String part = words.get(i + 1).text();
    return Finding.error(
            "comma-in-number",
            words.get(i - 1).span().to(words.get(i + 1).span()),
            "`" + whole + "," + part + "` can be read two ways.")
        .withHelp(
            "Write a decimal with a point, `"
                + whole
                + "."
                + part
                + "`, and thousands without a comma, `"
                + whole
                + part
                + "`.");
  }
}
