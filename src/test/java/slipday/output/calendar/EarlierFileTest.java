package slipday.output.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.season.chore.ChoreBook;
import slipday.source.Source;

/** An earlier file that can't be brought up to date is told, and nothing is written. */
class EarlierFileTest {
  private static final ChoreBook BOOK = Books.book(Books.sow("a", 5, 1));
  private static final String SOUND = Books.write(BOOK);

  @Test
  void notACalendar() {
    assertThat(wrong("")).isEqualTo("`season.ics` is not a calendar file.");
    assertThat(wrong("Dear Agda,\nthe pots are washed.\n"))
        .isEqualTo("`season.ics` is not a calendar file.");
  }

  @Test
  void notOurCalendar() {
    assertThat(wrong(SOUND.replace("-//Slipday//", "-//Agda//")))
        .isEqualTo("The calendar `season.ics` was not written by Slipday.");
    assertThat(wrong("BEGIN:VCALENDAR\nVERSION:2.0\nEND:VCALENDAR\n"))
        .isEqualTo("The calendar `season.ics` was not written by Slipday.");
  }

  @Test
  void brokenCalendar() {
    assertThat(wrong(SOUND.replace("END:VEVENT\r\n", "")))
        .matches("Line \\d+ of the calendar `season.ics` ends what was not begun\\.");
    assertThat(wrong(SOUND.replace("END:VCALENDAR\r\n", "")))
        .isEqualTo("Line 1 of the calendar `season.ics` is never ended.");
    assertThat(wrong(SOUND + SOUND))
        .matches("Line \\d+ of the calendar `season.ics` stands after the calendar's end\\.");
    assertThat(wrong(SOUND.replace("VERSION:2.0", "<<<<<<< HEAD")))
        .isEqualTo("Line 2 of the calendar `season.ics` is no line of a calendar.");
  }

  @Test
  void oneChoreTwice() {
    String event = SOUND.substring(SOUND.indexOf("BEGIN:VEVENT"), SOUND.indexOf("END:VCALENDAR"));
    assertThat(wrong(SOUND.replace("END:VCALENDAR", event + "END:VCALENDAR")))
        .isEqualTo("`slipday:2026:quince-end:a:sow` stands twice in `season.ics`.");
  }

  /** Whatever is done to a file, it is updated or refused, never a fault of the program. */
  @Property
  void anyDamageIsUpdatedOrRefused(
      @ForAll @IntRange(max = 5000) int from,
      @ForAll @IntRange(max = 200) int length,
      @ForAll String instead) {
    int start = Math.min(from, SOUND.length());
    int end = Math.min(start + length, SOUND.length());
    String damaged = SOUND.substring(0, start) + instead + SOUND.substring(end);
    Outcome<Optional<String>> outcome = outcome(damaged);
    assertThat(outcome.value().isPresent()).isEqualTo(outcome.findings().isEmpty());
  }

  private static String wrong(String earlier) {
    Outcome<Optional<String>> outcome = outcome(earlier);
    assertThat(outcome.value()).isEmpty();
    assertThat(outcome.hasErrors()).isTrue();
    assertThat(outcome.findings()).hasSize(1).allMatch(f -> !f.help().isEmpty());
    return outcome.findings().stream().map(Finding::message).findFirst().orElseThrow();
  }

  private static Outcome<Optional<String>> outcome(String earlier) {
    return CalendarWriter.write(
        BOOK,
        Optional.of(Source.of("season.ics", earlier)),
        new CalendarOptions(false, Books.SPRING));
  }
}
