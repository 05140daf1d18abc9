package slipday.output.calendar;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.LastModified;

/** An entry of an earlier file beside what it should be now (RFC 5546 on SEQUENCE and STATUS). */
final class Update {
  private static final Set<String> CONTENT =
      Set.of(
          "DTSTART",
          "DTEND",
          "DUE",
          "SUMMARY",
          "DESCRIPTION",
          "CATEGORIES",
          "TRANSP",
          "ACTION",
          "TRIGGER");
  private static final Set<String> MARKS = Set.of("UID", "DTSTAMP", "LAST-MODIFIED", "SEQUENCE");
  private static final String CANCELLED = "CANCELLED";
  private static final DateTimeFormatter UTC =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmssX", Locale.ROOT);
  private static final int DATE_DIGITS = 8;

  private final Part earlier;

  Update(Part earlier) {
    this.earlier = earlier;
  }

  int sequence() {
    String written = earlier.value("SEQUENCE").orElse("0").strip();
    return written.matches("[0-9]{1,9}") ? Integer.parseInt(written) : 0;
  }

  boolean isCancelled() {
    return CANCELLED.equalsIgnoreCase(earlier.value("STATUS").orElse("").strip());
  }

  private boolean isDone() {
    return "COMPLETED".equalsIgnoreCase(earlier.value("STATUS").orElse("").strip());
  }

  /** Whether it says what the new lines say, in whatever order and whatever else it says. */
  boolean says(List<String> lines) {
    return !isCancelled() && content(earlier.lines()).equals(content(lines));
  }

  private static List<String> content(List<String> lines) {
    return lines.stream().filter(l -> CONTENT.contains(ContentLines.name(l))).sorted().toList();
  }

  /** The new lines with what others have added since, such as that a task is done. */
  String rewritten(List<String> lines) {
    List<String> all = new ArrayList<>(lines.subList(0, lines.size() - 1));
    for (String line : earlier.own()) {
      String name = ContentLines.name(line);
      boolean ours = CONTENT.contains(name) || MARKS.contains(name);
      if (!ours && !(name.equals("STATUS") && isCancelled())) {
        all.add(line);
      }
    }
    all.add(lines.get(lines.size() - 1));
    return ContentLines.folded(all);
  }

  /** Whether there is nothing left to cancel: cancelled before, done, or over. */
  boolean isSettled(LocalDate today, ZoneId zone) {
    return isCancelled() || isDone() || lastDay(zone).map(d -> d.isBefore(today)).orElse(false);
  }

  private Optional<LocalDate> lastDay(ZoneId zone) {
    Optional<String> end = earlier.value("DTEND").or(() -> earlier.value("DUE"));
    Optional<LocalDate> day = end.or(() -> earlier.value("DTSTART")).flatMap(v -> day(v, zone));
    boolean excluded = earlier.value("DTEND").map(v -> v.length() == DATE_DIGITS).orElse(false);
    return excluded ? day.map(d -> d.minusDays(1)) : day;
  }

  private static Optional<LocalDate> day(String value, ZoneId zone) {
    try {
      if (value.endsWith("Z")) {
        return Optional.of(UTC.parse(value, Instant::from).atZone(zone).toLocalDate());
      }
      String date = value.substring(0, Math.min(DATE_DIGITS, value.length()));
      return Optional.of(LocalDate.parse(date, DateTimeFormatter.BASIC_ISO_DATE));
    } catch (DateTimeException e) {
      return Optional.empty(); // no day a calendar could tell
    }
  }

  /** Cancelled: as it was, but for its marks, its status and its alarm, which must not ring. */
  String cancelled(Instant stamp) {
    List<String> lines = new ArrayList<>();
    lines.add("BEGIN:" + earlier.name());
    for (String line : earlier.own()) {
      String name = ContentLines.name(line);
      if (name.equals("UID") || !(MARKS.contains(name) || name.equals("STATUS"))) {
        lines.add(line);
      }
    }
    lines.add(new DtStamp(stamp).toString().strip());
    lines.add(new LastModified(stamp).toString().strip());
    lines.add("SEQUENCE:" + (sequence() + 1));
    lines.add("STATUS:" + CANCELLED);
    lines.add("END:" + earlier.name());
    return ContentLines.folded(lines);
  }
}
