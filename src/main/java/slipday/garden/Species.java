package slipday.garden;

import slipday.source.Span;

/** A species, and what its crops share. */
public record Species(String name, String latin, Facts facts, Span span) implements Named {
  @Override
  public String toString() {
    return name;
  }
}
