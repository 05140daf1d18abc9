package slipday.language;

import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.syntax.Line;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Splits the source off the end of a crop fact: {@code …, says knott from memory}. */
final class SaysReader {
  private SaysReader() {}

  /** The line without its source, the source, and a mistake in naming it. */
  record Split(Line value, Optional<Says> says, Optional<Finding> mistake) {}

  /** A line that has no source, because it states no fact. */
  static Split whole(Line line) {
    return new Split(line, Optional.empty(), Optional.empty());
  }

  static Split split(Line line) {
    List<Word> words = line.words();
    int comma = lastComma(words);
    if (comma < 1 || comma + 1 == words.size()) {
      return whole(line);
    }
    List<Word> tail = words.subList(comma + 1, words.size());
    Line value = new Line(words.subList(0, comma));
    if (tail.get(0).isWord("common") && tail.size() == 2 && tail.get(1).isWord("practice")) {
      Says says = new Says(Optional.empty(), false, tail.get(0).span().to(tail.get(1).span()));
      return new Split(value, Optional.of(says), Optional.empty());
    }
    if (!tail.get(0).isWord("says")) {
      return whole(line);
    }
    boolean fromMemory =
        tail.size() == 4 && tail.get(2).isWord("from") && tail.get(3).isWord("memory");
    if ((tail.size() != 2 && !fromMemory) || !isName(tail.get(1))) {
      Finding mistake =
          Finding.error(
                  "source-form", tail.get(0).span(), "The source of this fact is not told in full.")
              .withHelp(
                  "Write `, says SOURCE`, `, says SOURCE from memory` or `, common practice`.");
      return new Split(value, Optional.empty(), Optional.of(mistake));
    }
    Word source = tail.get(1);
    Says says =
        new Says(
            Optional.of(Value.Name.of(source.text(), source.span())),
            fromMemory,
            tail.get(0).span().to(tail.get(tail.size() - 1).span()));
    return new Split(value, Optional.of(says), Optional.empty());
  }

  private static boolean isName(Word word) {
    return word.is(WordKind.WORD) || word.is(WordKind.MIXED);
  }

  private static int lastComma(List<Word> words) {
    for (int i = words.size() - 1; i > 0; i--) {
      if (words.get(i).is(WordKind.COMMA)) {
        return i;
      }
    }
    return -1;
  }
}
