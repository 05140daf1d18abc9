package slipday.language;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

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

  static Clause once(String words, Set<Declaration> where, String shape, String sentence, String example) {
    return new Clause(List.of(words.split(" ")), where, Shape.of(shape), sentence, example, false);
  }

  static Clause many(String words, Set<Declaration> where, String shape, String sentence, String example) {
    return new Clause(List.of(words.split(" ")), where, Shape.of(shape), sentence, example, true);
  }

  static Set<Declaration> in(Declaration first, Declaration... more) {
    return EnumSet.of(first, more);
  }

  /** The clause words as one text: {@code seed parent}. */
  public String name() {
    return String.join(" ", words);
  }
}
