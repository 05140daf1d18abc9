package slipday.output.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static slipday.output.calendar.Books.book;
import static slipday.output.calendar.Books.sow;
import static slipday.output.calendar.Books.update;
import static slipday.output.calendar.Books.write;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreBook;
import slipday.season.chore.ChoreKind;
import slipday.source.Source;

/** An earlier file brought up to date (RFC 5546 on SEQUENCE and STATUS). */
class CalendarUpdateTest {
  private static final String OWN_EVENT =
      "BEGIN:VEVENT\r\nUID:aunt-agda\r\nDTSTAMP:20260101T120000Z\r\n"
          + "DTSTART;TZID=Europe/Oslo;VALUE=DATE-TIME:20260612T120000\r\n"
          + "summary;LANGUAGE=nn:Tante Agda k\r\n jem\r\nX-CAKE:yes\r\nEND:VEVENT\r\n";
  private static final String OWN_ZONE =
      "BEGIN:VTIMEZONE\r\nTZID:Europe/Oslo\r\nBEGIN:STANDARD\r\nDTSTART:19961027T030000\r\n"
          + "TZOFFSETFROM:+0200\r\nTZOFFSETTO:+0100\r\nEND:STANDARD\r\nEND:VTIMEZONE\r\n";

  @Test
  void nothingChangedNothingChanges() {
    Chore[] chores = Books.hardTexts().toArray(Chore[]::new);
    String first = write(book(chores));
    assertThat(update(book(chores), first)).isEqualTo(first);
  }

  @Test
  void whatIsUnchangedStaysByteForByte() {
    String first = write(book(sow("a", 5, 1), sow("b", 5, 2), sow("c", 5, 3)));
    String later = update(book(sow("a", 5, 1), sow("b", 6, 2), sow("c", 5, 3)), first);
    assertThat(event(later, "a")).isEqualTo(event(first, "a"));
    assertThat(event(later, "c")).isEqualTo(event(first, "c"));
  }

  @Test
  void whatChangedKeepsItsUidAndIsStamped() {
    String first = write(book(sow("a", 5, 1)));
    String second = update(book(sow("a", 5, 8)), first);
    assertThat(event(second, "a"))
        .contains(
            "UID:slipday:2026:quince-end:a:sow\r\n",
            "SEQUENCE:1\r\n",
            "DTSTAMP:20260401T093000Z\r\n",
            "LAST-MODIFIED:20260401T093000Z\r\n",
            "DTSTART;VALUE=DATE:20260508\r\n");
    String third = update(book(sow("a", 5, 9)), second, Instant.parse("2026-04-02T00:00:00Z"));
    assertThat(event(third, "a")).contains("SEQUENCE:2\r\n", "DTSTAMP:20260402T000000Z\r\n");
    assertThat(update(book(sow("a", 5, 9)), third)).isEqualTo(third);
  }

  @Test
  void whatIsWithdrawnIsCancelledOnce() {
    String first = write(book(sow("a", 5, 1), sow("b", 5, 2)));
    String second = update(book(sow("a", 5, 1)), first);
    assertThat(event(second, "b"))
        .contains("SEQUENCE:1\r\n", "STATUS:CANCELLED\r\n", "DTSTAMP:20260401T093000Z\r\n")
        .contains("SUMMARY:Sow b\r\n", "DTSTART;VALUE=DATE:20260502\r\n")
        .doesNotContain("VALARM");
    assertThat(event(second, "a")).isEqualTo(event(first, "a"));
    assertThat(update(book(sow("a", 5, 1)), second, Instant.parse("2026-04-09T00:00:00Z")))
        .isEqualTo(second);
  }

  @Test
  void whatComesBackIsNoLongerCancelled() {
    String first = write(book(sow("a", 5, 1), sow("b", 5, 2)));
    String without = update(book(sow("a", 5, 1)), first);
    String back = update(book(sow("a", 5, 1), sow("b", 5, 2)), without);
    assertThat(event(back, "b"))
        .contains("SEQUENCE:2\r\n", "BEGIN:VALARM")
        .doesNotContain("STATUS");
  }

  @Test
  void whatIsOverIsNotCancelled() {
    String first = write(book(sow("a", 3, 31), sow("b", 4, 1)));
    String later = update(book(), first); // on 1 April
    assertThat(event(later, "a")).isEqualTo(event(first, "a"));
    assertThat(event(later, "b")).contains("STATUS:CANCELLED");
  }

  @Test
  void whatHasNoReadableDayIsCancelled() {
    String first = write(book(sow("a", 3, 1)));
    for (String day : List.of("20271399", "soon", "", "20260231T256199Z")) {
      String odd = first.replaceFirst("DTEND;VALUE=DATE:\\d+", "DTEND:" + day);
      assertThat(event(update(book(), odd), "a")).contains("STATUS:CANCELLED");
    }
  }

  /** In the clock of the garden: the last evening of March there is 1 April in UTC. */
  @Test
  void hoursInUtcAreOverByTheGardensClock() {
    String first = write(book(sow("a", 3, 1)));
    String evening = first.replaceFirst("DTEND;VALUE=DATE:\\d+", "DTEND:20260401T010000Z");
    assertThat(event(update(book(), evening), "a")).doesNotContain("CANCELLED");
    String nextDay = first.replaceFirst("DTEND;VALUE=DATE:\\d+", "DTEND:20260401T050000Z");
    assertThat(event(update(book(), nextDay), "a")).contains("CANCELLED");
  }

  @Test
  void whatIsNotOursIsKeptByteForByte() {
    String first = write(book(sow("a", 5, 1)));
    String mixed =
        first
            .replace("END:VCALENDAR\r\n", OWN_EVENT + "END:VCALENDAR\r\n")
            .replace("BEGIN:VTIMEZONE", OWN_ZONE + "BEGIN:VTIMEZONE")
            .replaceFirst("CALSCALE:", "X-SHED:green\r\nCALSCALE:");
    String later = update(book(sow("a", 5, 2)), mixed);
    assertThat(later).contains(OWN_EVENT, OWN_ZONE, "X-SHED:green\r\n", "SEQUENCE:1\r\n");
    assertThat(update(book(sow("a", 5, 2)), later)).isEqualTo(later);
  }

  @Test
  void anotherSeasonsEntriesAreKept() {
    String first = write(book(sow("a", 5, 1)));
    String earlierSeason = first.replace("slipday:2026:", "slipday:2025:");
    String later = update(book(sow("a", 5, 1)), earlierSeason);
    assertThat(later).contains("slipday:2025:quince-end:a:sow", "slipday:2026:quince-end:a:sow");
    assertThat(later).doesNotContain("CANCELLED");
  }

  @Test
  void whatAnotherProgramAddedIsKept() {
    String first = write(book(sow("a", 5, 1)));
    String done = first.replace("TRANSP:", "STATUS:CONFIRMED\r\nX-NOTE:pots washed\r\nTRANSP:");
    assertThat(update(book(sow("a", 5, 1)), done)).isEqualTo(done);
    assertThat(event(update(book(sow("a", 5, 2)), done), "a"))
        .contains("STATUS:CONFIRMED\r\n", "X-NOTE:pots washed\r\n", "SEQUENCE:1\r\n");
  }

  private static final String OWN_ALARM =
      "BEGIN:VALARM\r\nACTION:DISPLAY\r\nTRIGGER:-PT2H\r\nDESCRIPTION:Buy pots\r\nEND:VALARM\r\n";

  @Test
  void anAlarmOfTheGardenersOwnIsKept() {
    String first = write(book(sow("a", 5, 1)));
    String mine = first.replace("END:VEVENT", OWN_ALARM + "END:VEVENT");
    assertThat(update(book(sow("a", 5, 1)), mine)).isEqualTo(mine);
    String later = event(update(book(sow("a", 5, 2)), mine), "a");
    assertThat(later).contains("SEQUENCE:1\r\n", OWN_ALARM).containsOnlyOnce("TRIGGER:-PT2H");
    assertThat(later.split("BEGIN:VALARM", -1)).as("ours and theirs").hasSize(3);
  }

  @Test
  void anAlarmOfOursThatWasTakenOutStaysOut() {
    String first = write(book(sow("a", 5, 1)));
    String still = first.replaceAll("(?s)BEGIN:VALARM.*?END:VALARM\r\n", "");
    assertThat(update(book(sow("a", 5, 1)), still)).isEqualTo(still);
    assertThat(event(update(book(sow("a", 5, 2)), still), "a"))
        .contains("SEQUENCE:1\r\n")
        .doesNotContain("VALARM");
  }

  /** RFC 5545, 3.6.1: properties, then alarms. */
  @Test
  void whatWasAddedStandsBeforeTheAlarms() {
    String first = write(book(sow("a", 5, 1)));
    String done =
        first
            .replace("TRANSP:", "X-NOTE:pots washed\r\nTRANSP:")
            .replace("END:VEVENT", OWN_ALARM + "END:VEVENT");
    String later = event(update(book(sow("a", 5, 2)), done), "a");
    assertThat(later).contains("X-NOTE:pots washed\r\n", OWN_ALARM);
    assertThat(later.substring(later.indexOf("END:VALARM")))
        .matches("(?s)(END:VALARM\r\n(BEGIN:VALARM.*?(?=END:VALARM))?)+END:VEVENT\r\n");
  }

  private static Chore round(String key, int day) {
    Chore cover = Books.days(ChoreKind.COVER, "quince-end", "Cover tonight", "Bag 3.", 5, day);
    return new Chore(
        cover.kind(),
        cover.subject(),
        "round:cover:" + key,
        cover.title(),
        cover.time(),
        cover.description(),
        cover.cautions(),
        cover.reason());
  }

  /** An evening before it is added: the one that was done is the one that stays done. */
  @Test
  void aRoundThatIsDoneStaysDoneOnItsDay() {
    String first = write(book(round("2026-05-27", 27), round("2026-05-28", 28)));
    String done = first.replaceFirst("TRANSP:", "STATUS:COMPLETED\r\nTRANSP:");
    String later =
        update(
            book(round("2026-05-26", 26), round("2026-05-27", 27), round("2026-05-28", 28)), done);
    assertThat(event(later, "round:cover:2026-05-26")).doesNotContain("COMPLETED");
    assertThat(event(later, "round:cover:2026-05-27")).contains("COMPLETED");
    assertThat(event(later, "round:cover:2026-05-28")).doesNotContain("COMPLETED");
  }

  /** Files written when rounds bore numbers. */
  @Test
  void aRoundThatBearsANumberBecomesThatOfItsDay() {
    String first = write(book(round("1", 27), round("2", 28), round("10", 30)));
    String done = first.replaceFirst("TRANSP:", "STATUS:COMPLETED\r\nTRANSP:");
    ChoreBook now = book(round("2026-05-26", 26), round("2026-05-27", 27), round("2026-05-28", 28));
    String later = update(now, done);
    assertThat(event(later, "round:cover:2026-05-26")).doesNotContain("COMPLETED", "CANCELLED");
    assertThat(event(later, "round:cover:2026-05-27")).contains("COMPLETED", "SEQUENCE:1\r\n");
    assertThat(event(later, "round:cover:2026-05-28")).doesNotContain("COMPLETED", "CANCELLED");
    assertThat(event(later, "round:cover:10")).contains("CANCELLED");
    assertThat(later).doesNotContain("round:cover:1\r", "round:cover:2\r");
    assertThat(update(now, later)).isEqualTo(later);
  }

  /** Whoever changes to tasks gets tasks, and no events beside them. */
  @Test
  void eventsAreCancelledWhereTasksTakeTheirPlace() {
    String events = write(book(sow("a", 5, 1)));
    String tasks =
        CalendarWriter.write(
                book(sow("a", 5, 1)),
                Optional.of(Source.of("season.ics", events)),
                new CalendarOptions(true, Books.SPRING))
            .value()
            .orElseThrow();
    assertThat(tasks).contains("BEGIN:VTODO\r\nUID:slipday:2026:quince-end:a:sow:task\r\n");
    assertThat(event(tasks, "a")).contains("STATUS:CANCELLED");
  }

  @Test
  void aFileWithPlainLineEndsIsRead() {
    String first = write(book(sow("a", 5, 1), sow("b", 5, 2)));
    assertThat(update(book(sow("a", 5, 1), sow("b", 5, 2)), first.replace("\r\n", "\n")))
        .isEqualTo(first);
  }

  private static String event(String calendar, String subject) {
    Matcher events =
        Pattern.compile("BEGIN:VEVENT\r\n.*?END:VEVENT\r\n", Pattern.DOTALL).matcher(calendar);
    List<String> found = new ArrayList<>();
    while (events.find()) {
      if (events.group().matches("(?s).*UID:slipday:2026:quince-end:" + subject + "[:\r].*")) {
        found.add(events.group());
      }
    }
    assertThat(found).hasSize(1);
    return found.get(0);
  }
}
