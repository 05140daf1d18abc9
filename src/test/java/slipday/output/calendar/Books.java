package slipday.output.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import slipday.measure.Reason;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreBook;
import slipday.season.chore.ChoreKind;
import slipday.season.chore.ChoreTime;
import slipday.source.Source;

/** Chores made by hand, and calendars of them. */
final class Books {
  static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
  static final Instant SPRING = Instant.parse("2026-04-01T09:30:00Z");

  private Books() {}

  static ChoreBook book(Chore... chores) {
    return book(NEW_YORK, chores);
  }

  static ChoreBook book(ZoneId zone, Chore... chores) {
    return new ChoreBook(
        "2026", "quince-end", "Quince End", zone, LocalDate.of(2026, 1, 1), List.of(chores));
  }

  static Chore sow(String subject, int month, int day) {
    return days(ChoreKind.SOW, subject, "Sow " + subject, "Enough seed for 6 plants.", month, day);
  }

  static Chore days(ChoreKind kind, String subject, String title, String text, int month, int day) {
    return chore(kind, subject, title, text, ChoreTime.on(LocalDate.of(2026, month, day)));
  }

  static Chore cover(String subject, LocalDateTime from, LocalDateTime to) {
    return chore(
        ChoreKind.COVER, subject, "Cover " + subject, "Bag 3.", new ChoreTime.Hours(from, to));
  }

  static Chore chore(ChoreKind kind, String subject, String title, String text, ChoreTime time) {
    return new Chore(
        kind,
        subject,
        subject + ":" + kind.id(),
        title,
        time,
        List.of(text),
        List.of(),
        Reason.byDefault("made by hand"));
  }

  /** Texts that trip a careless writer or reader. */
  static List<Chore> hardTexts() {
    return List.of(
        hard(1, "Commas, semicolons; and \\backslashes\\ and more", "a,b;c\\d"),
        hard(2, "Two lines", "first\nsecond\n\nfourth, with ; and \\"),
        hard(3, "Grün und süß: Kürbisüberraschung \uD83C\uDF48\uD83C\uDF83", "ü".repeat(60)),
        hard(4, "\uD83C\uDF48".repeat(40), "y".repeat(500) + " \uD83C\uDF31 " + "ö".repeat(200)),
        hard(5, "inner   spaces \u00A0 kept", "colon: \"quoted\" = % ^n ^' <b>&amp;</b>"),
        hard(6, "a".repeat(67), "a".repeat(1000)),
        hard(7, "BEGIN:VEVENT", "END:VEVENT\nEND:VCALENDAR"));
  }

  /** A backslash before an n: no line end. Python's icalendar 4 reads one all the same. */
  static Chore backslashBeforeN() {
    return hard(8, "C:\\new\\notes", "\\n \\N \\\\n");
  }

  private static Chore hard(int n, String title, String text) {
    return days(ChoreKind.POT_ON, "hard-" + n, title, text, 5, n);
  }

  static String write(ChoreBook book) {
    return write(book, false);
  }

  static String write(ChoreBook book, boolean tasks) {
    return CalendarWriter.write(book, Optional.empty(), new CalendarOptions(tasks, SPRING))
        .value()
        .orElseThrow();
  }

  static String update(ChoreBook book, String earlier) {
    return update(book, earlier, SPRING);
  }

  static String update(ChoreBook book, String earlier, Instant stamp) {
    return CalendarWriter.write(
            book, Optional.of(Source.of("season.ics", earlier)), new CalendarOptions(false, stamp))
        .value()
        .orElseThrow();
  }
}
