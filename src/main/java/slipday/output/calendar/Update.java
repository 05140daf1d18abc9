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
      Set.of("UID", "DTSTART", "DTEND", "DUE", "SUMMARY", "DESCRIPTION", "CATEGORIES", "TRANSP");
  private static final Set<String> MARKS = Set.of("DTSTAMP", "LAST-MODIFIED", "SEQUENCE");
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

  /**
   * Whether it says of itself what the new lines say, in whatever order and whatever else it says.
   * Alarms are the gardener's to change.
   */
  boolean says(List<String> lines) {
    return !isCancelled() && content(earlier.body().own()).equals(content(Body.of(lines).own()));
  }

  private static List<String> content(List<String> lines) {
    return lines.stream().filter(l -> CONTENT.contains(ContentLines.name(l))).sorted().toList();
  }

  /**
   * The new lines with what others have added since, such as that a task is done, or an alarm of
   * their own; without our alarm where they took it out. Properties come before alarms (RFC 5545,
   * 3.6).
   */
  String rewritten(List<String> lines) {
    Body now = Body.of(lines);
    List<String> all = new ArrayList<>();
    all.add(lines.get(0));
    all.addAll(now.own());
    for (String line : earlier.body().own()) {
      String name = ContentLines.name(line);
      boolean ours = CONTENT.contains(name) || MARKS.contains(name);
      if (!ours && !(name.equals("STATUS") && isCancelled())) {
        all.add(line);
      }
    }
    within(now.within()).forEach(all::addAll);
    all.add(lines.get(lines.size() - 1));
    return ContentLines.folded(all);
  }

  /**
   * The alarms there are to be: ours, if it still is there, or went when the entry was cancelled,
   * and whatever is not ours.
   */
  private List<List<String>> within(List<List<String>> ours) {
    List<List<String>> others = new ArrayList<>(earlier.body().within());
    List<List<String>> all = new ArrayList<>();
    for (List<String> alarm : ours) {
      boolean there = others.stream().anyMatch(other -> rings(other).equals(rings(alarm)));
      if (there || isCancelled()) {
        all.add(alarm);
      }
      others.removeIf(other -> rings(other).equals(rings(alarm)));
    }
    all.addAll(others);
    return all;
  }

  /** What kind of component it is, and when it rings in which way. */
  private static List<String> rings(List<String> component) {
    List<String> rings = new ArrayList<>();
    for (String name : List.of("BEGIN", "ACTION", "TRIGGER")) {
      component.stream()
          .filter(line -> ContentLines.name(line).equals(name))
          .map(line -> ContentLines.value(line).strip().toUpperCase(Locale.ROOT))
          .findFirst()
          .ifPresent(rings::add);
    }
    return rings;
  }

  /** Whether there is nothing left to cancel: cancelled before, done, or over. */
  boolean isSettled(LocalDate today, ZoneId zone) {
    return isCancelled() || isDone() || lastDay(zone).map(d -> d.isBefore(today)).orElse(false);
  }

  Optional<LocalDate> firstDay(ZoneId zone) {
    return earlier.value("DTSTART").or(() -> earlier.value("DUE")).flatMap(v -> day(v, zone));
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
    for (String line : earlier.body().own()) {
      String name = ContentLines.name(line);
      if (!MARKS.contains(name) && !name.equals("STATUS")) {
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
