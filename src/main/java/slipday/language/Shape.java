package slipday.language;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import slipday.source.Span;
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
  private @Nullable Parts read;

  private Shape(String notation) {
    this.notation = notation;
  }

  public static Shape of(String notation) {
    return new Shape(notation);
  }

  /**
   * @param literals every word that stands for itself
   */
  private record Parts(Part whole, Set<String> literals) {}

  /** The notation is read when it is first asked for: a plan uses some of the table's clauses. */
  private Parts parts() {
    Parts parts = read;
    if (parts == null) {
      ShapeReader reader = new ShapeReader(notation);
      Part whole = reader.read();
      parts = new Parts(whole, Set.copyOf(reader.literals()));
      read = parts;
    }
    return parts;
  }

  public String notation() {
    return notation;
  }

  /** Matches the words from an index to their end, and finds out why where they do not fit. */
  public Match match(List<Word> words, int from) {
    Bound bound = bind(words, from);
    return bound == null
        ? new Match(Optional.empty(), Optional.of(why(words, from)))
        : new Match(Optional.of(bound), Optional.empty());
  }

  /**
   * The values in the words from an index to their end; null where they do not fit. A line without
   * a mistake costs no more than that.
   */
  @Nullable Bound bind(List<Word> words, int from) {
    Attempt attempt = new Attempt(words, this, false);
    return parts().whole().match(attempt, from) == words.size() ? attempt.bound : null;
  }

  /** Why words do not fit. */
  Failure why(List<Word> words, int from) {
    Attempt explaining = new Attempt(words, this, true);
    int end = parts().whole().match(explaining, from);
    if (end >= 0) {
      explaining.expect(end, "the end of the line");
    }
    return explaining.failure();
  }

  /**
   * What can stand after words that are right as far as they go.
   *
   * @param from index of the first word that belongs to this shape
   */
  public Next next(List<Word> words, int from) {
    Attempt attempt = new Attempt(words, this, true);
    parts().whole().match(attempt, from);
    Failure failure = attempt.failure();
    return failure.at() == words.size() ? Next.of(failure.expected()) : Next.NONE;
  }

  /** The kind of value each placeholder takes, by its name. */
  public Map<String, Kind> kinds() {
    Map<String, Kind> kinds = new HashMap<>();
    parts().whole().kinds(kinds);
    return kinds;
  }

  /**
   * What can stand at a place.
   *
   * @param words that stand for themselves, a comma and {@code %} among them
   * @param kinds of values
   */
  public record Next(List<String> words, List<Kind> kinds) {
    static final Next NONE = new Next(List.of(), List.of());

    private static Next of(List<String> expected) {
      List<String> words = new ArrayList<>();
      List<Kind> kinds = new ArrayList<>();
      for (String what : expected) {
        Optional<Kind> kind = Kind.expectedAs(what);
        kind.ifPresent(kinds::add);
        if (kind.isEmpty()) {
          words.add(what.equals("a comma") ? "," : what.replace("`", ""));
        }
      }
      return new Next(words, kinds);
    }
  }

  /** Whether a name comes first, of whatever is declared elsewhere. */
  boolean beginsWithName() {
    int end = notation.indexOf('>');
    return notation.startsWith("<") && Kind.named(kindIn(notation.substring(1, end))).isReference();
  }

  private static String kindIn(String placeholder) {
    int colon = placeholder.indexOf(':');
    return colon < 0 ? placeholder : placeholder.substring(0, colon);
  }

  /** Whether a word stands for itself somewhere in this shape. */
  boolean hasLiteral(String word) {
    return parts().literals().contains(word.toLowerCase(Locale.ROOT));
  }

  /** What came of matching: the values, or the failure that got furthest. */
  public record Match(Optional<Bound> bound, Optional<Failure> failure) {}

  /**
   * @param at index of the word where it went wrong; the number of words at the line's end
   * @param expected what could have stood there
   * @param mistake a message of its own, where the mistake is a known one
   */
  public record Failure(int at, List<String> expected, Optional<Mistake> mistake) {}

  /**
   * A known mistake: what it is, and what to write instead.
   *
   * @param back how many words before the failure the mark belongs
   * @param instead texts that would stand well in the marked place; may be empty
   */
  public record Mistake(String rule, String message, String help, int back, List<String> instead) {
    Mistake(String rule, String message, String help) {
      this(rule, message, help, 0, List.of());
    }

    Mistake(String rule, String message, String help, int back) {
      this(rule, message, help, back, List.of());
    }

    Mistake instead(List<String> texts) {
      return new Mistake(rule, message, help, back, texts);
    }
  }

  /** The state of one match: values so far, and the furthest failure where that is wanted. */
  static final class Attempt {
    final List<Word> words;
    final Bound bound = new Bound();
    private final Shape shape;
    private final boolean explaining;
    private int furthest = -1;
    private final List<String> expected;
    private Optional<Mistake> mistake = Optional.empty();

    Attempt(List<Word> words, Shape shape, boolean explaining) {
      this.words = words;
      this.shape = shape;
      this.explaining = explaining;
      this.expected = explaining ? new ArrayList<>() : List.of();
    }

    boolean is(int at, WordKind kind) {
      return at < words.size() && words.get(at).kind() == kind;
    }

    boolean isWord(int at, String word) {
      return at < words.size() && words.get(at).isWord(word);
    }

    /** The text of a word; empty past the end of the line. */
    String text(int at) {
      return at < words.size() ? words.get(at).text() : "";
    }

    boolean hasLiteral(int at) {
      return shape.hasLiteral(text(at));
    }

    Span span(int from, int to) {
      Word first = words.get(from);
      return new Span(first.source(), first.start(), words.get(to - 1).end());
    }

    int expect(int at, String what) {
      if (!explaining) {
        return -1;
      }
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

    int mistaken(int at, Supplier<Mistake> known, String what) {
      expect(at, what);
      if (explaining && at == furthest && mistake.isEmpty()) {
        mistake = Optional.of(known.get());
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

    /** Adds the kinds of the placeholders in it. */
    void kinds(Map<String, Kind> kinds);
  }

  record Literal(String word, String shown) implements Part {
    Literal(String word) {
      this(word, word.equals(",") ? "a comma" : "`" + word + "`");
    }

    @Override
    public void kinds(Map<String, Kind> kinds) {
      // A word that stands for itself takes no value.
    }

    @Override
    public int match(Attempt attempt, int at) {
      boolean fits =
          switch (word) {
            case "," -> attempt.is(at, WordKind.COMMA);
            case "%" -> attempt.is(at, WordKind.PERCENT);
            default -> attempt.isWord(at, word) || isOne(attempt, at);
          };
      return fits ? at + 1 : attempt.expect(at, shown);
    }

    /** {@code 1 fruit}, where the shape has {@code fruits}. */
    private boolean isOne(Attempt attempt, int at) {
      return at > 0
          && word.endsWith("s")
          && attempt.text(at - 1).equals("1")
          && attempt.isWord(at, word.substring(0, word.length() - 1));
    }
  }

  record Placeholder(Kind kind, String name) implements Part {
    @Override
    public void kinds(Map<String, Kind> kinds) {
      kinds.put(name, kind);
    }

    @Override
    public int match(Attempt attempt, int at) {
      return ValueReader.read(kind, name, attempt, at);
    }
  }

  record Sequence(List<Part> parts) implements Part {
    @Override
    public void kinds(Map<String, Kind> kinds) {
      parts.forEach(p -> p.kinds(kinds));
    }

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
    public void kinds(Map<String, Kind> kinds) {
      part.kinds(kinds);
    }

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
    public void kinds(Map<String, Kind> kinds) {
      part.kinds(kinds);
    }

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
    public void kinds(Map<String, Kind> kinds) {
      parts.forEach(p -> p.kinds(kinds));
    }

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
        Span span = attempt.span(at, bestEnd);
        attempt.bound.add(name, new Value.Choice(phrases.get(best), span));
      }
      return parts.get(best).match(attempt, at);
    }
  }
}
