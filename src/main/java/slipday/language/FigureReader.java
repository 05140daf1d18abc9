package slipday.language;

import java.util.Optional;
import java.util.function.Supplier;
import slipday.measure.Range;
import slipday.measure.Unit;
import slipday.syntax.WordKind;

/** What reading any value needs: figures, failures, and keeping what was read. */
class FigureReader {
  /** So many digits and nothing else are a whole number that is soon read. */
  private static final int PLAIN_DIGITS = 9;

  final Kind kind;
  final String name;
  final Shape.Attempt attempt;

  FigureReader(Kind kind, String name, Shape.Attempt attempt) {
    this.kind = kind;
    this.name = name;
    this.attempt = attempt;
  }

  int fail(int at) {
    return attempt.is(at, WordKind.MIXED) ? failMixed(at) : attempt.expect(at, kind.expected());
  }

  int failMixed(int at) {
    Optional<Shape.Mistake> known = Mistakes.numberLike(attempt.words.get(at));
    return known.isPresent()
        ? attempt.mistaken(at, known::get, kind.expected())
        : attempt.expect(at, kind.expected());
  }

  int mistaken(int at, Supplier<Shape.Mistake> known) {
    return attempt.mistaken(at, known, kind.expected());
  }

  int keep(int next, Value value) {
    attempt.bound.add(name, value);
    return next;
  }

  String text(int from, int to) {
    return attempt.span(from, to).text();
  }

  /** The number at an index; {@code NaN} if there is none. */
  double number(int at) {
    if (!attempt.is(at, WordKind.NUMBER)) {
      return Double.NaN;
    }
    String text = attempt.text(at);
    if (text.length() <= PLAIN_DIGITS && isDigits(text)) {
      return Integer.parseInt(text);
    }
    return Double.parseDouble(text.charAt(0) == '\u2212' ? '-' + text.substring(1) : text);
  }

  double whole(int at) {
    return isDigits(attempt.text(at)) ? number(at) : Double.NaN;
  }

  /** By hand: the library that knows it takes longer to make itself ready than many a plan. */
  static boolean isDigits(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (!Character.isDigit(text.charAt(i))) {
        return false;
      }
    }
    return !text.isEmpty();
  }

  double number(int at, boolean whole) {
    return whole ? whole(at) : number(at);
  }

  boolean isTooLarge(double number) {
    return Math.abs(number) >= Mistakes.TOO_LARGE;
  }

  int tooLarge(int at) {
    return mistaken(at, () -> Mistakes.tooLarge(attempt.text(at)));
  }

  int between(int from, int to, double low, double high, Optional<Unit> unit) {
    return low > high
        ? mistaken(from, () -> Mistakes.backwards(text(from, to)))
        : keep(to, new Value.Between(new Range(low, high), unit, attempt.span(from, to)));
  }
}
