package slipday.output.calendar;

import java.util.List;
import java.util.Optional;
import slipday.source.Span;

/**
 * One component of a calendar file.
 *
 * @param name {@code VEVENT}, {@code VTIMEZONE} …
 * @param lines its content lines unfolded, from BEGIN to END
 * @param body the same, parted into its own and those of the components within
 * @param span where it stands
 */
record Part(String name, List<String> lines, Body body, Span span) {
  Part {
    lines = List.copyOf(lines);
  }

  static Part of(String name, List<String> lines, Span span) {
    return new Part(name, lines, Body.of(lines), span);
  }

  /** As it stands in the file, its lines ended as RFC 5545 asks. */
  String asWritten() {
    return span.text().replace("\r\n", "\n").replace('\r', '\n').replace("\n", ContentLines.END);
  }

  /** The value of its own first property of a name; those of components within do not count. */
  Optional<String> value(String property) {
    return body.own().stream()
        .filter(line -> ContentLines.name(line).equals(property))
        .map(ContentLines::value)
        .findFirst();
  }
}
