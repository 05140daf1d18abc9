package slipday.syntax;

/** What a word of a line looks like; what it means is decided by the clause it stands in. */
public enum WordKind {
  WORD,
  /**
   * Starts with a digit and is no number: {@code 3A}, {@code 12m}, {@code 2026-27}, {@code 3-5}.
   */
  MIXED,
  NUMBER,
  DATE,
  TEXT,
  /** A text whose closing quote is missing. */
  OPEN_TEXT,
  COMMA,
  PERCENT,
  /** A character the language has no use for, or the whole of a line too long to be one. */
  OTHER
}
