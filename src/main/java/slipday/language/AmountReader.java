package slipday.language;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import slipday.measure.Dimension;
import slipday.measure.Quantity;
import slipday.measure.Unit;
import slipday.syntax.WordKind;

/** Reads numbers with their units, one or two of them. */
final class AmountReader extends FigureReader {
  AmountReader(Kind kind, String name, Shape.Attempt attempt) {
    super(kind, name, attempt);
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
    Unit degrees = degrees(attempt.text(at + 1), at + 2);
    if (degrees != null) {
      return new Measured(n, degrees, at + 3);
    }
    Unit unit = Unit.named(attempt.text(at + 1)).orElse(null);
    return unit != null && kind.takes(unit)
        ? withSmallerUnit(n, unit, at + 2)
        : noFigure(unitMistake(at, unit));
  }

  /** The unit of {@code 18° C} and {@code 18 ° C}; null where there is none such. */
  private @Nullable Unit degrees(String sign, int at) {
    Unit unit = sign.equals("°") ? Unit.named(attempt.text(at)).orElse(null) : null;
    boolean fits = unit != null && unit.dimension() == Dimension.TEMPERATURE && kind.takes(unit);
    return fits ? unit : null;
  }

  private @Nullable Measured measuredGlued(int at) {
    Mistakes.Glued glued = Mistakes.glued(attempt.words.get(at)).orElse(null);
    if (glued == null) {
      return noFigure(fail(at));
    }
    Unit degrees = degrees(glued.word(), at + 1);
    if (degrees != null) {
      return isTooLarge(glued.amount())
          ? noFigure(tooLarge(at))
          : new Measured(glued.amount(), degrees, at + 2);
    }
    Unit unit = Unit.named(glued.word()).orElse(null);
    if (unit == null) {
      return noFigure(mistaken(at, () -> Mistakes.unknownUnit(glued.number(), glued.word(), kind)));
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
        ? mistaken(at + 1, () -> Mistakes.unknownUnit("", attempt.text(at + 1), kind))
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

  private boolean isWronglyNegative(double amount, Unit unit) {
    return amount < 0 && (unit.dimension() != Dimension.TEMPERATURE || kind == Kind.WARMTH);
  }

  int amount(int at) {
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

  int amountRange(int at) {
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
}
