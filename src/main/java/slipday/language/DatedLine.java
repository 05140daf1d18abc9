package slipday.language;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.source.Span;
import slipday.syntax.Line;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Reads a line of the record, and says what is wrong with one. */
final class DatedLine {
  private static final Shape DAY = Shape.of("<day>");
  private static final String FULL_DATE = "2026-05-14";
  private static final Pattern DAY_OF_MONTH = Pattern.compile("\\d{1,2}/\\d{1,2}");

  private DatedLine() {}

  /** The entry, or what is wrong. */
  record Reading(Optional<Entry> entry, Optional<Finding> finding) {
    static Reading of(Finding finding) {
      return new Reading(Optional.empty(), Optional.of(finding));
    }
  }

  /** Whether a line begins with a date, or with what was meant for one. */
  static boolean isBegunBy(Line line) {
    Word first = line.first();
    return first.is(WordKind.DATE)
        || ((first.is(WordKind.MIXED) || first.is(WordKind.NUMBER))
            && wronglyDated(line).isPresent());
  }

  static Reading read(Line line) {
    Optional<Finding> wrong = wronglyDated(line);
    if (wrong.isPresent()) {
      return Reading.of(wrong.get());
    }
    Shape.Match day = DAY.match(line.words().subList(0, 1), 0);
    if (day.bound().isEmpty()) {
      return Reading.of(Misfit.of(line, day.failure().orElseThrow(), "a date", FULL_DATE + " …"));
    }
    Optional<LocalDate> date = day.bound().get().day("day").date();
    return date.map(d -> read(line, d)).orElseThrow();
  }

  private static Reading read(Line line, LocalDate date) {
    if (line.words().size() == 1) {
      return Reading.of(
          Finding.error("clause-shape", line.span(), "Nothing is said after the date.")
              .withHelp("For example: `" + RecordClauses.SELFED.example() + "`."));
    }
    Line rest = new Line(line.words().subList(1, line.words().size()));
    Optional<Clause> found = Clauses.dated(rest.words());
    if (found.isEmpty()) {
      return Reading.of(unknown(rest));
    }
    Clause clause = found.get();
    Shape.Match match = clause.shape().match(line.words(), 1 + clause.words().size());
    return match
        .bound()
        .map(b -> new Reading(Optional.of(new Entry(clause, date, b, line)), Optional.empty()))
        .orElseGet(
            () ->
                Reading.of(
                    Misfit.of(
                        line, match.failure().orElseThrow(), clause.name(), clause.example())));
  }

  /** {@code 2026-5-14 picked …} and {@code 14 May picked …}. */
  private static Optional<Finding> wronglyDated(Line line) {
    Word first = line.first();
    Optional<Shape.Mistake> mistake = Optional.empty();
    Span place = first.span();
    if (first.is(WordKind.MIXED)) {
      mistake =
          DAY_OF_MONTH.matcher(first.text()).matches()
              ? Optional.of(Mistakes.dateForm(first.text()))
              : Mistakes.numberLike(first).filter(m -> m.rule().equals("date-form"));
    } else if (first.is(WordKind.NUMBER) && line.words().size() > 1) {
      List<Word> two = line.words().subList(0, 2);
      place = first.span().to(two.get(1).span());
      mistake =
          DAY.match(two, 0).bound().isPresent()
              ? Optional.of(Mistakes.dateForm(first.text() + " " + two.get(1).text()))
              : Optional.empty();
    }
    Span at = place;
    return mistake.map(
        m ->
            Finding.error(m.rule(), at, m.message())
                .withHelp(
                    "A line of the record begins with the full date, "
                        + DateForms.full(first.text()).orElse("as `" + FULL_DATE + "`")
                        + "."));
  }

  private static Finding unknown(Line rest) {
    Optional<UnknownLine.Near> near = UnknownLine.near(RecordClauses.ALL, rest);
    Span place = near.map(n -> UnknownLine.beginning(rest, n.words())).orElse(rest.first().span());
    Finding unknown =
        Finding.error(
            "unknown-verb",
            place,
            "`" + place.text().replaceAll("\\s+", " ") + "` is nothing the record knows.");
    return MeantVerb.helped(unknown, rest, near);
  }

  /** A line that says what a line of the record says, but for its date. */
  static Optional<Finding> withoutDate(Line line) {
    boolean elsewhere =
        Stream.of(Declaration.values()).anyMatch(d -> Clauses.of(d, line.words()).isPresent());
    return Clauses.dated(line.words())
        .filter(c -> !elsewhere)
        .map(
            clause ->
                Finding.error(
                        "date-missing",
                        line.first().span(),
                        "`" + clause.name() + "` stands without its date.")
                    .withHelp("Begin the line with it: `" + clause.example() + "`."));
  }
}
