package slipday.output.data;

/**
 * The first field of every document.
 *
 * @param format which document it is
 * @param version raised when a field changes its meaning or goes; a new field does not raise it
 */
public record Head(String format, int version) {
  static Head of(String format) {
    return new Head(format, 1);
  }
}
