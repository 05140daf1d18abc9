package slipday.editor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.SemanticTokenTypes;
import slipday.language.Clause;
import slipday.language.Clauses;
import slipday.language.Declaration;
import slipday.source.Span;
import slipday.syntax.Comment;
import slipday.syntax.Line;
import slipday.syntax.SeasonFile;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** What each word is, for colours. */
final class Tokens {
  static final List<String> TYPES =
      List.of(
          SemanticTokenTypes.Keyword,
          SemanticTokenTypes.Property,
          SemanticTokenTypes.Function,
          SemanticTokenTypes.Variable,
          SemanticTokenTypes.Number,
          SemanticTokenTypes.String,
          SemanticTokenTypes.Comment,
          SemanticTokenTypes.Event);

  private record Token(Span span, String type) {}

  private final List<Token> tokens = new ArrayList<>();
  private final Set<Integer> names;

  private Tokens(Set<Integer> names) {
    this.names = names;
  }

  /** In the protocol's five numbers a token. */
  static List<Integer> of(SeasonFile file, List<Symbols.Occurrence> occurrences) {
    Tokens tokens =
        new Tokens(occurrences.stream().map(o -> o.span().start()).collect(Collectors.toSet()));
    Optional<Declaration> under = Optional.empty();
    for (Line line : file.lines()) {
      Optional<Declaration> begins = Declaration.begunBy(line);
      under = begins.isPresent() ? begins : under;
      tokens.line(line, begins.isPresent(), under);
    }
    for (Comment comment : file.comments()) {
      tokens.tokens.add(new Token(comment.span(), SemanticTokenTypes.Comment));
    }
    return tokens.encoded();
  }

  private void line(Line line, boolean declares, Optional<Declaration> under) {
    List<Word> words = line.words();
    int from = 0;
    if (declares) {
      tokens.add(new Token(words.get(0).span(), SemanticTokenTypes.Keyword));
      from = 1;
    } else if (words.get(0).is(WordKind.DATE)) {
      tokens.add(new Token(words.get(0).span(), SemanticTokenTypes.Event));
      List<Word> rest = words.subList(1, words.size());
      Optional<Clause> verb = rest.isEmpty() ? Optional.empty() : Clauses.dated(rest);
      from = 1 + head(rest, verb, SemanticTokenTypes.Function);
    } else {
      from = head(words, under.flatMap(d -> Clauses.of(d, words)), SemanticTokenTypes.Property);
    }
    words.subList(from, words.size()).forEach(this::word);
  }

  private int head(List<Word> words, Optional<Clause> clause, String type) {
    int size = clause.map(c -> c.words().size()).orElse(0);
    words.subList(0, size).forEach(w -> tokens.add(new Token(w.span(), type)));
    return size;
  }

  private void word(Word word) {
    if (names.contains(word.start())) {
      tokens.add(new Token(word.span(), SemanticTokenTypes.Variable));
      return;
    }
    switch (word.kind()) {
      case NUMBER, MIXED, DATE, PERCENT ->
          tokens.add(new Token(word.span(), SemanticTokenTypes.Number));
      case TEXT, OPEN_TEXT -> tokens.add(new Token(word.span(), SemanticTokenTypes.String));
      default -> {
        // Plain words and commas keep the editor's own colour.
      }
    }
  }

  private List<Integer> encoded() {
    tokens.sort(Comparator.comparing(Token::span));
    List<Integer> numbers = new ArrayList<>();
    int line = 0;
    int column = 0;
    for (Token token : tokens) {
      Position at = Where.position(token.span.source(), token.span.start());
      numbers.add(at.getLine() - line);
      numbers.add(at.getLine() == line ? at.getCharacter() - column : at.getCharacter());
      numbers.add(token.span.end() - token.span.start());
      numbers.add(TYPES.indexOf(token.type));
      numbers.add(0);
      line = at.getLine();
      column = at.getCharacter();
    }
    return numbers;
  }
}
