package slipday.language;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import slipday.finding.Nearest;
import slipday.measure.Quantity;
import slipday.measure.Unit;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** The mistakes people make with numbers and units, each with a message of its own. */
final class Mistakes {
  /** No figure of a garden is as large; what is would only overflow. */
  static final double TOO_LARGE = 1e9;

  private static final String HOW_SHARES = "Write it as `15 %`, `1 in 10` or `44 of 50`.";
  private static final Pattern RANGE =
      Pattern.compile("(\\d+(?:\\.\\d+)?)[-\u2013\u2212](\\d+(?:\\.\\d+)?)(\\p{L}*)");
  private static final Pattern DATE =
      Pattern.compile(
          "\\d{1,2}[./]\\d{1,2}[./](?:\\d{2}|\\d{4})?|\\d{1,2}-\\d{1,2}-\\d{4}|\\d{4}[-/.]\\d{1,2}[-/.]\\d{1,2}");
  private static final Pattern FRACTION = Pattern.compile("(\\d{1,4})/(\\d{1,4})");
  private static final Pattern GLUED =
      Pattern.compile("(\\d+(?:\\.\\d+)?)([\\p{L}\u00B0][\\p{L}\u00B0-]*)");
  private static final Pattern RUN_TOGETHER =
      Pattern.compile("\\d+(?:\\.\\d+)?\\p{L}+\\d(?:\\p{L}|\\d|\\.)*");

  private Mistakes() {}

  /** A number grown together with a word, which may be its unit. */
  record Glued(double amount, String number, String word) {}

  static Optional<Glued> glued(Word word) {
    Matcher m = GLUED.matcher(word.text());
    return word.is(WordKind.MIXED) && m.matches()
        ? Optional.of(new Glued(Double.parseDouble(m.group(1)), m.group(1), m.group(2)))
        : Optional.empty();
  }

  /** What a word that should have been a number is mistaken in, where that is known. */
  static Optional<Shape.Mistake> numberLike(Word found) {
    if (!found.is(WordKind.MIXED)) {
      return Optional.empty();
    }
    String text = found.text();
    if (DATE.matcher(text).matches()) {
      return Optional.of(dateForm(text));
    }
    Matcher range = RANGE.matcher(text);
    if (range.matches()) {
      String unit = range.group(3).isEmpty() ? "" : " " + range.group(3);
      String instead = range.group(1) + " to " + range.group(2) + unit;
      return Optional.of(
          new Shape.Mistake(
                  "range-dash",
                  "`" + text + "` is not read as a range.",
                  "Write `" + instead + "`.")
              .instead(List.of(instead)));
    }
    Matcher fraction = FRACTION.matcher(text);
    if (fraction.matches()) {
      return Optional.of(fraction(text, fraction.group(1), fraction.group(2)));
    }
    return RUN_TOGETHER.matcher(text).matches() ? Optional.of(runTogether(text)) : Optional.empty();
  }

  static Shape.Mistake dateForm(String text) {
    return new Shape.Mistake(
        "date-form", "`" + text + "` is not how a date is written here.", DateForms.help(text));
  }

  private static Shape.Mistake fraction(String text, String above, String below) {
    double value = Double.parseDouble(above) / Double.parseDouble(below);
    String figure = Double.isFinite(value) ? Quantity.plain(value) : "0.5";
    return new Shape.Mistake(
        "fraction",
        "`" + text + "` is not read as a number.",
        "Write it with a point, `" + figure + "`; a chance is written `1 in 10`.");
  }

  private static Shape.Mistake runTogether(String text) {
    String spaced =
        text.replaceAll("(?<=\\d)(?=\\p{L})|(?<=\\p{L})(?=\\d)", " ")
            .replaceAll("(?<=\\p{L})x(?= )", " x");
    return new Shape.Mistake(
            "needs-spaces",
            "`" + text + "` runs several figures together.",
            "Put spaces between figures and units: `" + spaced + "`.")
        .instead(List.of(spaced));
  }

  static Shape.Mistake gluedWord(Glued glued, String text) {
    String spaced = glued.number() + " " + glued.word();
    return new Shape.Mistake(
            "needs-spaces",
            "`" + text + "` runs a figure and a word together.",
            "Put a space between them: `" + spaced + "`.")
        .instead(List.of(spaced));
  }

  /** A label that can't be is told why; one of other words, that it is none. */
  static Shape.Mistake generation(String label, String why) {
    return new Shape.Mistake(
        "generation-unknown",
        why.startsWith("`") ? "`" + label + "` is no generation." : why,
        "Write it as `F1`, `F4`, `F2 sib 1`, `BC1F2`, `S1`, `OP 2`, `bulk of F3`, `inbred` or"
            + " `unknown`; `F2, probable` where it is not sure.");
  }

  static Shape.Mistake tooLarge(String text) {
    return new Shape.Mistake(
        "number-too-large",
        "`"
            + StringUtils.abbreviateMiddle(text, "…", 20)
            + "` is larger than any figure of a garden.",
        "Look for digits too many.");
  }

  static Shape.Mistake backwards(String range) {
    String says = "The first figure of `" + range + "` is larger than the second.";
    String[] ends = range.strip().split("(?i)\\s+to\\s+", 2);
    if (ends.length < 2) {
      return new Shape.Mistake("range-backwards", says, "Write the smaller one first.");
    }
    String[] last = ends[1].split("\\s+", 2);
    boolean unitWaits = StringUtils.isNumeric(ends[0].replace(".", "")) && last.length > 1;
    String turned =
        unitWaits ? last[0] + " to " + ends[0] + " " + last[1] : ends[1] + " to " + ends[0];
    return new Shape.Mistake(
            "range-backwards", says, "Write the smaller one first: `" + turned + "`.")
        .instead(List.of(turned));
  }

  static Shape.Mistake negative(String amount, Kind kind) {
    String what = kind.expected().replaceFirst(" (in|such as) .*", "");
    return new Shape.Mistake(
        "negative-amount",
        "`" + amount + "` is below zero, which does not fit " + what + ".",
        "Leave off the minus.");
  }

  static Shape.Mistake countBelowZero(String count) {
    return new Shape.Mistake(
        "negative-amount",
        "`" + count + "` is below zero, and nothing is counted so.",
        "Leave off the minus.");
  }

  static Shape.Mistake moreThanAll(String share) {
    return new Shape.Mistake(
        "more-than-all", "`" + share + "` is more than the whole.", HOW_SHARES);
  }

  static Shape.Mistake shareOfNothing(String share) {
    return new Shape.Mistake(
        "share-of-nothing", "`" + share + "` is a share of nothing.", HOW_SHARES);
  }

  static Shape.Mistake morePoints(String score) {
    return new Shape.Mistake(
        "more-than-all",
        "`" + score + "` is more points than there are.",
        "Write the points first, and after `of` how many there are to be had.",
        2);
  }

  static Shape.Mistake fewerThanNoPoints(String score) {
    return new Shape.Mistake(
        "negative-amount",
        "`" + score + "` is below zero, which points can't be.",
        "Leave off the minus.",
        2);
  }

  static Shape.Mistake noPoints(String score) {
    return new Shape.Mistake(
        "share-of-nothing",
        "`" + score + "` is out of no points.",
        "Write after `of` how many points there are to be had.");
  }

  static Shape.Mistake shareWithoutUnit(String number) {
    return new Shape.Mistake(
        "unit-missing", "`" + number + "` does not say of how many it is a share.", HOW_SHARES, 1);
  }

  static Shape.Mistake coordinate(String text, double most) {
    return new Shape.Mistake(
        "coordinate-range",
        text.startsWith("-") || text.startsWith("\u2212")
            ? "`" + text + "` has a minus and a letter, which may say the same twice or undo it."
            : "`" + text + "` is no place on earth: at most " + Math.round(most) + " degrees.",
        "Write it as `44.21 N, 72.58 W`; south is `S`, without a minus.");
  }

  static Shape.Mistake wrongUnit(Unit unit, Kind kind) {
    return new Shape.Mistake(
        "unit-wrong",
        "`" + unit.word() + "` measures " + unit.dimension().withArticle() + ".",
        "Here belongs " + kind.expected() + ".");
  }

  static Shape.Mistake missingUnit(String number, Kind kind) {
    return new Shape.Mistake(
        "unit-missing",
        "`" + number + "` stands without its unit.",
        "Write which: " + kind.fittingUnits() + ".",
        1,
        kind.usualUnits().stream().map(unit -> number + " " + unit).toList());
  }

  /**
   * @param before the figure that the word is grown together with; empty where it stands alone
   */
  static Shape.Mistake unknownUnit(String before, String text, Kind kind) {
    String figure = before.isEmpty() ? "" : before + " ";
    if (text.equalsIgnoreCase("in") && kind.takes(Unit.INCH)) {
      return new Shape.Mistake(
              "unit-unknown", "`" + text + "` is not read as a unit.", "Write `inch`.")
          .instead(List.of(figure + "inch"));
    }
    Optional<String> otherCase =
        kind.unitWords().stream().filter(w -> w.equalsIgnoreCase(text)).findFirst();
    Optional<String> near =
        text.length() < 3 ? Optional.empty() : Nearest.to(text, kind.unitWords());
    Optional<String> meant = otherCase.or(() -> near);
    return new Shape.Mistake(
            "unit-unknown",
            "`" + text + "` is not a unit.",
            meant.map(Nearest::meant).orElse("Here belongs " + kind.expected() + "."))
        .instead(meant.stream().map(unit -> figure + unit).toList());
  }
}
