package slipday.output.calendar;

import java.util.List;
import java.util.Locale;

/** Content lines as RFC 5545, 3.1 has them. */
final class ContentLines {
  static final String END = "\r\n";

  private static final int OCTETS_AT_MOST = 75;

  private ContentLines() {}

  /** Appends a line, folded so that none has more than 75 octets, never inside a character. */
  static void fold(String line, StringBuilder out) {
    int octets = 0;
    for (int i = 0; i < line.length(); ) {
      int character = line.codePointAt(i);
      int size = octets(character);
      if (octets + size > OCTETS_AT_MOST) {
        out.append(END).append(' ');
        octets = 1;
      }
      out.appendCodePoint(character);
      octets += size;
      i += Character.charCount(character);
    }
    out.append(END);
  }

  static String folded(List<String> lines) {
    StringBuilder out = new StringBuilder();
    lines.forEach(line -> fold(line, out));
    return out.toString();
  }

  /** In UTF-8. */
  private static int octets(int character) {
    if (character < 0x80) {
      return 1;
    }
    if (character < 0x800) {
      return 2;
    }
    return character < 0x10000 ? 3 : 4;
  }

  /** The property's name in capitals: {@code DTSTART} of {@code DTSTART;VALUE=DATE:20260508}. */
  static String name(String line) {
    int end = 0;
    while (end < line.length() && line.charAt(end) != ':' && line.charAt(end) != ';') {
      end++;
    }
    return line.substring(0, end).toUpperCase(Locale.ROOT);
  }

  /** What follows the first colon that stands outside quotes; empty where there is none. */
  static String value(String line) {
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ':' && !quoted) {
        return line.substring(i + 1);
      }
    }
    return "";
  }

  static boolean isLine(String line) {
    String name = name(line);
    return !name.isEmpty()
        && name.length() < line.length()
        && name.chars().allMatch(c -> c == '-' || (c < 0x80 && Character.isLetterOrDigit(c)));
  }
}
