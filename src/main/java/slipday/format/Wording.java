package slipday.format;

import java.util.List;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Words in a row as the canonical layout writes them. */
final class Wording {
  private Wording() {}

  /** Single-spaced, a comma close to what it follows. */
  static String of(List<Word> words) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < words.size(); i++) {
      if (i > 0 && isSpaced(words, i)) {
        text.append(' ');
      }
      text.append(plain(words.get(i)));
    }
    return text.toString();
  }

  /**
   * Whether a space goes before a word. What looks mistaken stays as close together as it was: the
   * space would make {@code 2,31} mean something else, or hide the mistake.
   */
  private static boolean isSpaced(List<Word> words, int i) {
    Word before = words.get(i - 1);
    Word word = words.get(i);
    if (word.is(WordKind.COMMA)) {
      return before.is(WordKind.OTHER) && before.end() < word.start();
    }
    boolean together = before.end() == word.start();
    boolean mistaken =
        before.is(WordKind.OTHER)
            || word.is(WordKind.OTHER)
            || before.is(WordKind.TEXT)
            || isCommaInNumber(words, i);
    return !(together && mistaken);
  }

  private static boolean isCommaInNumber(List<Word> words, int i) {
    return i > 1
        && words.get(i - 1).is(WordKind.COMMA)
        && words.get(i - 2).is(WordKind.NUMBER)
        && words.get(i - 2).end() == words.get(i - 1).start()
        && (words.get(i).is(WordKind.NUMBER) || words.get(i).is(WordKind.MIXED));
  }

  private static String plain(Word word) {
    return switch (word.kind()) {
      case TEXT -> '"' + word.unquoted() + '"';
      case OPEN_TEXT -> '"' + word.unquoted().stripTrailing();
      case NUMBER -> word.text().replace('\u2212', '-');
      case WORD -> word.text().replace('\u2019', '\'');
      default -> word.text();
    };
  }
}
