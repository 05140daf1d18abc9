package slipday.language;

import org.jspecify.annotations.Nullable;
import slipday.measure.Range;
import slipday.syntax.WordKind;

/** Reads shares: {@code 15 %}, {@code 1 in 10}, {@code 44 of 50}, {@code 5 to 70 %}. */
final class ShareReader extends FigureReader {
  ShareReader(Kind kind, String name, Shape.Attempt attempt) {
    super(kind, name, attempt);
  }

  int share(int at) {
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

  int shareRange(int at) {
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

  int counts(int at) {
    return attempt.isWord(at + 1, "of") ? share(at) : fail(at);
  }

  /** Points out of those to be had; halves may be given. */
  int score(int at) {
    double points = number(at);
    double of = number(at + 2);
    if (Double.isNaN(points) || !attempt.isWord(at + 1, "of") || Double.isNaN(of)) {
      return Double.isNaN(points) ? fail(at) : attempt.expect(at + 1, "`of` and a number");
    }
    if (of <= 0) {
      return mistaken(at + 2, () -> Mistakes.noPoints(text(at, at + 3)));
    }
    if (points < 0) {
      return mistaken(at + 2, () -> Mistakes.fewerThanNoPoints(text(at, at + 3)));
    }
    return points > of
        ? mistaken(at + 2, () -> Mistakes.morePoints(text(at, at + 3)))
        : keep(at + 3, new Value.Score(points, of, attempt.span(at, at + 3)));
  }

  private static Value.@Nullable Share noShare(int ignored) {
    return null;
  }
}
