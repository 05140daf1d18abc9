package slipday.language;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import slipday.finding.Finding;
import slipday.measure.Listed;
import slipday.source.Span;
import slipday.syntax.Line;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/**
 * Commas with a digit on both sides and no space, as in {@code 2,5} and {@code 1,200}. What one
 * stands for is told by how its line can be read, where it can be read in one way alone.
 */
final class NumberCommas {
  private static final String POINT = ".";

  /** Digits after a comma that marks thousands. */
  private static final int THOUSANDS = 3;

  /** A figure, its comma and another figure. */
  private static final int ONE_COMMA = 3;

  private final List<Word> words;
  private final boolean asDecimals;
  private final boolean asThousands;
  private final boolean asTwo;

  /**
   * @param text what to write
   * @param purpose what for
   * @param alone what is said where nothing else can be meant
   */
  private record Reading(String text, String purpose, String alone, String help) {}

  private NumberCommas(Line line, Predicate<Line> fits) {
    this.words = line.words();
    this.asDecimals = fits.test(joined(words, POINT));
    this.asThousands = fits.test(joined(words, ""));
    this.asTwo = fits.test(line);
  }

  /**
   * A finding for each of a line, from one comma on; none if that is not of a number.
   *
   * @param fits whether a line says something that is understood where it stands
   */
  static List<Finding> at(Line line, int comma, Predicate<Line> fits) {
    List<Word> words = line.words();
    if (!begins(words, comma)) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    NumberCommas commas = new NumberCommas(line, fits);
    for (int i = comma; i < words.size(); i++) {
      if (begins(words, i)) {
        int last = last(words, i);
        findings.add(commas.finding(words.subList(i - 1, last + 1)));
        i = last;
      }
    }
    return findings;
  }

  /** Whether a comma stands between two figures and touches both. */
  private static boolean joins(List<Word> words, int comma) {
    return comma + 1 < words.size()
        && words.get(comma).is(WordKind.COMMA)
        && (words.get(comma + 1).is(WordKind.NUMBER) || words.get(comma + 1).is(WordKind.MIXED))
        && Character.isDigit(words.get(comma + 1).text().charAt(0))
        && words.get(comma - 1).is(WordKind.NUMBER)
        && words.get(comma - 1).end() == words.get(comma).start()
        && words.get(comma).end() == words.get(comma + 1).start();
  }

  private static boolean begins(List<Word> words, int comma) {
    return comma > 0
        && joins(words, comma)
        && words.get(comma - 1).text().matches("[-+\u2212]?\\d+");
  }

  /** The last figure that is joined to one before a comma. */
  private static int last(List<Word> words, int comma) {
    int last = comma + 1;
    while (joins(words, last + 1)) {
      last += 2;
    }
    return last;
  }

  /** The line with something else for each such comma. */
  private static Line joined(List<Word> words, String between) {
    List<Word> joined = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      if (i + 1 < words.size() && begins(words, i + 1)) {
        int last = last(words, i + 1);
        boolean one = last + 1 - i == ONE_COMMA; // of several commas none is a point
        joined.add(joined(words.subList(i, last + 1), one ? between : "", words.get(last)));
        i = last;
      } else {
        joined.add(words.get(i));
      }
    }
    return new Line(joined);
  }

  private static Word joined(List<Word> figures, String between, Word last) {
    Word first = figures.get(0);
    // A figure of two points is none.
    WordKind kind = between.equals(POINT) && hasPoint(last) ? WordKind.OTHER : last.kind();
    return new Word(kind, text(figures, between), first.source(), first.start(), last.end());
  }

  private static boolean hasPoint(Word figure) {
    return figure.text().contains(POINT);
  }

  private static String text(List<Word> figures, String between) {
    StringBuilder text = new StringBuilder();
    for (Word word : figures) {
      text.append(word.is(WordKind.COMMA) ? between : word.text());
    }
    return text.toString();
  }

  private Finding finding(List<Word> figures) {
    Word last = figures.get(figures.size() - 1);
    Span place = figures.get(0).span().to(last.span());
    List<Reading> readings = readings(figures);
    Finding finding =
        Finding.error("comma-in-number", place, message(place.text(), readings))
            .withHelp(help(readings));
    for (Reading reading : readings) {
      finding = finding.writing(reading.text);
    }
    return finding;
  }

  private static String message(String text, List<Reading> readings) {
    return readings.size() == 1
        ? "`" + text + "` " + readings.get(0).alone
        : "The comma in `" + text + "` can be read two ways.";
  }

  private static String help(List<Reading> readings) {
    return readings.size() == 1
        ? readings.get(0).help
        : "Write "
            + Listed.either(readings.stream().map(r -> "`" + r.text + "` " + r.purpose).toList())
            + ".";
  }

  /** What can be meant: of what fits the line, or else of what the digits allow. */
  private List<Reading> readings(List<Word> figures) {
    boolean one = figures.size() == ONE_COMMA;
    boolean thousands = !one || digits(figures.get(2).text()) == THOUSANDS;
    boolean known = (one && asDecimals) || (thousands && asThousands) || (one && asTwo);
    List<Reading> readings = new ArrayList<>();
    if (one && !hasPoint(figures.get(2)) && (asDecimals || !known)) {
      String text = text(figures, POINT);
      readings.add(
          new Reading(
              text,
              "for a decimal",
              "has a comma where a decimal point belongs.",
              "Write `" + text + "`."));
    }
    if (thousands && (asThousands || !known)) {
      String text = text(figures, "");
      readings.add(
          new Reading(
              text,
              "for thousands",
              "has a comma in a whole number.",
              "Write thousands without a comma, `" + text + "`."));
    }
    if (one && (asTwo || (!known && !thousands))) {
      String text = text(figures, ", ");
      readings.add(
          new Reading(
              text,
              "for two figures",
              "runs two figures together.",
              "Put a space after the comma: `" + text + "`."));
    }
    return readings;
  }

  private static int digits(String text) {
    int digits = 0;
    while (digits < text.length() && Character.isDigit(text.charAt(digits))) {
      digits++;
    }
    return digits;
  }
}
