package slipday.syntax;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.source.Source;
import slipday.source.Span;
import slipday.syntax.grammar.SeasonLexer;
import slipday.syntax.grammar.SeasonParser.FileContext;
import slipday.syntax.grammar.SeasonParser.LineContext;

/** The one way from a text to its lines. */
public final class SeasonParser {
  private SeasonParser() {}

  /**
   * Parses any text at all; what is wrong with it is in the findings, and the rest still parses.
   */
  public static Outcome<SeasonFile> parse(Source source) {
    LongLines tooLong = LongLines.of(source);
    return parse(source, tooLong, Offsets.of(source.text()));
  }

  /**
   * Parses some parts of a text, and leaves out the lines between.
   *
   * @param parts in their order, each from the beginning of a line to the end of one; none of their
   *     lines may be so long that it is not taken apart
   */
  public static Outcome<SeasonFile> parse(Source source, List<Span> parts) {
    StringBuilder text = new StringBuilder();
    parts.forEach(part -> text.append(source.text(), part.start(), part.end()));
    String together = text.toString();
    LongLines none = new LongLines(together, List.of());
    return parse(source, none, Offsets.of(together).within(parts));
  }

  private static Outcome<SeasonFile> parse(Source source, LongLines tooLong, Offsets offsets) {
    SeasonLexer lexer = new SeasonLexer(CharStreams.fromString(tooLong.blanked()));
    lexer.removeErrorListeners();
    CommonTokenStream tokens = new CommonTokenStream(lexer);
    var parser = new slipday.syntax.grammar.SeasonParser(tokens);
    parser.removeErrorListeners();
    parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
    return new TreeBuilder(source, tokens, offsets).build(parser.file(), tooLong);
  }

  /** Turns ANTLR's contexts and hidden tokens into our lines and comments. */
  private static final class TreeBuilder {
    private final Source source;
    private final CommonTokenStream tokens;
    private final Offsets offsets;
    private final WordTexts texts;
    private final List<Finding> findings = new ArrayList<>();

    TreeBuilder(Source source, CommonTokenStream tokens, Offsets offsets) {
      this.source = source;
      this.tokens = tokens;
      this.offsets = offsets;
      this.texts = new WordTexts(source.text());
    }

    Outcome<SeasonFile> build(FileContext file, LongLines tooLong) {
      List<Line> lines = new ArrayList<>(file.getChildCount());
      for (int i = 0; i < file.getChildCount(); i++) {
        if (file.getChild(i) instanceof LineContext line) {
          lines.add(line(line));
        }
      }
      List<Comment> comments = new ArrayList<>();
      for (Token token : tokens.getTokens()) {
        if (token.getType() == SeasonLexer.COMMENT) {
          comments.add(comment(token));
        }
      }
      SeasonFile tree = new SeasonFile(source, tooLong.among(lines), List.copyOf(comments));
      return new Outcome<>(tree, findings);
    }

    private Line line(LineContext context) {
      List<Word> words = new ArrayList<>(context.getChildCount());
      for (int i = 0; i < context.getChildCount(); i++) {
        Token token = (Token) context.getChild(i).getPayload();
        if (token.getType() != SeasonLexer.NL && token.getType() != Token.EOF) {
          words.add(word(token));
        }
      }
      return new Line(words);
    }

    private Word word(Token token) {
      int start = offsets.utf16(token.getStartIndex());
      int end = offsets.utf16(token.getStopIndex() + 1);
      String text = texts.text(start, end);
      return new Word(kind(token.getType()), text, source, start, end);
    }

    private Comment comment(Token token) {
      int start = offsets.utf16(token.getStartIndex());
      int end = offsets.utf16(token.getStopIndex() + 1);
      String text = source.text().substring(start, end);
      if (text.length() > 1 && Character.isLetterOrDigit(text.codePointAt(1))) {
        findings.add(
            Finding.error(
                    "comment-without-space",
                    source.span(start, end),
                    "`"
                        + firstWord(text)
                        + "` reads as a comment, for a `#` hides the rest of its line.")
                .labelled("hidden")
                .withHelp("Put a space after `#` for a comment, or leave the `#` off for a tag."));
      }
      return new Comment(source.span(start, end));
    }

    private static String firstWord(String text) {
      int end = 1;
      while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
        end++;
      }
      return text.substring(0, end);
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
