package slipday.garden;

import slipday.source.Span;

/** A thing of the garden that has a name and stands somewhere in a file. */
public interface Named {
  String name();

  /** The line that declares it. */
  Span span();
}
