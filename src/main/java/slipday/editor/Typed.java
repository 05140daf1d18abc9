package slipday.editor;

import java.util.List;
import java.util.Optional;
import slipday.language.Declaration;
import slipday.source.Source;
import slipday.syntax.Line;
import slipday.syntax.SeasonFile;
import slipday.syntax.SeasonParser;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/**
 * A line as far as it is typed.
 *
 * @param words those that are finished
 * @param begun the word under way, from its first letter to the cursor; may be empty
 * @param start offset of that word
 * @param indented whether the line begins with a blank
 * @param under the declaration the line belongs to
 * @param silent whether the cursor is in a comment or a text, where nothing is offered
 */
record Typed(
    List<Word> words,
    String begun,
    int start,
    boolean indented,
    Optional<Declaration> under,
    boolean silent) {

  static Typed at(SeasonFile file, int offset) {
    Source source = file.source();
    int lineStart = source.lineStart(source.lineOf(offset));
    String prefix = source.text().substring(lineStart, offset);
    Source line = Source.of(source.name(), prefix);
    SeasonFile parsed = SeasonParser.parse(line).value();
    List<Word> words = parsed.lines().isEmpty() ? List.of() : parsed.lines().get(0).words();
    boolean silent =
        !parsed.comments().isEmpty() || words.stream().anyMatch(w -> w.is(WordKind.OPEN_TEXT));
    boolean indented = !prefix.isEmpty() && Character.isWhitespace(prefix.charAt(0));
    String begun = "";
    if (!words.isEmpty() && !prefix.isEmpty()) {
      Word last = words.get(words.size() - 1);
      boolean open = last.end() == prefix.length();
      if (open && (last.is(WordKind.WORD) || last.is(WordKind.MIXED))) {
        begun = last.text();
        words = words.subList(0, words.size() - 1);
      }
    }
    return new Typed(
        words, begun, offset - begun.length(), indented, under(file, lineStart), silent);
  }

  private static Optional<Declaration> under(SeasonFile file, int before) {
    Optional<Declaration> under = Optional.empty();
    for (Line line : file.lines()) {
      if (line.first().start() >= before) {
        break;
      }
      Optional<Declaration> begins = Declaration.begunBy(line);
      if (begins.isPresent()) {
        under = begins.filter(Declaration::hasClauses);
      } else if (line.first().is(WordKind.DATE)) {
        under = Optional.empty();
      }
    }
    return under;
  }
}
