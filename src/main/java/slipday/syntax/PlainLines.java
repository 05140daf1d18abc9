package slipday.syntax;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import slipday.finding.Outcome;
import slipday.source.Source;
import slipday.source.Span;

/**
 * The grammar's lines, read by hand: a run of the tool is over in less time than the generated
 * lexer needs to make itself ready. A test holds that both give the same.
 *
 * <p>It knows the letters of Latin alphabets, and the signs the grammar names. What other
 * characters are depends on a version of Unicode, and the grammar has its own: a text with one of
 * those outside its comments and quotes is left to the grammar.
 */
final class PlainLines {
  private static final int FIRST_OTHER = 0x250;
  private static final int FIRST_BEYOND_ASCII = 0x80;
  private static final char DEGREE = '\u00B0';
  private static final char NO_BREAK_SPACE = '\u00A0';

  private static final byte OTHER = 0;
  private static final byte LETTER = 1;
  private static final byte DIGIT = 2;
  private static final byte SPACE = 3;
  private static final byte LINE_END = 4;
  private static final byte QUOTE = 5;
  private static final byte SIGN = 6;

  /** Goes on in a word: an underscore. */
  private static final byte JOINS = 7;

  /** Goes on in a word or in what starts with a digit: a stop or a slash; a hyphen is a sign. */
  private static final byte DIVIDES = 8;

  private static final byte APOSTROPHE = 9;
  private static final byte DASH = 10;
  private static final byte HASH = 11;
  private static final byte COMMA = 12;
  private static final byte PERCENT = 13;
  private static final byte UNKNOWN = 14;

  private static final byte[] CLASSES = classes();

  private final Source source;
  private final String text;
  private final WordTexts texts;
  private final FileBuilder file;
  private Word[] words = new Word[16];
  private int count;
  private boolean known = true;

  private PlainLines(Source source, String text) {
    this.source = source;
    this.text = text;
    this.texts = new WordTexts(source.text());
    this.file = new FileBuilder(source, source.lineCount());
  }

  /** The lines of a text, or nothing where it holds a character not known here. */
  static Optional<Outcome<SeasonFile>> parse(Source source, LongLines tooLong) {
    PlainLines lines = new PlainLines(source, tooLong.blanked());
    lines.read(0, lines.text.length());
    return lines.known ? Optional.of(lines.file.build(tooLong)) : Optional.empty();
  }

  /** The lines of some parts of a text, each from the beginning of a line to the end of one. */
  static Optional<Outcome<SeasonFile>> parse(Source source, List<Span> parts) {
    PlainLines lines = new PlainLines(source, source.text());
    for (Span part : parts) {
      lines.read(part.start(), part.end());
    }
    LongLines none = new LongLines(source.text(), List.of());
    return lines.known ? Optional.of(lines.file.build(none)) : Optional.empty();
  }

  private static byte[] classes() {
    byte[] classes = new byte[FIRST_BEYOND_ASCII];
    Arrays.fill(classes, 'A', 'Z' + 1, LETTER);
    Arrays.fill(classes, 'a', 'z' + 1, LETTER);
    Arrays.fill(classes, '0', '9' + 1, DIGIT);
    classes['_'] = JOINS;
    classes[' '] = SPACE;
    classes['\t'] = SPACE;
    classes['\n'] = LINE_END;
    classes['\r'] = LINE_END;
    classes['"'] = QUOTE;
    classes['-'] = SIGN;
    classes['+'] = SIGN;
    classes['.'] = DIVIDES;
    classes['/'] = DIVIDES;
    classes['\''] = APOSTROPHE;
    classes['#'] = HASH;
    classes[','] = COMMA;
    classes['%'] = PERCENT;
    return classes;
  }

  private static byte classOf(char c) {
    return c < FIRST_BEYOND_ASCII ? CLASSES[c] : classOfSign(c);
  }

  private static byte classOfSign(char c) {
    return switch (c) {
      case NO_BREAK_SPACE, '\u2009', '\u202F', '\uFEFF' -> SPACE;
      case '\u2013' -> DASH;
      case '\u2019' -> APOSTROPHE;
      case '\u201C', '\u201D', '\u201E' -> QUOTE;
      case '\u2212' -> SIGN;
      default -> c >= FIRST_OTHER ? UNKNOWN : c == DEGREE || Character.isLetter(c) ? LETTER : OTHER;
    };
  }

  private void read(int from, int to) {
    int at = from;
    while (at < to && known) {
      at = token(at, to);
    }
    endLine();
  }

  /** Takes one token, and says where the next begins. */
  private int token(int start, int to) {
    return switch (classOf(text.charAt(start))) {
      case SPACE -> start + 1;
      case LINE_END -> {
        endLine();
        yield start + 1;
      }
      case LETTER -> word(WordKind.WORD, start, endOfWord(start + 1, to));
      case DIGIT -> startsWithDigit(start, to);
      case SIGN -> sign(start, to);
      case QUOTE -> quoted(start, to);
      case COMMA -> word(WordKind.COMMA, start, start + 1);
      case PERCENT -> word(WordKind.PERCENT, start, start + 1);
      case HASH -> comment(start, to);
      case UNKNOWN -> unknown(start);
      default -> word(WordKind.OTHER, start, start + 1);
    };
  }

  private void endLine() {
    if (count > 0) {
      file.line(Arrays.asList(Arrays.copyOf(words, count)));
      count = 0;
    }
  }

  private int word(WordKind kind, int start, int end) {
    if (count == words.length) {
      words = Arrays.copyOf(words, count * 2);
    }
    words[count++] = new Word(kind, texts.text(start, end), source, start, end);
    return end;
  }

  private int unknown(int at) {
    known = false;
    return at;
  }

  private int endOfWord(int from, int to) {
    int at = from;
    while (at < to) {
      char c = text.charAt(at);
      switch (classOf(c)) {
        case LETTER, DIGIT, JOINS, DIVIDES, APOSTROPHE -> at++;
        case SIGN -> {
          if (c != '-') {
            return at;
          }
          at++;
        }
        case UNKNOWN -> {
          return unknown(at);
        }
        default -> {
          return at;
        }
      }
    }
    return at;
  }

  /** A date or a number if it is nothing more, or else mixed. */
  private int startsWithDigit(int start, int to) {
    int end = endOfMixed(start + 1, to);
    if (isDate(start, end)) {
      return word(WordKind.DATE, start, end);
    }
    boolean number = endOfNumber(start, to) == end;
    return word(number ? WordKind.NUMBER : WordKind.MIXED, start, end);
  }

  private int endOfMixed(int from, int to) {
    int at = from;
    while (at < to) {
      char c = text.charAt(at);
      switch (classOf(c)) {
        case LETTER, DIGIT, JOINS, DIVIDES, DASH -> at++;
        case SIGN -> {
          if (c == '+') {
            return at;
          }
          at++;
        }
        case UNKNOWN -> {
          return unknown(at);
        }
        default -> {
          return at;
        }
      }
    }
    return at;
  }

  /** Whether it reads as {@code 2026-05-18}. */
  private boolean isDate(int start, int end) {
    if (end - start != 10 || text.charAt(start + 4) != '-' || text.charAt(start + 7) != '-') {
      return false;
    }
    for (int i = 0; i < 10; i++) {
      if (i != 4 && i != 7 && !isDigit(start + i)) {
        return false;
      }
    }
    return true;
  }

  private boolean isDigit(int at) {
    char c = text.charAt(at);
    return c >= '0' && c <= '9';
  }

  /** Past the digits from here on, and past a stop with digits after it. */
  private int endOfNumber(int digits, int to) {
    int end = endOfDigits(digits, to);
    boolean fraction = end + 1 < to && text.charAt(end) == '.' && isDigit(end + 1);
    return fraction ? endOfDigits(end + 1, to) : end;
  }

  private int endOfDigits(int from, int to) {
    int at = from;
    while (at < to && isDigit(at)) {
      at++;
    }
    return at;
  }

  private int sign(int start, int to) {
    return start + 1 < to && isDigit(start + 1)
        ? word(WordKind.NUMBER, start, endOfNumber(start + 1, to))
        : word(WordKind.OTHER, start, start + 1);
  }

  private int quoted(int start, int to) {
    int at = start + 1;
    while (at < to) {
      byte next = classOf(text.charAt(at));
      if (next == QUOTE) {
        return word(WordKind.TEXT, start, at + 1);
      }
      if (next == LINE_END) {
        break;
      }
      at++;
    }
    return word(WordKind.OPEN_TEXT, start, at);
  }

  private int comment(int start, int to) {
    int end = start;
    while (end < to && classOf(text.charAt(end)) != LINE_END) {
      end++;
    }
    file.comment(start, end);
    return end;
  }
}
