package slipday.output.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.source.Span;

/**
 * One component of a calendar file.
 *
 * @param name {@code VEVENT}, {@code VTIMEZONE} …
 * @param lines its content lines unfolded, from BEGIN to END
 * @param own those of itself, without BEGIN and END and without the components within
 * @param span where it stands
 */
record Part(String name, List<String> lines, List<String> own, Span span) {
  Part {
    lines = List.copyOf(lines);
    own = List.copyOf(own);
  }

  static Part of(String name, List<String> lines, Span span) {
    return new Part(name, lines, own(lines), span);
  }

  /** As it stands in the file, its lines ended as RFC 5545 asks. */
  String asWritten() {
    return span.text().replace("\r\n", "\n").replace('\r', '\n').replace("\n", ContentLines.END);
  }

  /** The value of its own first property of a name; those of components within do not count. */
  Optional<String> value(String property) {
    return own.stream()
        .filter(line -> ContentLines.name(line).equals(property))
        .map(ContentLines::value)
        .findFirst();
  }

  private static List<String> own(List<String> lines) {
    List<String> own = new ArrayList<>();
    int depth = 0;
    for (String line : lines) {
      String name = ContentLines.name(line);
      if (name.equals("BEGIN")) {
        depth++;
      } else if (name.equals("END")) {
        depth--;
      } else if (depth == 1) {
        own.add(line);
      }
    }
    return own;
  }
}
