package slipday.output;

import slipday.finding.Level;

/**
 * Colour for a terminal, or none. It adds nothing: without it every word and every column is the
 * same.
 */
public final class Ink {
  private static final String END = "\u001b[0m";
  private static final Ink PLAIN = new Ink(false);
  private static final Ink COLOUR = new Ink(true);

  private final boolean colour;

  private Ink(boolean colour) {
    this.colour = colour;
  }

  public static Ink of(boolean colour) {
    return colour ? COLOUR : PLAIN;
  }

  String strong(String text) {
    return dyed("1", text);
  }

  String faint(String text) {
    return dyed("2", text);
  }

  String of(Level level, String text) {
    return dyed(
        switch (level) {
          case ERROR -> "1;31";
          case WARNING -> "1;33";
          case NOTE -> "1;36";
        },
        text);
  }

  private String dyed(String code, String text) {
    return colour && !text.isEmpty() ? "\u001b[" + code + "m" + text + END : text;
  }
}
