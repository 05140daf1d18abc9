package slipday.source;

/**
 * A place in a source: the characters from {@code start} up to but not including {@code end}. Lines
 * and columns are worked out only where a place is shown.
 */
public record Span(Source source, int start, int end) implements Comparable<Span>, Placed {
  public Span {
    if (start < 0 || end < start || end > source.text().length()) {
      throw new IllegalArgumentException(
          "span " + start + ".." + end + " outside a text of " + source.text().length());
    }
  }

  @Override
  public Span span() {
    return this;
  }

  public String text() {
    return source.text().substring(start, end);
  }

  /** The text with every run of blanks as one space, and none at its ends. */
  public String plainText() {
    StringBuilder plain = new StringBuilder(end - start);
    for (int i = start; i < end; i++) {
      char c = source.text().charAt(i);
      boolean blank = Character.isWhitespace(c);
      if (!blank) {
        plain.append(c);
      } else if (plain.length() > 0 && plain.charAt(plain.length() - 1) != ' ') {
        plain.append(' ');
      }
    }
    return plain.toString().stripTrailing();
  }

  /** 1-based line of the first character. */
  public int line() {
    return source.lineOf(start);
  }

  /** 1-based column of the first character, in code points. */
  public int column() {
    return source.columnOf(start);
  }

  public int endLine() {
    return source.lineOf(end);
  }

  /** 1-based column just past the last character, in code points. */
  public int endColumn() {
    return source.columnOf(end);
  }

  public Span to(Span last) {
    return new Span(source, start, Math.max(end, last.end));
  }

  /** {@code name:line:column}, as compilers and editors write a place. */
  public String label() {
    return source.name() + ":" + line() + ":" + column();
  }

  /** {@code name:line}: enough for a person. */
  public String lineLabel() {
    return source.name() + ":" + line();
  }

  @Override
  public int compareTo(Span other) {
    int byName = source.name().compareTo(other.source.name());
    if (byName != 0) {
      return byName;
    }
    return start != other.start
        ? Integer.compare(start, other.start)
        : Integer.compare(end, other.end);
  }

  @Override
  public String toString() {
    return label();
  }
}
