package slipday.garden;

import slipday.source.Span;

/**
 * A word for a crop besides its name.
 *
 * @param alone whether it means no other crop anywhere, and so is taken for the name
 * @param where some call it so, as it follows {@code in}; empty where that is not told
 * @param span the line that says so
 */
public record OtherName(String word, boolean alone, String where, Span span) {}
