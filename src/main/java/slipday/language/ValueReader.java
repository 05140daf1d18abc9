package slipday.language;

import java.util.Optional;
import slipday.genetics.Generation;
import slipday.source.Span;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Reads the value of one placeholder. Gives the index after it, or -1 with what was expected. */
final class ValueReader extends FigureReader {
  private static final int FIRST_YEAR = 1500;
  private static final int LAST_YEAR = 2999;

  private ValueReader(Kind kind, String name, Shape.Attempt attempt) {
    super(kind, name, attempt);
  }

  static int read(Kind kind, String name, Shape.Attempt attempt, int at) {
    return switch (kind) {
      case LENGTH, AREA, MASS, TEMPERATURE, WARMTH, TIME, BRIX, AMOUNT ->
          new AmountReader(kind, name, attempt).amount(at);
      case LENGTH_RANGE,
          MASS_RANGE,
          TEMPERATURE_RANGE,
          TIME_RANGE,
          HEAT_OR_TIME_RANGE,
          BRIX_RANGE ->
          new AmountReader(kind, name, attempt).amountRange(at);
      case SHARE -> new ShareReader(kind, name, attempt).share(at);
      case SHARE_RANGE -> new ShareReader(kind, name, attempt).shareRange(at);
      case COUNTS -> new ShareReader(kind, name, attempt).counts(at);
      case SCORE -> new ShareReader(kind, name, attempt).score(at);
      case DAY -> new DayReader(name, attempt).day(at);
      default -> new ValueReader(kind, name, attempt).read(at);
    };
  }

  private int read(int at) {
    return switch (kind) {
      case COUNT -> plain(at, true);
      case NUMBER -> plain(at, false);
      case COUNT_RANGE -> plainRange(at, true);
      case NUMBER_RANGE -> plainRange(at, false);
      case LATITUDE -> coordinate(at, "N", "S", 90);
      case LONGITUDE -> coordinate(at, "E", "W", 180);
      case YEAR -> year(at);
      case SEASON -> season(at);
      case TEXT -> text(at);
      case PHRASE -> phrase(at);
      case GENERATION -> generation(at);
      case TAG -> tag(at);
      case ZONE, NAME, BED, LINE, LOT, PLANTING, CROP, SPECIES, RULE -> name(at);
      default -> throw new IllegalStateException("no reader for " + kind);
    };
  }

  private int plain(int at, boolean whole) {
    double n = number(at, whole);
    if (Double.isNaN(n)) {
      return whole && number(at) < 0
          ? mistaken(at, () -> Mistakes.countBelowZero(attempt.text(at)))
          : fail(at);
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

  /** {@code 2026}, or {@code 2026-27} where the second is the year after the first. */
  private int season(int at) {
    boolean couldBe = attempt.is(at, WordKind.NUMBER) || attempt.is(at, WordKind.MIXED);
    String text = attempt.text(at);
    if (!couldBe || !isSeason(text)) {
      return attempt.expect(at, kind.expected());
    }
    int year = Integer.parseInt(text.substring(0, 4));
    boolean both = text.length() > 4;
    return both && (year + 1) % 100 != Integer.parseInt(text.substring(5))
        ? attempt.expect(at, kind.expected())
        : keep(at + 1, new Value.SeasonName(year, both, attempt.span(at, at + 1)));
  }

  private static boolean isSeason(String text) {
    return (text.startsWith("1") || text.startsWith("2"))
        && (text.length() == 4 ? isDigits(text) : isOverNewYear(text));
  }

  private static boolean isOverNewYear(String text) {
    return text.length() == 7
        && text.charAt(4) == '-'
        && isDigits(text.substring(0, 4))
        && isDigits(text.substring(5));
  }

  /** A text without its closing quote has its message already. */
  private int text(int at) {
    if (!attempt.is(at, WordKind.TEXT) && !attempt.is(at, WordKind.OPEN_TEXT)) {
      return attempt.expect(at, kind.expected());
    }
    String text = attempt.words.get(at).unquoted();
    return keep(at + 1, new Value.Text(text, attempt.span(at, at + 1)));
  }

  private int name(int at) {
    if (!attempt.is(at, WordKind.WORD) && !attempt.is(at, WordKind.MIXED)) {
      return attempt.expect(at, kind.expected());
    }
    return keep(at + 1, Value.Name.of(attempt.text(at), attempt.span(at, at + 1)));
  }

  /** A tag may be a bare number, too. */
  private int tag(int at) {
    return isDigits(attempt.text(at))
        ? keep(at + 1, new Value.Name(attempt.text(at), attempt.span(at, at + 1)))
        : name(at);
  }

  /**
   * Words up to a comma, or up to the {@code to}, {@code at} or {@code in more than} before a
   * figure.
   */
  private int phrase(int from) {
    int at = from;
    while (attempt.is(at, WordKind.WORD) && (at == from || !leadsToFigure(at))) {
      at++;
    }
    if (at == from) {
      return attempt.expect(at, kind.expected());
    }
    StringBuilder words = new StringBuilder(attempt.text(from));
    for (int i = from + 1; i < at; i++) {
      words.append(' ').append(attempt.text(i));
    }
    return keep(at, Value.Name.of(words.toString(), attempt.span(from, at)));
  }

  /** All words to the end of the line, as a label. */
  private int generation(int at) {
    int end = attempt.words.size();
    if (at >= end) {
      return attempt.expect(at, kind.expected());
    }
    Span span = attempt.span(at, end);
    String label = span.plainText();
    return Generation.parse(label)
        .match(
            known -> keep(end, Value.Name.of(label, span)),
            why -> mistaken(at, () -> Mistakes.generation(label, why)));
  }

  /** In {@code days to ripe to 36 days} the second {@code to} does. */
  private boolean leadsToFigure(int at) {
    boolean limit =
        attempt.isWord(at, "in")
            && attempt.isWord(at + 1, "more")
            && attempt.isWord(at + 2, "than");
    boolean leads = limit || attempt.isWord(at, "to") || attempt.isWord(at, "at");
    return leads && !attempt.is(limit ? at + 3 : at + 1, WordKind.WORD);
  }
}
