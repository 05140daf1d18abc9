package slipday.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import slipday.finding.Outcome;
import slipday.language.Binder;
import slipday.language.Clause;
import slipday.language.Clauses;
import slipday.language.Declaration;
import slipday.syntax.Comment;
import slipday.syntax.Line;
import slipday.syntax.SeasonFile;
import slipday.syntax.WordKind;

/**
 * The canonical layout of a season file, made for a diff that shows only what was decided: how a
 * line is laid out hangs on that line alone. Every word and every comment stays, in its order.
 */
public final class Formatter {
  /** Columns count from zero here. */
  private static final int CLAUSE_COLUMN = 2;

  private static final int VALUE_COLUMN = 17;
  private static final int COMMENT_COLUMN = 40;
  private static final int COMMENT_GAP = 2;

  private final List<Row> rows;
  private @Nullable Declaration open;

  private Formatter(List<Row> rows) {
    this.rows = rows;
  }

  /**
   * The file laid out anew, and the mistakes of its lines. A line that is not understood keeps its
   * words where they were, so that nothing is lost; to lay out only what is free of mistakes is for
   * the caller to decide.
   */
  public static Outcome<String> format(SeasonFile file) {
    String text = new Formatter(Row.of(file)).text();
    return new Outcome<>(text, Binder.bind(file).findings());
  }

  /** A row's words as they will stand; a row without words has none. */
  private record Code(String text, int indent, boolean beginsBlock) {}

  private String text() {
    List<Optional<Code>> codes = new ArrayList<>(rows.size());
    for (Row row : rows) {
      codes.add(row.line().map(line -> code(line, row)));
    }
    boolean[] blank = blanks(codes);
    int[] indents = indents(codes);
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < rows.size(); i++) {
      if (blank[i]) {
        out.append('\n');
      }
      append(out, codes.get(i).map(Code::text).orElse(""), indents[i], rows.get(i).comment());
    }
    return out.toString();
  }

  private static void append(
      StringBuilder out, String code, int indent, Optional<Comment> comment) {
    String line = " ".repeat(indent) + code;
    out.append(line);
    if (comment.isPresent()) {
      int width = line.codePointCount(0, line.length());
      int gap = code.isEmpty() ? 0 : Math.max(COMMENT_COLUMN - width, COMMENT_GAP);
      out.append(" ".repeat(gap)).append(comment.get().text());
    }
    out.append('\n');
  }

  private Code code(Line line, Row row) {
    Optional<Declaration> declaration = Declaration.begunBy(line);
    if (declaration.isPresent()) {
      open = declaration.get();
      String text = joined(open.word(), " ", rest(line, 1));
      return new Code(text, 0, open.hasClauses());
    }
    Optional<Clause> clause = Optional.ofNullable(open).flatMap(d -> Clauses.of(d, line.words()));
    if (clause.isPresent()) {
      String value = rest(line, clause.get().words().size());
      return new Code(clause(clause.get(), value), CLAUSE_COLUMN, false);
    }
    boolean atEdge = line.first().is(WordKind.DATE) || !row.indented();
    return new Code(rest(line, 0), atEdge ? 0 : CLAUSE_COLUMN, false);
  }

  /** A line that says a clause, indented, without its end. */
  public static String line(Clause clause, String value) {
    return " ".repeat(CLAUSE_COLUMN) + clause(clause, value);
  }

  private static String clause(Clause clause, String value) {
    int gap = Math.max(VALUE_COLUMN - CLAUSE_COLUMN - clause.name().length(), 1);
    return joined(clause.name(), " ".repeat(gap), value);
  }

  private static String rest(Line line, int from) {
    return Wording.of(line.words().subList(from, line.words().size()));
  }

  private static String joined(String words, String gap, String value) {
    return value.isEmpty() ? words : words + gap + value;
  }

  /**
   * Before which rows an empty line goes: where one was, and above each block with its comments.
   */
  private boolean[] blanks(List<Optional<Code>> codes) {
    boolean[] blank = new boolean[rows.size()];
    for (int i = 0; i < blank.length; i++) {
      blank[i] = rows.get(i).afterBlank();
      if (codes.get(i).filter(Code::beginsBlock).isPresent()) {
        int top = i;
        while (!blank[top] && top > 0 && rows.get(top - 1).isOnlyComment()) {
          top--;
        }
        blank[top] = true;
      }
    }
    if (blank.length > 0) {
      blank[0] = false;
    }
    return blank;
  }

  /** A comment with a line of its own stands where the next line with words does. */
  private int[] indents(List<Optional<Code>> codes) {
    int[] indents = new int[rows.size()];
    int next = -1;
    for (int i = rows.size() - 1; i >= 0; i--) {
      int atEnd = rows.get(i).indented() ? CLAUSE_COLUMN : 0;
      int below = next < 0 ? atEnd : next;
      indents[i] = codes.get(i).map(Code::indent).orElse(below);
      next = codes.get(i).isPresent() ? indents[i] : next;
    }
    return indents;
  }
}
