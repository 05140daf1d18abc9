package slipday.syntax;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;
import slipday.finding.Outcome;
import slipday.source.Source;
import slipday.source.Span;
import slipday.syntax.grammar.SeasonLexer;
import slipday.syntax.grammar.SeasonParser.FileContext;
import slipday.syntax.grammar.SeasonParser.LineContext;

/** Lines as the grammar has them: ANTLR's contexts and hidden tokens turned into ours. */
final class GrammarLines {
  private final Source source;
  private final Offsets offsets;
  private final WordTexts texts;

  private GrammarLines(Source source, Offsets offsets) {
    this.source = source;
    this.offsets = offsets;
    this.texts = new WordTexts(source.text());
  }

  static Outcome<SeasonFile> parse(Source source, LongLines tooLong) {
    return new GrammarLines(source, Offsets.of(source.text())).parse(tooLong);
  }

  /** Parses some parts of a text, each from the beginning of a line to the end of one. */
  static Outcome<SeasonFile> parse(Source source, List<Span> parts) {
    StringBuilder text = new StringBuilder();
    parts.forEach(part -> text.append(source.text(), part.start(), part.end()));
    String together = text.toString();
    Offsets offsets = Offsets.of(together).within(parts);
    return new GrammarLines(source, offsets).parse(new LongLines(together, List.of()));
  }

  private Outcome<SeasonFile> parse(LongLines tooLong) {
    SeasonLexer lexer = new SeasonLexer(CharStreams.fromString(tooLong.blanked()));
    lexer.removeErrorListeners();
    CommonTokenStream tokens = new CommonTokenStream(lexer);
    var parser = new slipday.syntax.grammar.SeasonParser(tokens);
    parser.removeErrorListeners();
    parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
    FileContext tree = parser.file();
    FileBuilder file = new FileBuilder(source, tree.getChildCount());
    for (int i = 0; i < tree.getChildCount(); i++) {
      if (tree.getChild(i) instanceof LineContext line) {
        file.line(words(line));
      }
    }
    for (Token token : tokens.getTokens()) {
      if (token.getType() == SeasonLexer.COMMENT) {
        file.comment(start(token), end(token));
      }
    }
    return file.build(tooLong);
  }

  private List<Word> words(LineContext line) {
    List<Word> words = new ArrayList<>(line.getChildCount());
    for (int i = 0; i < line.getChildCount(); i++) {
      Token token = (Token) line.getChild(i).getPayload();
      if (token.getType() != SeasonLexer.NL && token.getType() != Token.EOF) {
        words.add(word(token));
      }
    }
    return words;
  }

  private Word word(Token token) {
    int start = start(token);
    int end = end(token);
    return new Word(kind(token.getType()), texts.text(start, end), source, start, end);
  }

  private int start(Token token) {
    return offsets.utf16(token.getStartIndex());
  }

  private int end(Token token) {
    return offsets.utf16(token.getStopIndex() + 1);
  }

  private static WordKind kind(int type) {
    return switch (type) {
      case SeasonLexer.WORD -> WordKind.WORD;
      case SeasonLexer.MIXED -> WordKind.MIXED;
      case SeasonLexer.NUMBER -> WordKind.NUMBER;
      case SeasonLexer.DATE -> WordKind.DATE;
      case SeasonLexer.TEXT -> WordKind.TEXT;
      case SeasonLexer.OPEN_TEXT -> WordKind.OPEN_TEXT;
      case SeasonLexer.COMMA -> WordKind.COMMA;
      case SeasonLexer.PERCENT -> WordKind.PERCENT;
      default -> WordKind.OTHER;
    };
  }

  /** ANTLR counts code points, our spans count UTF-16; they differ only beyond the basic plane. */
  private interface Offsets {
    int utf16(int codePoint);

    /** Offsets in parts of a text put together, as offsets in the whole of it. */
    default Offsets within(List<Span> parts) {
      int[] starts = new int[parts.size()];
      int length = 0;
      for (int i = 0; i < starts.length; i++) {
        starts[i] = length;
        length += parts.get(i).end() - parts.get(i).start();
      }
      return codePoint -> {
        int at = utf16(codePoint);
        int found = Arrays.binarySearch(starts, at);
        int part = found >= 0 ? found : -found - 2;
        return parts.get(part).start() + at - starts[part];
      };
    }

    static Offsets of(String text) {
      if (text.codePointCount(0, text.length()) == text.length()) {
        return i -> i;
      }
      int[] map = new int[text.codePointCount(0, text.length()) + 1];
      int at = 0;
      for (int i = 0; i < map.length; i++) {
        map[i] = at;
        at = i < map.length - 1 ? at + Character.charCount(text.codePointAt(at)) : at;
      }
      return i -> map[i];
    }
  }
}
