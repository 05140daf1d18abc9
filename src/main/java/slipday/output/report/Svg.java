package slipday.output.report;

import java.util.ArrayDeque;
import java.util.Deque;
import slipday.output.Lines;

/**
 * Writes a drawing, element by element. Texts and attributes are escaped here and nowhere else, so
 * that a name is never markup.
 */
final class Svg {
  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Begins an element.
   *
   * @param attributes names and values in turn; numbers are written to two decimals
   */
  Svg open(String name, Object... attributes) {
    tag(name, attributes);
    out.append('>');
    open.push(name);
    return this;
  }

  /** An element with nothing in it. */
  Svg leaf(String name, Object... attributes) {
    tag(name, attributes);
    out.append("/>");
    return this;
  }

  Svg text(String text) {
    escape(Lines.clean(text));
    return this;
  }

  Svg close() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** A drawing made before, put in as it is. */
  Svg add(Svg other) {
    out.append(other);
    return this;
  }

  private void tag(String name, Object... attributes) {
    out.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      Object value = attributes[i + 1];
      escape(value instanceof Double d ? number(d) : Lines.clean(String.valueOf(value)));
      out.append('"');
    }
  }

  private void escape(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '&' -> out.append("&amp;");
        case '"' -> out.append("&quot;");
        case '\'' -> out.append("&#39;");
        default -> out.append(c);
      }
    }
  }

  /** At most two decimals, no exponent, no needless zeros. */
  static String number(double value) {
    long hundredths = Math.round(value * 100);
    String sign = hundredths < 0 ? "-" : "";
    long whole = Math.abs(hundredths) / 100;
    long rest = Math.abs(hundredths) % 100;
    if (rest == 0) {
      return sign + whole;
    }
    String digits = rest < 10 ? "0" + rest : rest % 10 == 0 ? "" + rest / 10 : "" + rest;
    return sign + whole + "." + digits;
  }

  static String percent(double share) {
    return number(share * 100) + "%";
  }

  /** The drawing. */
  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("`" + open.peek() + "` was never closed");
    }
    return out.toString();
  }
}
