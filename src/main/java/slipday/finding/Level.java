package slipday.finding;

import java.util.Locale;

/** How much a finding matters. Declared from the least to the most. */
public enum Level {
  NOTE,
  WARNING,
  ERROR;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
