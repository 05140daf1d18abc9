package slipday.language;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
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

  /** Digits after a comma that marks thousands. */
  private static final int THOUSANDS = 3;

  /** In UTF-16. */
  private static final int LONGEST_CHARACTER = 2;

  private LineTraps() {}

  static Optional<Finding> check(Line line) {
    List<Word> words = line.words();
    for (int i = 0; i < words.size(); i++) {
      Optional<Finding> found =
          switch (words.get(i).kind()) {
            case OPEN_TEXT -> Optional.of(openText(words.get(i)));
            case OTHER -> Optional.of(isLongLine(words.get(i)) ? longLine(line) : stray(words, i));
            case COMMA -> commaInNumber(words, i);
            case TEXT -> quoteInText(words, i);
            default -> Optional.empty();
          };
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
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
  private static Optional<Finding> quoteInText(List<Word> words, int i) {
    boolean sticks =
        i + 1 < words.size()
            && words.get(i).end() == words.get(i + 1).start()
            && !words.get(i + 1).is(WordKind.COMMA)
            && !words.get(i + 1).is(WordKind.OTHER);
    return sticks
        ? Optional.of(
            Finding.error(
                    "quote-in-text",
                    words.get(i + 1).span(),
                    "The text before `" + words.get(i + 1).text() + "` has ended already.")
                .withHelp("A text can't hold a double quote; write `'` inside it."))
        : Optional.empty();
  }

  /** {@code 2,31} and {@code 1,200}: digits on both sides of a comma with no space between. */
  private static Optional<Finding> commaInNumber(List<Word> words, int i) {
    if (i == 0 || !joins(words, i) || !words.get(i - 1).text().matches("[-+\u2212]?\\d+")) {
      return Optional.empty();
    }
    int last = i + 1;
    while (words.get(last).is(WordKind.NUMBER)
        && last + 1 < words.size()
        && joins(words, last + 1)) {
      last += 2;
    }
    List<Word> pieces = words.subList(i - 1, last + 1);
    Span place = pieces.get(0).span().to(pieces.get(pieces.size() - 1).span());
    String together =
        pieces.stream()
            .filter(w -> !w.is(WordKind.COMMA))
            .map(Word::text)
            .collect(Collectors.joining());
    Finding finding =
        Finding.error(
            "comma-in-number", place, "The comma in `" + place.text() + "` can be read two ways.");
    String thousands = "thousands without a comma, `" + together + "`.";
    if (pieces.size() > 3) {
      return Optional.of(finding.withHelp("Write " + thousands).writing(together));
    }
    String decimal = place.text().replace(',', '.');
    if (pieces.get(2).text().replaceAll("\\D.*", "").length() != THOUSANDS) {
      return Optional.of(
          finding
              .withHelp(
                  "Write a decimal with a point, `"
                      + decimal
                      + "`; put a space between two figures.")
              .writing(decimal));
    }
    return Optional.of(
        finding
            .withHelp("Write a decimal with a point, `" + decimal + "`, and " + thousands)
            .writing(decimal)
            .writing(together));
  }

  /** Whether a comma stands between two figures and touches both. */
  private static boolean joins(List<Word> words, int comma) {
    return comma + 1 < words.size()
        && words.get(comma).is(WordKind.COMMA)
        && (words.get(comma + 1).is(WordKind.NUMBER) || words.get(comma + 1).is(WordKind.MIXED))
        && words.get(comma - 1).is(WordKind.NUMBER)
        && words.get(comma - 1).end() == words.get(comma).start()
        && words.get(comma).end() == words.get(comma + 1).start();
  }
}
