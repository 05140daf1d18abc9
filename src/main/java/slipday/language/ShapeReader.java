package slipday.language;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Reads the notation of {@link Shape}. A wrong notation is a fault of the program. */
final class ShapeReader {
  /** Characters that stand alone, whatever is beside them. */
  private static final String ALONE = "[](){}|,%";

  private static final String ENDS = ALONE + " <";

  private final String notation;
  private final List<String> pieces = new ArrayList<>();
  private final Set<String> literals = new HashSet<>();
  private int at;

  ShapeReader(String notation) {
    this.notation = notation;
    int start = 0;
    while (start < notation.length()) {
      int end = endOfPiece(start);
      if (notation.charAt(start) != ' ') {
        pieces.add(notation.substring(start, end));
      }
      start = end;
    }
  }

  private int endOfPiece(int start) {
    char first = notation.charAt(start);
    if (first == '<') {
      return notation.indexOf('>', start) + 1;
    }
    int end = start + 1;
    if (first != ' ' && ALONE.indexOf(first) < 0) {
      while (end < notation.length() && ENDS.indexOf(notation.charAt(end)) < 0) {
        end++;
      }
    }
    return end;
  }

  Shape.Part read() {
    Shape.Part part = sequence();
    if (at != pieces.size()) {
      throw fault();
    }
    return part;
  }

  /** Every word that stands for itself. */
  Set<String> literals() {
    return literals;
  }

  private Shape.Part sequence() {
    List<Shape.Part> parts = new ArrayList<>();
    while (at < pieces.size() && !"])}|".contains(pieces.get(at))) {
      parts.add(part(pieces.get(at++)));
    }
    return parts.size() == 1 ? parts.get(0) : new Shape.Sequence(parts);
  }

  private Shape.Part part(String piece) {
    return switch (piece) {
      case "[" -> new Shape.Maybe(closed("]"));
      case "{" -> new Shape.Repeated(closed("}"));
      case "(" -> oneOf();
      default -> piece.startsWith("<") ? placeholder(piece) : literal(piece);
    };
  }

  private Shape.Part literal(String piece) {
    literals.add(piece.toLowerCase(Locale.ROOT));
    return new Shape.Literal(piece);
  }

  private Shape.Part closed(String end) {
    Shape.Part part = sequence();
    expect(end);
    return part;
  }

  private Shape.Part oneOf() {
    String name = "";
    if (pieces.get(at).endsWith(":")) {
      name = pieces.get(at).substring(0, pieces.get(at).length() - 1);
      at++;
    }
    List<String> phrases = new ArrayList<>();
    List<Shape.Part> parts = new ArrayList<>();
    do {
      int start = at;
      parts.add(sequence());
      phrases.add(leadingWords(start, at));
    } while (at < pieces.size() && pieces.get(at).equals("|") && ++at > 0);
    expect(")");
    return new Shape.OneOf(name, phrases, parts);
  }

  /** The fixed words a phrase begins with: what the choice is known by. */
  private String leadingWords(int from, int to) {
    List<String> words = new ArrayList<>();
    for (int i = from; i < to && Character.isLetter(pieces.get(i).charAt(0)); i++) {
      words.add(pieces.get(i));
    }
    return String.join(" ", words);
  }

  private static Shape.Part placeholder(String piece) {
    String inside = piece.substring(1, piece.length() - 1);
    int colon = inside.indexOf(':');
    String kind = colon < 0 ? inside : inside.substring(0, colon);
    return new Shape.Placeholder(
        Kind.named(kind), colon < 0 ? inside : inside.substring(colon + 1));
  }

  private void expect(String piece) {
    if (at >= pieces.size() || !pieces.get(at).equals(piece)) {
      throw fault();
    }
    at++;
  }

  private IllegalArgumentException fault() {
    return new IllegalArgumentException("wrong shape notation at piece " + at + ": " + notation);
  }
}
