package slipday.language;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One row of the table of clauses: the words it begins with, where it may stand, the shape of what
 * follows, what it means, an example of the whole line, and whether it may come more than once.
 */
public record Clause(
    List<String> words,
    Set<Declaration> where,
    Shape shape,
    String sentence,
    String example,
    boolean many) {

  /** A clause that may come once, its words and its shape written as {@code words: shape}. */
  static Clause once(Set<Declaration> where, String line, String sentence, String example) {
    return of(where, line, sentence, example, false);
  }

  static Clause many(Set<Declaration> where, String line, String sentence, String example) {
    return of(where, line, sentence, example, true);
  }

  /** A line of the record: after its date, the words of the clause. Its example has the date. */
  static Clause dated(String line, String sentence, String example) {
    return of(EnumSet.noneOf(Declaration.class), line, sentence, example, true);
  }

  private static Clause of(
      Set<Declaration> where, String line, String sentence, String example, boolean many) {
    int colon = line.indexOf(": ");
    List<String> words = List.of(line.substring(0, colon).split(" "));
    return new Clause(words, where, Shape.of(line.substring(colon + 2)), sentence, example, many);
  }

  static Set<Declaration> in(Declaration first, Declaration... more) {
    return EnumSet.of(first, more);
  }

  /** Whether it is a line of the record, which stands under nothing and begins with its date. */
  public boolean isDated() {
    return where.isEmpty();
  }

  /** The clause words as one text: {@code seed parent}. */
  public String name() {
    return String.join(" ", words);
  }

  /** There is one of each in the table. */
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(this);
  }
}
