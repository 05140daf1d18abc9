package slipday.language;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slipday.finding.Nearest;
import slipday.measure.Dimension;
import slipday.measure.Unit;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** The mistakes people make with numbers, dates and units, each with a message of its own. */
final class Mistakes {
  static final Shape.Mistake BACKWARDS =
      new Shape.Mistake(
          "range-backwards",
          "The first figure is larger than the second.",
          "Write the smaller one first, as in `3 to 5`.");
  static final Shape.Mistake NEGATIVE =
      new Shape.Mistake(
          "negative-amount", "A figure below zero does not fit here.", "Leave off the minus.");
  static final Shape.Mistake MORE_THAN_ALL =
      new Shape.Mistake(
          "more-than-all",
          "A share can't be more than the whole.",
          "Write it as `15 %`, `1 in 10` or `44 of 50`.");
  static final Shape.Mistake SHARE_WITHOUT_UNIT =
      new Shape.Mistake(
          "unit-missing",
          "A share needs to say of what.",
          "Write it as `15 %`, `1 in 10` or `44 of 50`.");
  private static final Pattern RANGE =
      Pattern.compile("(\\d+(?:\\.\\d+)?)[-\u2013\u2212](\\d+(?:\\.\\d+)?)\\S*");
  private static final Pattern DATE =
      Pattern.compile(
          "\\d{1,2}[./]\\d{1,2}[./](?:\\d{2}|\\d{4})?|\\d{4}[-/.]\\d{1,2}[-/.]\\d{1,2}");
  private static final Pattern GLUED =
      Pattern.compile("(\\d+(?:\\.\\d+)?)([\\p{L}\u00B0][\\p{L}\u00B0-]*)");
  private static final Pattern RUN_TOGETHER = Pattern.compile("\\d+(?:\\.\\d+)?\\p{L}+\\d.*");

  private Mistakes() {}

  /** A number grown together with its unit. */
  record Glued(double amount, Unit unit) {}

  static Optional<Glued> glued(Word word) {
    if (!word.is(WordKind.MIXED)) {
      return Optional.empty();
    }
    Matcher m = GLUED.matcher(word.text());
    if (!m.matches()) {
      return Optional.empty();
    }
    return Unit.named(m.group(2)).map(u -> new Glued(Double.parseDouble(m.group(1)), u));
  }

  /** What a word that should have been a number is mistaken in, where that is known. */
  static Optional<Shape.Mistake> numberLike(Optional<Word> found) {
    if (found.isEmpty() || !found.get().is(WordKind.MIXED)) {
      return Optional.empty();
    }
    String text = found.get().text();
    if (DATE.matcher(text).matches()) {
      return Optional.of(dateForm(text));
    }
    Matcher range = RANGE.matcher(text);
    if (range.matches()) {
      return Optional.of(
          new Shape.Mistake(
              "range-dash",
              "`" + text + "` is not read as a range.",
              "Write `" + range.group(1) + " to " + range.group(2) + "`."));
    }
    if (RUN_TOGETHER.matcher(text).matches()) {
      return Optional.of(runTogether(text));
    }
    return Optional.empty();
  }

  static Shape.Mistake dateForm(String text) {
    return new Shape.Mistake(
        "date-form",
        "`" + text + "` is not how a date is written here.",
        "Write the full date as `2027-05-14`, or in a plan `14 May`.");
  }

  private static Shape.Mistake runTogether(String text) {
    String spaced =
        text.replaceAll("(?<=\\d)(?=\\p{L})|(?<=\\p{L})(?=\\d)", " ")
            .replaceAll("(?<=\\p{L})x(?= )", " x");
    return new Shape.Mistake(
        "needs-spaces",
        "`" + text + "` runs several figures together.",
        "Put spaces between figures and units: `" + spaced + "`.");
  }

  static Shape.Mistake wrongUnit(Unit unit, Kind kind) {
    return new Shape.Mistake(
        "unit-wrong",
        "`"
            + unit.word()
            + "` is a unit of "
            + unit.dimension().withArticle().replaceFirst("^an? ", "")
            + ".",
        "Here belongs " + kind.expected() + ".");
  }

  /** The unit after a number is missing, unknown, or of the wrong kind. */
  static Shape.Mistake unit(Word number, Optional<Word> word, Optional<Unit> unit, Kind kind) {
    if (unit.isPresent()) {
      return wrongUnit(unit.get(), kind);
    }
    boolean isWord = word.filter(w -> w.is(WordKind.WORD)).isPresent();
    if (!isWord) {
      return missingUnit(number, kind);
    }
    String text = word.orElseThrow().text();
    if (text.equalsIgnoreCase("in")) {
      return new Shape.Mistake("unit-unknown", "`in` is not read as a unit.", "Write `inch`.");
    }
    Optional<String> otherCase = Unit.allWords().filter(w -> w.equalsIgnoreCase(text)).findFirst();
    Optional<String> near = kind.dimension().flatMap(d -> Nearest.to(text, Unit.words(d)));
    if (text.length() <= 2 && otherCase.isEmpty() && near.isEmpty() && text.equals("x")) {
      return missingUnit(number, kind);
    }
    String help =
        otherCase
            .or(() -> near)
            .map(n -> "Did you mean `" + n + "`?")
            .orElse("Here belongs " + kind.expected() + ".");
    return new Shape.Mistake("unit-unknown", "`" + text + "` is not a unit.", help);
  }

  private static Shape.Mistake missingUnit(Word number, Kind kind) {
    String fitting = kind.dimension().map(Dimension::fittingUnits).orElse("a unit");
    return new Shape.Mistake(
        "unit-missing",
        "`" + number.text() + "` stands without its unit.",
        "Write which: " + fitting + ".");
  }

  static Shape.Mistake coordinate(double most) {
    return new Shape.Mistake(
        "coordinate-range",
        "A place on earth is at most " + Math.round(most) + " degrees.",
        "Write it as `44.21 N, 72.58 W`.");
  }
}
