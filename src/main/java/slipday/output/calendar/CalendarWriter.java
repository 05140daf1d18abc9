package slipday.output.calendar;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Outcome;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreBook;
import slipday.source.Source;

/**
 * Writes chores as an iCalendar file (RFC 5545, with names of RFC 7986).
 *
 * <p>With an earlier file of the same garden and season, its entries are brought up to date: what
 * says the same stays byte for byte, what changed keeps its UID and gets the next SEQUENCE, what is
 * no longer to be done is cancelled once. Whatever else stands in that file is kept.
 */
public final class CalendarWriter {
  private final ChoreBook book;
  private final CalendarOptions options;
  private final Map<String, Part> earlier = new LinkedHashMap<>();
  private final StringBuilder out = new StringBuilder();

  private CalendarWriter(ChoreBook book, CalendarOptions options) {
    this.book = book;
    this.options = options;
  }

  /**
   * The file's text, to be written as UTF-8.
   *
   * @param earlier the file as it is now, where there is one
   * @return empty, with a finding, where the earlier file is broken or not a calendar of ours; then
   *     it must not be overwritten
   */
  public static Outcome<Optional<String>> write(
      ChoreBook book, Optional<Source> earlier, CalendarOptions options) {
    if (earlier.isEmpty()) {
      EarlierFile none = new EarlierFile(List.of(), List.of());
      return Outcome.of(Optional.of(new CalendarWriter(book, options).text(none)));
    }
    Outcome<Optional<EarlierFile>> read = EarlierFile.read(earlier.get());
    return new Outcome<>(
        read.value().map(file -> new CalendarWriter(book, options).text(file)), read.findings());
  }

  private String text(EarlierFile file) {
    Optional<List<String>> zone = Zone.lines(book.zone());
    ContentLines.fold("BEGIN:VCALENDAR", out);
    CalendarHeader.lines(book, file.header()).forEach(line -> ContentLines.fold(line, out));
    zone.ifPresent(lines -> lines.forEach(line -> ContentLines.fold(line, out)));
    file.parts().stream().filter(this::isOtherZone).forEach(p -> out.append(p.asWritten()));
    file.parts().stream().filter(this::isOurs).forEach(p -> earlier.put(uid(p), p));
    file.parts().stream().filter(this::isOurs).forEach(this::byDay);
    Entry entry = new Entry(book, options.tasks(), zone.isPresent());
    book.chores().forEach(chore -> chore(chore, entry));
    earlier.values().forEach(this::withdrawn);
    file.parts().stream()
        .filter(p -> !isOurs(p) && !p.name().equals("VTIMEZONE"))
        .forEach(p -> out.append(p.asWritten()));
    ContentLines.fold("END:VCALENDAR", out);
    return out.toString();
  }

  /** A round that bears a number is brought up to date as the one of its day. */
  private void byDay(Part before) {
    Update update = new Update(before);
    if (!update.isCancelled()) {
      update
          .firstDay(book.zone())
          .flatMap(day -> Uids.byDay(book, uid(before), day))
          .filter(uid -> !earlier.containsKey(uid))
          .ifPresent(uid -> earlier.put(uid, earlier.remove(uid(before))));
    }
  }

  private void chore(Chore chore, Entry entry) {
    List<String> lines = entry.first(chore);
    Optional<Part> before =
        Optional.ofNullable(earlier.remove(Uids.of(book, chore, options.tasks())));
    if (before.isEmpty()) {
      lines.forEach(line -> ContentLines.fold(line, out));
      return;
    }
    Update update = new Update(before.get());
    out.append(
        update.says(lines)
            ? before.get().asWritten()
            : update.rewritten(entry.changed(chore, update.sequence() + 1, options.stamp())));
  }

  private void withdrawn(Part before) {
    Update update = new Update(before);
    LocalDate today = options.stamp().atZone(book.zone()).toLocalDate();
    out.append(
        update.isSettled(today, book.zone())
            ? before.asWritten()
            : update.cancelled(options.stamp()));
  }

  private boolean isOurs(Part part) {
    return uid(part).startsWith(Uids.prefix(book));
  }

  private boolean isOtherZone(Part part) {
    return part.name().equals("VTIMEZONE")
        && !part.value("TZID").orElse("").equals(book.zone().getId());
  }

  private static String uid(Part part) {
    return part.value("UID").orElse("");
  }
}
