package slipday.language;

import java.util.Optional;
import java.util.OptionalDouble;
import slipday.measure.Dimension;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.measure.Unit;
import slipday.source.Span;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Reads the value of one placeholder. Gives the index after it, or -1 with what was expected. */
final class ValueReader {
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
      case LENGTH, AREA, MASS, TEMPERATURE, WARMTH, TIME, AMOUNT -> reader.amount(at);
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
      case ZONE, NAME, BED, LINE, LOT, PLANTING, CROP, SPECIES, RULE, SOURCE -> reader.name(at);
    };
  }

  private int fail(int at) {
    return Mistakes.numberLike(attempt.word(at))
        .map(m -> attempt.mistaken(at, m, kind.expected()))
        .orElseGet(() -> attempt.expect(at, kind.expected()));
  }

  private int keep(int next, Value value) {
    attempt.bound.add(name, value);
    return next;
  }

  private Span spanned(int from, int to) {
    return attempt.words.get(from).span().to(attempt.words.get(to - 1).span());
  }

  private boolean isWord(int at, String word) {
    return attempt.word(at).filter(w -> w.isWord(word)).isPresent();
  }

  private OptionalDouble number(int at, boolean whole) {
    Optional<Word> word = attempt.word(at).filter(w -> w.is(WordKind.NUMBER));
    if (word.isEmpty() || (whole && !word.get().text().chars().allMatch(Character::isDigit))) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Double.parseDouble(word.get().text().replace('\u2212', '-')));
  }

  private int plain(int at, boolean whole) {
    OptionalDouble n = number(at, whole);
    return n.isEmpty()
        ? fail(at)
        : keep(at + 1, new Value.Plain(n.getAsDouble(), spanned(at, at + 1)));
  }

  private int plainRange(int at, boolean whole) {
    OptionalDouble low = number(at, whole);
    if (low.isEmpty()) {
      return fail(at);
    }
    if (!isWord(at + 1, "to")) {
      return single(at, low.getAsDouble());
    }
    OptionalDouble high = number(at + 2, whole);
    if (high.isEmpty()) {
      int failed = fail(at + 2);
      // in `50 to keep the line` the `to` is not the range's
      boolean goesOn = attempt.word(at + 2).filter(w -> w.is(WordKind.WORD)).isPresent();
      return goesOn ? single(at, low.getAsDouble()) : failed;
    }
    return between(at, at + 3, low.getAsDouble(), high.getAsDouble(), Optional.empty());
  }

  private int single(int at, double figure) {
    Value value = new Value.Between(Range.of(figure), Optional.empty(), spanned(at, at + 1));
    return keep(at + 1, value);
  }

  private int between(int from, int to, double low, double high, Optional<Unit> unit) {
    if (low > high) {
      return attempt.mistaken(from, Mistakes.BACKWARDS, kind.expected());
    }
    return keep(to, new Value.Between(new Range(low, high), unit, spanned(from, to)));
  }

  /** A number with the unit after it, or grown together with it as in {@code 12m}. */
  private record Measured(double amount, Optional<Unit> unit, int next) {}

  private Optional<Measured> measured(int at, boolean unitMayWait) {
    Optional<Word> word = attempt.word(at);
    Optional<Mistakes.Glued> glued = word.flatMap(Mistakes::glued);
    if (glued.isPresent()) {
      Unit unit = glued.get().unit();
      return fits(unit)
          ? Optional.of(new Measured(glued.get().amount(), Optional.of(unit), at + 1))
          : none(attempt.mistaken(at, Mistakes.wrongUnit(unit, kind), kind.expected()));
    }
    OptionalDouble n = number(at, false);
    if (n.isEmpty()) {
      return none(fail(at));
    }
    Optional<Word> unitWord = attempt.word(at + 1);
    if (unitMayWait && isWord(at + 1, "to")) {
      return Optional.of(new Measured(n.getAsDouble(), Optional.empty(), at + 1));
    }
    Optional<Unit> unit = unitWord.flatMap(w -> Unit.named(w.text()));
    if (unit.isPresent() && fits(unit.get())) {
      return Optional.of(new Measured(n.getAsDouble(), unit, at + 2));
    }
    return none(
        attempt.mistaken(
            at + 1, Mistakes.unit(attempt.words.get(at), unitWord, unit, kind), kind.expected()));
  }

  private static <T> Optional<T> none(int ignored) {
    return Optional.empty();
  }

  private boolean fits(Unit unit) {
    return switch (kind) {
      case AMOUNT -> true;
      case HEAT_OR_TIME_RANGE ->
          unit.dimension() == Dimension.TIME || unit.dimension() == Dimension.DEGREE_DAYS;
      default -> kind.dimension().filter(d -> d == unit.dimension()).isPresent();
    };
  }

  private int amount(int at) {
    Optional<Measured> first = measured(at, false);
    if (first.isEmpty()) {
      return -1;
    }
    Measured m = first.get();
    Unit unit = m.unit().orElseThrow();
    Quantity quantity = new Quantity(m.amount(), unit);
    int next = m.next();
    OptionalDouble ounces = unit == Unit.POUND ? number(next, false) : OptionalDouble.empty();
    if (ounces.isPresent() && isWord(next + 1, "oz")) {
      quantity = new Quantity(m.amount() + ounces.getAsDouble() / 16, Unit.POUND);
      next += 2;
    }
    if (mustNotBeNegative(unit) && quantity.amount() < 0) {
      return attempt.mistaken(at, Mistakes.NEGATIVE, kind.expected());
    }
    return keep(next, new Value.Amount(quantity, spanned(at, next)));
  }

  private boolean mustNotBeNegative(Unit unit) {
    return unit.dimension() != Dimension.TEMPERATURE || kind == Kind.WARMTH;
  }

  private int amountRange(int at) {
    Optional<Measured> first = measured(at, true);
    if (first.isEmpty()) {
      return -1;
    }
    Measured low = first.get();
    if (!isWord(low.next(), "to")) {
      Unit unit = low.unit().orElseThrow();
      double base = unit.toBase(low.amount());
      return between(at, low.next(), base, base, low.unit());
    }
    Optional<Measured> second = measured(low.next() + 1, false);
    if (second.isEmpty()) {
      return -1;
    }
    Measured high = second.get();
    Unit highUnit = high.unit().orElseThrow();
    Unit lowUnit = low.unit().orElse(highUnit);
    if (lowUnit.dimension() != highUnit.dimension()) {
      return attempt.mistaken(low.next() + 2, Mistakes.wrongUnit(highUnit, kind), kind.expected());
    }
    return between(
        at, high.next(), lowUnit.toBase(low.amount()), highUnit.toBase(high.amount()), high.unit());
  }

  private int share(int at) {
    OptionalDouble n = number(at, false);
    if (n.isEmpty()) {
      return fail(at);
    }
    if (attempt.word(at + 1).filter(w -> w.is(WordKind.PERCENT)).isPresent()) {
      return keepShare(at, at + 2, n.getAsDouble() / 100, 0, 0);
    }
    if (isWord(at + 1, "in") || isWord(at + 1, "of")) {
      return ratio(at, n.getAsDouble());
    }
    return attempt.mistaken(at + 1, Mistakes.SHARE_WITHOUT_UNIT, kind.expected());
  }

  private int ratio(int at, double hits) {
    OptionalDouble of = number(at + 2, true);
    if (of.isEmpty() || of.getAsDouble() == 0) {
      return fail(at + 2);
    }
    boolean counted = isWord(at + 1, "of");
    double share = hits / of.getAsDouble();
    return keepShare(
        at, at + 3, share, counted ? (int) hits : 0, counted ? (int) of.getAsDouble() : 0);
  }

  private int keepShare(int from, int to, double share, int hits, int of) {
    if (share < 0 || share > 1) {
      return attempt.mistaken(from, Mistakes.MORE_THAN_ALL, kind.expected());
    }
    return keep(to, new Value.Share(share, hits, of, spanned(from, to)));
  }

  private int shareRange(int at) {
    OptionalDouble low = number(at, false);
    if (low.isPresent() && isWord(at + 1, "to")) {
      OptionalDouble high = number(at + 2, false);
      boolean percent = attempt.word(at + 3).filter(w -> w.is(WordKind.PERCENT)).isPresent();
      if (high.isEmpty() || !percent || low.getAsDouble() > high.getAsDouble()) {
        return fail(high.isEmpty() ? at + 2 : at + 3);
      }
      Range range = new Range(low.getAsDouble() / 100, high.getAsDouble() / 100);
      return keep(at + 4, new Value.Shares(range, spanned(at, at + 4)));
    }
    int next = share(at);
    if (next < 0) {
      return -1;
    }
    int before = attempt.bound.size() - 1;
    Value.Share single = (Value.Share) attempt.bound.values().get(before);
    attempt.bound.shrinkTo(before);
    return keep(next, new Value.Shares(Range.of(single.share()), single.span()));
  }

  private int counts(int at) {
    return isWord(at + 1, "of") && number(at, true).isPresent() ? share(at) : fail(at);
  }

  private int coordinate(int at, String plus, String minus, double most) {
    OptionalDouble n = number(at, false);
    if (n.isEmpty()) {
      return fail(at);
    }
    boolean positive = isWord(at + 1, plus);
    if (!positive && !isWord(at + 1, minus)) {
      return attempt.expect(at + 1, "`" + plus + "` or `" + minus + "`");
    }
    if (n.getAsDouble() < 0 || n.getAsDouble() > most) {
      return attempt.mistaken(at, Mistakes.coordinate(most), kind.expected());
    }
    double degrees = positive ? n.getAsDouble() : -n.getAsDouble();
    return keep(at + 2, new Value.Plain(degrees, spanned(at, at + 2)));
  }

  private int year(int at) {
    OptionalDouble n = number(at, true);
    if (n.isEmpty() || n.getAsDouble() < 1500 || n.getAsDouble() > 2999) {
      return fail(at);
    }
    return keep(at + 1, new Value.Plain(n.getAsDouble(), spanned(at, at + 1)));
  }

  private int season(int at) {
    Optional<Word> word = attempt.word(at);
    if (word.filter(w -> w.text().matches("[12]\\d{3}")).isPresent()) {
      int year = Integer.parseInt(word.orElseThrow().text());
      return keep(at + 1, new Value.SeasonName(year, false, spanned(at, at + 1)));
    }
    if (word.filter(w -> w.text().matches("[12]\\d{3}-\\d{2}")).isPresent()) {
      String text = word.orElseThrow().text();
      int year = Integer.parseInt(text.substring(0, 4));
      if ((year + 1) % 100 == Integer.parseInt(text.substring(5))) {
        return keep(at + 1, new Value.SeasonName(year, true, spanned(at, at + 1)));
      }
    }
    return attempt.expect(at, kind.expected());
  }

  private int text(int at) {
    Optional<Word> word = attempt.word(at).filter(w -> w.is(WordKind.TEXT));
    return word.isEmpty()
        ? attempt.expect(at, kind.expected())
        : keep(at + 1, new Value.Text(word.get().unquoted(), word.get().span()));
  }

  private int name(int at) {
    Optional<Word> word = attempt.word(at).filter(w -> w.is(WordKind.WORD) || w.is(WordKind.MIXED));
    return word.isEmpty()
        ? attempt.expect(at, kind.expected())
        : keep(at + 1, new Value.Name(word.get().text(), word.get().span()));
  }

  /** Whether a {@code to} or {@code at} stands here before a figure: {@code days to ripe to 36}. */
  private boolean beginsFigure(int at) {
    boolean figure =
        attempt.word(at + 1).filter(w -> w.is(WordKind.NUMBER) || w.is(WordKind.MIXED)).isPresent();
    return figure && (isWord(at, "to") || isWord(at, "at"));
  }

  /** Words up to a comma, or up to a {@code to} or {@code at} that begins the next part. */
  private int phrase(int from) {
    int at = from;
    while (attempt.word(at).filter(w -> w.is(WordKind.WORD)).isPresent()
        && (at == from || !beginsFigure(at))) {
      at++;
    }
    if (at == from) {
      return attempt.expect(at, kind.expected());
    }
    Span span = spanned(from, at);
    return keep(at, new Value.Name(span.text().replaceAll("\\s+", " "), span));
  }
}
