package slipday.language;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import slipday.finding.Finding;
import slipday.source.Span;
import slipday.syntax.Line;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Mistakes that are mistakes in any clause: open quotes, decimal commas, stray characters. */
final class LineTraps {
  private static final String BRACKETS = "{}[]()<>";
  private static final String FRACTIONS = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
  private static final String QUOTES = "'‘’‚‹›«»`´";
  private static final String DASHES = "-\u2013\u2014\u2212";

  /** In UTF-16. */
  private static final int LONGEST_CHARACTER = 2;

  private LineTraps() {}

  /**
   * The first mistake; where that is a comma in a number, all of those.
   *
   * @param fits whether a line says something that is understood where it stands
   */
  static List<Finding> check(Line line, Predicate<Line> fits) {
    List<Word> words = line.words();
    for (int i = 0; i < words.size(); i++) {
      List<Finding> found =
          switch (words.get(i).kind()) {
            case OPEN_TEXT -> List.of(openText(words.get(i)));
            case OTHER -> List.of(isLongLine(words.get(i)) ? longLine(line) : stray(words, i));
            case COMMA -> NumberCommas.at(line, i, fits);
            case TEXT -> quoteInText(words, i);
            default -> List.of();
          };
      if (!found.isEmpty()) {
        return found;
      }
    }
    return List.of();
  }

  private static boolean isLongLine(Word word) {
    return word.end() - word.start() > LONGEST_CHARACTER;
  }

  private static Finding longLine(Line line) {
    int start = line.first().start();
    Span place = new Span(line.first().source(), start, start + 1);
    return Finding.error("line-too-long", place, "This line is too long to be one of a plan.")
        .withHelp("Look whether this is the file that was meant, and where its line ends went.");
  }

  /** The line as it would be had no one typed brackets; the line itself where nothing is left. */
  static Line withoutBrackets(Line line) {
    List<Word> left =
        line.words().stream()
            .filter(w -> !(w.is(WordKind.OTHER) && BRACKETS.contains(w.text())))
            .toList();
    return left.isEmpty() ? line : new Line(left);
  }

  private static Finding openText(Word word) {
    return Finding.error("open-text", word.span(), "This text has no closing quote.")
        .labelled("opened here")
        .withHelp("Put a `\"` where the text ends; a text ends on its own line.");
  }

  private static Finding stray(List<Word> words, int i) {
    return MeantBy.stray(words, i).orElseGet(() -> unmeant(words, i));
  }

  private static Finding unmeant(List<Word> words, int i) {
    Word word = words.get(i);
    String c = word.text();
    if (BRACKETS.contains(c)) {
      return finding(word, "Brackets have no meaning in a season file.")
          .withHelp("Leave them off; a thing ends where the next one begins.");
    }
    if (FRACTIONS.contains(c)) {
      return finding(word, "`" + c + "` is not read as a number.")
          .withHelp("Write it with a point, as `0.5`.");
    }
    if (QUOTES.contains(c)) {
      return finding(word, "`" + c + "` does not begin or end a text.")
          .withHelp("Put texts in double quotes, as in `\"Tern Hollow\"`.");
    }
    if (DASHES.contains(c) && betweenNumbers(words, i)) {
      String low = words.get(i - 1).text();
      String high = words.get(i + 1).text();
      Span range = words.get(i - 1).span().to(words.get(i + 1).span());
      String text = low + " " + c + " " + high;
      return Finding.error("range-dash", range, "`" + text + "` is not read as a range.")
          .withHelp("Write `" + low + " to " + high + "`.")
          .writing(low + " to " + high);
    }
    return finding(word, shown(c) + " has no meaning here.").withHelp(strayHelp(c));
  }

  private static Finding finding(Word word, String message) {
    return Finding.error("stray-character", word.span(), message);
  }

  private static boolean betweenNumbers(List<Word> words, int i) {
    return i > 0
        && i + 1 < words.size()
        && words.get(i - 1).is(WordKind.NUMBER)
        && words.get(i + 1).is(WordKind.NUMBER);
  }

  private static String strayHelp(String c) {
    return switch (c) {
      case ";" -> "Write a comma.";
      case ":", "=" -> "Leave it off; a space is enough.";
      default -> "Leave it off, or put it in a text in quotes.";
    };
  }

  /** A character that can't be seen is named by its number. */
  private static String shown(String c) {
    int point = c.codePointAt(0);
    boolean visible =
        switch (Character.getType(point)) {
          case Character.CONTROL,
              Character.FORMAT,
              Character.SURROGATE,
              Character.PRIVATE_USE,
              Character.UNASSIGNED,
              Character.LINE_SEPARATOR,
              Character.PARAGRAPH_SEPARATOR,
              Character.SPACE_SEPARATOR,
              Character.NON_SPACING_MARK,
              Character.ENCLOSING_MARK ->
              false;
          default -> true;
        };
    return visible
        ? "`" + c + "`"
        : String.format(Locale.ROOT, "The unseen character U+%04X", point);
  }

  /** A quote inside a text ends it, and what follows sticks to it. */
  private static List<Finding> quoteInText(List<Word> words, int i) {
    boolean sticks =
        i + 1 < words.size()
            && words.get(i).end() == words.get(i + 1).start()
            && !words.get(i + 1).is(WordKind.COMMA)
            && !words.get(i + 1).is(WordKind.OTHER);
    return sticks
        ? List.of(
            Finding.error(
                    "quote-in-text",
                    words.get(i + 1).span(),
                    "The text before `" + words.get(i + 1).text() + "` has ended already.")
                .withHelp("A text can't hold a double quote; write `'` inside it."))
        : List.of();
  }
}
