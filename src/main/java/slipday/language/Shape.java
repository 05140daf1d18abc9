package slipday.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/**
 * The shape of a clause's value, as data.
 *
 * <p>Notation: a bare word or comma stands for itself; {@code <kind>} or {@code <kind:name>} takes
 * a value; {@code [ … ]} may be left out; {@code { … }} may come any number of times; {@code ( a |
 * b )} is one of several; {@code (name: a | b)} is one of several phrases, kept under that name.
 */
public final class Shape {
  private final String notation;
  private final Part whole;

  private Shape(String notation, Part whole) {
    this.notation = notation;
    this.whole = whole;
  }

  public static Shape of(String notation) {
    return new Shape(notation, new ShapeReader(notation).read());
  }

  public String notation() {
    return notation;
  }

  /** Matches the words from an index to their end. */
  public Match match(List<Word> words, int from) {
    Attempt attempt = new Attempt(words);
    int end = whole.match(attempt, from);
    if (end == words.size()) {
      return new Match(Optional.of(attempt.bound), Optional.empty());
    }
    if (end >= 0) {
      attempt.expect(end, "the end of the line");
    }
    return new Match(Optional.empty(), Optional.of(attempt.failure()));
  }

  /** What came of matching: the values, or the failure that got furthest. */
  public record Match(Optional<Bound> bound, Optional<Failure> failure) {}

  /**
   * @param at index of the word where it went wrong; the number of words at the line's end
   * @param expected what could have stood there
   * @param mistake a message of its own, where the mistake is a known one
   */
  public record Failure(int at, List<String> expected, Optional<Mistake> mistake) {}

  /** A known mistake: what it is, and what to write instead. */
  public record Mistake(String rule, String message, String help) {}

  /** The state of one match: values so far, and the furthest failure. */
  static final class Attempt {
    final List<Word> words;
    final Bound bound = new Bound();
    private int furthest = -1;
    private final List<String> expected = new ArrayList<>(2);
    private Optional<Mistake> mistake = Optional.empty();

    Attempt(List<Word> words) {
      this.words = words;
    }

    Optional<Word> word(int at) {
      return at < words.size() ? Optional.of(words.get(at)) : Optional.empty();
    }

    int expect(int at, String what) {
      if (at > furthest) {
        furthest = at;
        expected.clear();
        mistake = Optional.empty();
      }
      if (at == furthest && !expected.contains(what)) {
        expected.add(what);
      }
      return -1;
    }

    int mistaken(int at, Mistake known, String what) {
      expect(at, what);
      if (at == furthest && mistake.isEmpty()) {
        mistake = Optional.of(known);
      }
      return -1;
    }

    Failure failure() {
      return new Failure(Math.max(furthest, 0), List.copyOf(expected), mistake);
    }
  }

  /** A piece of a shape. {@code match} gives the index after it, or -1. */
  sealed interface Part {
    int match(Attempt attempt, int at);
  }

  record Literal(String word) implements Part {
    @Override
    public int match(Attempt attempt, int at) {
      boolean fits = attempt.word(at).filter(this::fits).isPresent();
      return fits ? at + 1 : attempt.expect(at, word.equals(",") ? "a comma" : "`" + word + "`");
    }

    private boolean fits(Word w) {
      return switch (word) {
        case "," -> w.is(WordKind.COMMA);
        case "%" -> w.is(WordKind.PERCENT);
        default -> w.isWord(word);
      };
    }
  }

  record Placeholder(Kind kind, String name) implements Part {
    @Override
    public int match(Attempt attempt, int at) {
      return ValueReader.read(kind, name, attempt, at);
    }
  }

  record Sequence(List<Part> parts) implements Part {
    @Override
    public int match(Attempt attempt, int from) {
      int at = from;
      for (Part part : parts) {
        at = part.match(attempt, at);
        if (at < 0) {
          return -1;
        }
      }
      return at;
    }
  }

  record Maybe(Part part) implements Part {
    @Override
    public int match(Attempt attempt, int at) {
      int before = attempt.bound.size();
      int end = part.match(attempt, at);
      if (end < 0) {
        attempt.bound.shrinkTo(before);
        return at;
      }
      return end;
    }
  }

  record Repeated(Part part) implements Part {
    @Override
    public int match(Attempt attempt, int from) {
      int at = from;
      while (true) {
        int before = attempt.bound.size();
        int end = part.match(attempt, at);
        if (end <= at) {
          attempt.bound.shrinkTo(before);
          return at;
        }
        at = end;
      }
    }
  }

  /** One of several; the one that takes most words wins. */
  record OneOf(String name, List<String> phrases, List<Part> parts) implements Part {
    @Override
    public int match(Attempt attempt, int at) {
      int before = attempt.bound.size();
      int best = -1;
      int bestEnd = -1;
      for (int i = 0; i < parts.size(); i++) {
        int end = parts.get(i).match(attempt, at);
        attempt.bound.shrinkTo(before);
        if (end > bestEnd) {
          best = i;
          bestEnd = end;
        }
      }
      if (best < 0) {
        return -1;
      }
      if (!name.isEmpty() && bestEnd > at) {
        var first = attempt.words.get(at);
        var last = attempt.words.get(bestEnd - 1);
        attempt.bound.add(name, new Value.Choice(phrases.get(best), first.span().to(last.span())));
      }
      return parts.get(best).match(attempt, at);
    }
  }
}
