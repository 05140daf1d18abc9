package slipday.output.calendar;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.finding.Outcome;
import slipday.source.Source;
import slipday.source.Span;

/**
 * A calendar file written before.
 *
 * @param header content lines of the calendar itself
 * @param parts its components in their order
 */
record EarlierFile(List<String> header, List<Part> parts) {
  static final String BROKEN = "calendar-broken";
  static final String FOREIGN = "calendar-foreign";

  /** Reads a file; empty with a finding where it is broken or not one of ours. */
  static Outcome<Optional<EarlierFile>> read(Source source) {
    return new Reader(source).read();
  }

  private static final class Reader {
    private final Source source;
    private final List<Line> lines = new ArrayList<>();
    private final List<String> header = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();

    Reader(Source source) {
      this.source = source;
    }

    private record Line(String text, int start, int end) {}

    Outcome<Optional<EarlierFile>> read() {
      unfold();
      Optional<Finding> wrong = notACalendar().or(this::components).or(this::notOurs);
      return wrong
          .map(f -> new Outcome<Optional<EarlierFile>>(Optional.empty(), List.of(f)))
          .orElseGet(() -> Outcome.of(Optional.of(new EarlierFile(header, parts))));
    }

    private void unfold() {
      StringBuilder text = new StringBuilder();
      int start = -1;
      for (int n = 1; n <= source.lineCount(); n++) {
        String line = source.line(n);
        boolean continues = start >= 0 && !line.isEmpty() && " \t".indexOf(line.charAt(0)) >= 0;
        if (!continues && start >= 0) {
          lines.add(new Line(text.toString(), start, source.lineStart(n)));
          start = -1;
        }
        if (continues) {
          text.append(line, 1, line.length());
        } else if (!line.isBlank()) {
          start = source.lineStart(n);
          text.setLength(0);
          text.append(line);
        }
      }
      if (start >= 0) {
        lines.add(new Line(text.toString(), start, source.text().length()));
      }
    }

    private Optional<Finding> notACalendar() {
      boolean begins = !lines.isEmpty() && isMark(lines.get(0).text, "BEGIN", "VCALENDAR");
      return begins
          ? Optional.empty()
          : Optional.of(
              Finding.placeless(
                      FOREIGN, Level.ERROR, "`" + source.name() + "` is not a calendar file.")
                  .withHelp(
                      "It was left as it is. Name another file, or move this one out of the way."));
    }

    private Optional<Finding> components() {
      List<Integer> open = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        String text = lines.get(i).text;
        if (!ContentLines.isLine(text)) {
          return broken(i, "is no line of a calendar");
        }
        if (i > 0 && open.isEmpty()) {
          return broken(i, "stands after the calendar's end");
        }
        String name = ContentLines.name(text);
        if (name.equals("BEGIN")) {
          open.add(i);
        } else if (name.equals("END")) {
          int begin = open.remove(open.size() - 1);
          if (!kind(begin).equals(kind(i))) {
            return broken(i, "ends what was not begun");
          }
          if (open.size() == 1) {
            parts.add(part(begin, i));
          }
        } else if (open.size() == 1) {
          header.add(text);
        }
      }
      return open.isEmpty() ? sameTwice() : broken(open.get(open.size() - 1), "is never ended");
    }

    private Part part(int begin, int end) {
      List<String> texts = lines.subList(begin, end + 1).stream().map(Line::text).toList();
      return Part.of(kind(begin), texts, source.span(lines.get(begin).start, lines.get(end).end));
    }

    private String kind(int line) {
      return ContentLines.value(lines.get(line).text).strip().toUpperCase(Locale.ROOT);
    }

    private static boolean isMark(String text, String mark, String kind) {
      return ContentLines.name(text).equals(mark)
          && ContentLines.value(text).strip().equalsIgnoreCase(kind);
    }

    /** Of a chore there must be one entry, or nobody knows which to bring up to date. */
    private Optional<Finding> sameTwice() {
      Map<String, Part> seen = new LinkedHashMap<>();
      for (Part part : parts) {
        String uid = part.value("UID").orElse("");
        Part first = uid.startsWith(Uids.OURS) ? seen.putIfAbsent(uid, part) : null;
        if (first != null) {
          return Optional.of(
              error(part.span(), "`" + uid + "` stands twice in `" + source.name() + "`.")
                  .also(first.span(), "first here"));
        }
      }
      return Optional.empty();
    }

    private Optional<Finding> notOurs() {
      boolean ours =
          header.stream()
              .anyMatch(
                  line ->
                      ContentLines.name(line).equals("PRODID")
                          && ContentLines.value(line).equals(CalendarHeader.PRODUCT));
      return ours
          ? Optional.empty()
          : Optional.of(
              Finding.placeless(
                      FOREIGN,
                      Level.ERROR,
                      "The calendar `" + source.name() + "` was not written by Slipday.")
                  .withHelp(
                      "It was left as it is. Write to a file of its own and subscribe to that."));
    }

    private Optional<Finding> broken(int line, String how) {
      Span span = source.span(lines.get(line).start, lines.get(line).start);
      return Optional.of(
          error(
              span,
              "Line " + span.line() + " of the calendar `" + source.name() + "` " + how + "."));
    }

    private static Finding error(Span span, String message) {
      return Finding.error(BROKEN, span, message)
          .withHelp("The file was left as it is. Mend it, or move it out of the way.");
    }
  }
}
