package slipday.language;

import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.jspecify.annotations.Nullable;
import slipday.measure.Dimension;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.measure.Unit;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Reads the value of one placeholder. Gives the index after it, or -1 with what was expected. */
final class ValueReader {
  private static final int FIRST_YEAR = 1500;
  private static final int LAST_YEAR = 2999;
  private static final Pattern SEASON = Pattern.compile("[12]\\d{3}(-\\d{2})?");

  private final Kind kind;
  private final String name;
  private final Shape.Attempt attempt;

  private ValueReader(Kind kind, String name, Shape.Attempt attempt) {
    this.kind = kind;
    this.name = name;
    this.attempt = attempt;
  }

  static int read(Kind kind, String name, Shape.Attempt attempt, int at) {
    ValueReader reader = new ValueReader(kind, name, attempt);
    return switch (kind) {
      case COUNT -> reader.plain(at, true);
      case NUMBER -> reader.plain(at, false);
      case COUNT_RANGE -> reader.plainRange(at, true);
      case NUMBER_RANGE -> reader.plainRange(at, false);
      case LENGTH, AREA, TEMPERATURE, WARMTH, TIME, AMOUNT -> reader.amount(at);
      case LENGTH_RANGE,
          MASS_RANGE,
          TEMPERATURE_RANGE,
          TIME_RANGE,
          HEAT_OR_TIME_RANGE,
          BRIX_RANGE ->
          reader.amountRange(at);
      case SHARE -> reader.share(at);
      case SHARE_RANGE -> reader.shareRange(at);
      case COUNTS -> reader.counts(at);
      case LATITUDE -> reader.coordinate(at, "N", "S", 90);
      case LONGITUDE -> reader.coordinate(at, "E", "W", 180);
      case DAY -> new DayReader(name, attempt).day(at);
      case YEAR -> reader.year(at);
      case SEASON -> reader.season(at);
      case TEXT -> reader.text(at);
      case PHRASE -> reader.phrase(at);
      case ZONE, NAME, BED, LINE, LOT, PLANTING, CROP, SPECIES, RULE -> reader.name(at);
    };
  }

  private int fail(int at) {
    return attempt.is(at, WordKind.MIXED) ? failMixed(at) : attempt.expect(at, kind.expected());
  }

  private int failMixed(int at) {
    Optional<Shape.Mistake> known = Mistakes.numberLike(attempt.words.get(at));
    return known.isPresent()
        ? attempt.mistaken(at, known::get, kind.expected())
        : attempt.expect(at, kind.expected());
  }

  private int mistaken(int at, Supplier<Shape.Mistake> known) {
    return attempt.mistaken(at, known, kind.expected());
  }

  private int keep(int next, Value value) {
    attempt.bound.add(name, value);
    return next;
  }

  private String text(int from, int to) {
    return attempt.span(from, to).text();
  }

  /** The number at an index; {@code NaN} if there is none. */
  private double number(int at) {
    if (!attempt.is(at, WordKind.NUMBER)) {
      return Double.NaN;
    }
    String text = attempt.text(at);
    return Double.parseDouble(text.charAt(0) == '\u2212' ? '-' + text.substring(1) : text);
  }

  private double whole(int at) {
    return StringUtils.isNumeric(attempt.text(at)) ? number(at) : Double.NaN;
  }

  private double number(int at, boolean whole) {
    return whole ? whole(at) : number(at);
  }

  private boolean isTooLarge(double number) {
    return Math.abs(number) >= Mistakes.TOO_LARGE;
  }

  private int tooLarge(int at) {
    return mistaken(at, () -> Mistakes.tooLarge(attempt.text(at)));
  }

  private int plain(int at, boolean whole) {
    double n = number(at, whole);
    if (Double.isNaN(n)) {
      return fail(at);
    }
    return isTooLarge(n)
        ? tooLarge(at)
        : keep(at + 1, new Value.Plain(n, attempt.span(at, at + 1)));
  }

  private int plainRange(int at, boolean whole) {
    double low = number(at, whole);
    if (Double.isNaN(low)) {
      return fail(at);
    }
    if (isTooLarge(low)) {
      return tooLarge(at);
    }
    if (!attempt.isWord(at + 1, "to")) {
      return between(at, at + 1, low, low, Optional.empty());
    }
    double high = number(at + 2, whole);
    if (Double.isNaN(high)) {
      int failed = fail(at + 2);
      // in `50 to keep the line` the `to` is not the range's
      boolean goesOn = attempt.is(at + 2, WordKind.WORD);
      return goesOn ? between(at, at + 1, low, low, Optional.empty()) : failed;
    }
    return isTooLarge(high) ? tooLarge(at + 2) : between(at, at + 3, low, high, Optional.empty());
  }

  private int between(int from, int to, double low, double high, Optional<Unit> unit) {
    return low > high
        ? mistaken(from, () -> Mistakes.backwards(text(from, to)))
        : keep(to, new Value.Between(new Range(low, high), unit, attempt.span(from, to)));
  }

  /**
   * A number with the unit after it, or grown together with it as in {@code 12m}. Without a unit
   * where it may wait for the second figure, as in {@code 18 to 24 inch}.
   */
  private record Measured(double amount, @Nullable Unit unit, int next) {}

  private @Nullable Measured measured(int at, boolean unitMayWait) {
    if (attempt.is(at, WordKind.MIXED)) {
      return measuredGlued(at);
    }
    double n = number(at);
    if (Double.isNaN(n)) {
      return noFigure(fail(at));
    }
    if (isTooLarge(n)) {
      return noFigure(tooLarge(at));
    }
    if (unitMayWait && attempt.isWord(at + 1, "to")) {
      return new Measured(n, null, at + 1);
    }
    Unit unit = Unit.named(attempt.text(at + 1)).orElse(null);
    return unit != null && kind.takes(unit)
        ? withSmallerUnit(n, unit, at + 2)
        : noFigure(unitMistake(at, unit));
  }

  private @Nullable Measured measuredGlued(int at) {
    Mistakes.Glued glued = Mistakes.glued(attempt.words.get(at)).orElse(null);
    if (glued == null) {
      return noFigure(fail(at));
    }
    Unit unit = Unit.named(glued.word()).orElse(null);
    if (unit == null) {
      return noFigure(mistaken(at, () -> Mistakes.unknownUnit(glued.word(), kind)));
    }
    if (isTooLarge(glued.amount())) {
      return noFigure(tooLarge(at));
    }
    return kind.takes(unit)
        ? withSmallerUnit(glued.amount(), unit, at + 1)
        : noFigure(mistaken(at, () -> Mistakes.wrongUnit(unit, kind)));
  }

  /** Takes in the ounces of {@code 4 lb 12 oz} and the inches of {@code 5 ft 6 inch}. */
  private Measured withSmallerUnit(double amount, Unit unit, int next) {
    Unit smaller =
        switch (unit) {
          case POUND -> Unit.OUNCE;
          case FOOT -> Unit.INCH;
          default -> null;
        };
    double rest = smaller == null ? Double.NaN : number(next);
    boolean fits =
        smaller != null
            && rest >= 0
            && !isTooLarge(rest)
            && Unit.named(attempt.text(next + 1)).filter(u -> u == smaller).isPresent();
    if (!fits || smaller == null) {
      return new Measured(amount, unit, next);
    }
    double perUnit = Math.rint(unit.toBase(1) / smaller.toBase(1));
    return new Measured(amount + rest / perUnit, unit, next + 2);
  }

  /** What is wrong after a number: its unit is missing, unknown, or of another kind. */
  private int unitMistake(int at, @Nullable Unit unit) {
    if (unit != null) {
      return mistaken(at + 1, () -> Mistakes.wrongUnit(unit, kind));
    }
    boolean another = attempt.is(at + 1, WordKind.WORD) && !isNextOfShape(at + 1);
    return another
        ? mistaken(at + 1, () -> Mistakes.unknownUnit(attempt.text(at + 1), kind))
        : mistaken(at + 1, () -> Mistakes.missingUnit(attempt.text(at), kind));
  }

  /** Whether a word is one the shape goes on with; in {@code 18 in in the row} the first is not. */
  private boolean isNextOfShape(int at) {
    return attempt.hasLiteral(at) && !(attempt.isWord(at, "in") && attempt.isWord(at + 1, "in"));
  }

  /** After a failure, which is noted already. */
  private static @Nullable Measured noFigure(int ignored) {
    return null;
  }

  private static Value.@Nullable Share noShare(int ignored) {
    return null;
  }

  private boolean isWronglyNegative(double amount, Unit unit) {
    return amount < 0 && (unit.dimension() != Dimension.TEMPERATURE || kind == Kind.WARMTH);
  }

  private int amount(int at) {
    Measured m = measured(at, false);
    if (m == null || m.unit == null) {
      return -1;
    }
    if (isWronglyNegative(m.amount, m.unit)) {
      return mistaken(at, () -> Mistakes.negative(text(at, m.next), kind));
    }
    Quantity quantity = new Quantity(m.amount, m.unit);
    return keep(m.next, new Value.Amount(quantity, attempt.span(at, m.next)));
  }

  private int amountRange(int at) {
    Measured low = measured(at, true);
    if (low == null) {
      return -1;
    }
    Measured high = attempt.isWord(low.next, "to") ? measured(low.next + 1, false) : low;
    if (high == null || high.unit == null) {
      return -1;
    }
    Unit highUnit = high.unit;
    Unit lowUnit = low.unit == null ? highUnit : low.unit;
    if (lowUnit.dimension() != highUnit.dimension()) {
      return mistaken(high.next - 1, () -> Mistakes.wrongUnit(highUnit, kind));
    }
    if (isWronglyNegative(low.amount, lowUnit)) {
      return mistaken(at, () -> Mistakes.negative(text(at, high.next), kind));
    }
    return between(
        at,
        high.next,
        lowUnit.toBase(low.amount),
        highUnit.toBase(high.amount),
        Optional.of(highUnit));
  }

  private int share(int at) {
    Value.Share share = readShare(at);
    return share == null ? -1 : keep(shareEnd(at), share);
  }

  private int shareEnd(int at) {
    return attempt.is(at + 1, WordKind.PERCENT) ? at + 2 : at + 3;
  }

  private Value.@Nullable Share readShare(int at) {
    double n = number(at);
    if (Double.isNaN(n)) {
      return noShare(fail(at));
    }
    boolean counted = attempt.isWord(at + 1, "of");
    if (!counted && !attempt.isWord(at + 1, "in") && !attempt.is(at + 1, WordKind.PERCENT)) {
      return noShare(mistaken(at + 1, () -> Mistakes.shareWithoutUnit(attempt.text(at))));
    }
    int end = shareEnd(at);
    double of = end == at + 2 ? 100 : whole(at + 2);
    if (Double.isNaN(of) || (counted && Double.isNaN(whole(at)))) {
      return noShare(fail(Double.isNaN(of) ? at + 2 : at));
    }
    if (of == 0) {
      return noShare(mistaken(at + 2, () -> Mistakes.shareOfNothing(text(at, end))));
    }
    if (n > of) {
      return noShare(mistaken(at, () -> Mistakes.moreThanAll(text(at, end))));
    }
    if (n < 0) {
      return noShare(mistaken(at, () -> Mistakes.negative(text(at, end), Kind.SHARE)));
    }
    if (isTooLarge(of)) {
      return noShare(tooLarge(at + 2));
    }
    int hits = counted ? (int) n : 0;
    return new Value.Share(n / of, hits, counted ? (int) of : 0, attempt.span(at, end));
  }

  private int shareRange(int at) {
    if (!attempt.isWord(at + 1, "to")) {
      Value.Share single = readShare(at);
      return single == null
          ? -1
          : keep(shareEnd(at), new Value.Shares(Range.of(single.share()), single.span()));
    }
    double low = number(at);
    double high = number(at + 2);
    if (Double.isNaN(low) || Double.isNaN(high)) {
      return fail(Double.isNaN(low) ? at : at + 2);
    }
    if (!attempt.is(at + 3, WordKind.PERCENT)) {
      return attempt.expect(at + 3, "`%`");
    }
    if (low < 0 || high > 100) {
      return mistaken(at, () -> Mistakes.moreThanAll(text(at, at + 4)));
    }
    if (low > high) {
      return mistaken(at, () -> Mistakes.backwards(text(at, at + 4)));
    }
    Range range = new Range(low / 100, high / 100);
    return keep(at + 4, new Value.Shares(range, attempt.span(at, at + 4)));
  }

  private int counts(int at) {
    return attempt.isWord(at + 1, "of") ? share(at) : fail(at);
  }

  private int coordinate(int at, String plus, String minus, double most) {
    double n = number(at);
    if (Double.isNaN(n)) {
      return attempt.is(at, WordKind.MIXED) ? gluedCoordinate(at) : fail(at);
    }
    boolean positive = attempt.isWord(at + 1, plus);
    if (!positive && !attempt.isWord(at + 1, minus)) {
      return attempt.expect(at + 1, "`" + plus + "` or `" + minus + "`");
    }
    if (n < 0 || n > most) {
      return mistaken(at, () -> Mistakes.coordinate(text(at, at + 2), most));
    }
    return keep(at + 2, new Value.Plain(positive ? n : -n, attempt.span(at, at + 2)));
  }

  private int gluedCoordinate(int at) {
    Word word = attempt.words.get(at);
    return Mistakes.glued(word)
        .map(g -> mistaken(at, () -> Mistakes.gluedWord(g, word.text())))
        .orElseGet(() -> fail(at));
  }

  private int year(int at) {
    double n = whole(at);
    return n >= FIRST_YEAR && n <= LAST_YEAR
        ? keep(at + 1, new Value.Plain(n, attempt.span(at, at + 1)))
        : fail(at);
  }

  /** {@code 2027}, or {@code 2027-28} where the second is the year after the first. */
  private int season(int at) {
    boolean couldBe = attempt.is(at, WordKind.NUMBER) || attempt.is(at, WordKind.MIXED);
    String text = attempt.text(at);
    if (!couldBe || !SEASON.matcher(text).matches()) {
      return attempt.expect(at, kind.expected());
    }
    int year = Integer.parseInt(text.substring(0, 4));
    boolean both = text.length() > 4;
    return both && (year + 1) % 100 != Integer.parseInt(text.substring(5))
        ? attempt.expect(at, kind.expected())
        : keep(at + 1, new Value.SeasonName(year, both, attempt.span(at, at + 1)));
  }

  /** A text without its closing quote has its message already. */
  private int text(int at) {
    if (!attempt.is(at, WordKind.TEXT) && !attempt.is(at, WordKind.OPEN_TEXT)) {
      return attempt.expect(at, kind.expected());
    }
    String text = attempt.words.get(at).unquoted();
    return keep(at + 1, new Value.Text(text, attempt.span(at, at + 1)));
  }

  /** A curly apostrophe, as telephones write it, is the plain one. */
  private int name(int at) {
    if (!attempt.is(at, WordKind.WORD) && !attempt.is(at, WordKind.MIXED)) {
      return attempt.expect(at, kind.expected());
    }
    String text = attempt.text(at).replace('\u2019', '\'');
    return keep(at + 1, new Value.Name(text, attempt.span(at, at + 1)));
  }

  /** Words up to a comma, or up to the {@code to} or {@code at} before a figure. */
  private int phrase(int from) {
    int at = from;
    while (attempt.is(at, WordKind.WORD) && (at == from || !leadsToFigure(at))) {
      at++;
    }
    if (at == from) {
      return attempt.expect(at, kind.expected());
    }
    String words =
        attempt.words.subList(from, at).stream().map(Word::text).collect(Collectors.joining(" "));
    return keep(at, new Value.Name(words.replace('\u2019', '\''), attempt.span(from, at)));
  }

  /** In {@code days to ripe to 36 days} the second {@code to} does. */
  private boolean leadsToFigure(int at) {
    return (attempt.isWord(at, "to") || attempt.isWord(at, "at"))
        && !attempt.is(at + 1, WordKind.WORD);
  }
}
