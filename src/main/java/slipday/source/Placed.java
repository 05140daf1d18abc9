package slipday.source;

/** What stands somewhere in a text, its place worked out when it is asked for. */
public interface Placed {
  Span span();
}
