package slipday.language;

import java.time.LocalDate;
import java.util.stream.Collectors;
import slipday.source.Span;
import slipday.syntax.Line;
import slipday.syntax.Word;

/** A line of the record that fits its clause. */
public record Entry(Clause clause, LocalDate date, Bound bound, Line line) {
  public boolean is(Clause other) {
    return clause.equals(other);
  }

  public Span span() {
    return line.span();
  }

  /** The line single-spaced; entries of one wording are one fact. */
  public String wording() {
    int verb = clause.words().size() + 1;
    String rest = line.words().stream().skip(verb).map(Word::text).collect(Collectors.joining(" "));
    return date + " " + clause.name() + " " + rest.replace('\u2019', '\'');
  }
}
