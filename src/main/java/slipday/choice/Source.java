package slipday.choice;

/** How the heritability of a trait is known. */
public enum Source {
  /** The plan states it. */
  STATED,
  /** Estimated from the record. */
  ESTIMATED,
  /** Not known: the ranks are told for several. */
  ASSUMED,
  /** Nothing can be valued. */
  NONE
}
