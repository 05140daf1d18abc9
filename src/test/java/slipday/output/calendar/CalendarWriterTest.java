package slipday.output.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static slipday.output.calendar.Books.book;
import static slipday.output.calendar.Books.write;

import java.io.IOException;
import java.io.StringReader;
import java.net.Proxy;
import java.net.ProxySelector;
import java.net.SocketAddress;
import java.net.URI;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VToDo;
import net.fortuna.ical4j.model.property.DateProperty;
import org.junit.jupiter.api.Test;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreKind;
import slipday.season.chore.ChoreTime;

/** What is written, read back with ical4j; the rules are of RFC 5545 where nothing else is said. */
class CalendarWriterTest {
  private static final LocalDateTime DUSK = LocalDateTime.of(2026, 7, 6, 20, 35);

  @Test
  void textsComeBackAsTheyWere() {
    List<Chore> hard = new ArrayList<>(Books.hardTexts());
    hard.add(Books.backslashBeforeN());
    Calendar calendar = read(write(book(hard.toArray(Chore[]::new))));
    List<VEvent> events = calendar.getComponents(Component.VEVENT);
    assertThat(events)
        .extracting(e -> text(e, Property.SUMMARY))
        .containsExactlyElementsOf(hard.stream().map(Chore::title).toList());
    assertThat(events)
        .extracting(e -> text(e, Property.DESCRIPTION))
        .containsExactlyElementsOf(hard.stream().map(c -> c.description().get(0)).toList());
  }

  /** RFC 5545, 3.3.11: backslash, semicolon, comma and line end are escaped. */
  @Test
  void textIsEscaped() {
    Chore chore = Books.days(ChoreKind.SOW, "x", "a,b;c\\d:e\"f", "one\ntwo", 5, 1);
    assertThat(write(book(chore)))
        .contains("SUMMARY:a\\,b\\;c\\\\d:e\"f\r\n")
        .contains("DESCRIPTION:one\\ntwo\r\n");
  }

  @Test
  void controlCharactersAndOuterSpacesAreLeftOut() {
    Chore chore = Books.days(ChoreKind.SOW, "x", " a\u0007b\tc ", "one\r\ntwo", 5, 1);
    assertThat(write(book(chore)))
        .contains("SUMMARY:a b c\r\n")
        .contains("DESCRIPTION:one\\ntwo\r");
  }

  /** RFC 5545, 3.6.1: the end of an all-day event is the day after its last. */
  @Test
  void theEndOfWholeDaysIsTheDayAfter() {
    Chore chore =
        Books.chore(
            ChoreKind.HARDEN_OFF,
            "x",
            "Harden off",
            "text",
            new ChoreTime.Days(LocalDate.of(2026, 5, 21), LocalDate.of(2026, 5, 31)));
    assertThat(write(book(chore)))
        .contains("DTSTART;VALUE=DATE:20260521\r\nDTEND;VALUE=DATE:20260601\r\n");
  }

  @Test
  void hoursAreByTheClockOfTheZoneWhoseRulesStandInTheFile() {
    String text = write(book(Books.cover("x", DUSK, DUSK.plusMinutes(35))));
    assertThat(text)
        .contains("DTSTART;TZID=America/New_York:20260706T203500\r\n")
        .contains("DTEND;TZID=America/New_York:20260706T211000\r\n");
    VEvent event = event(text);
    assertThat(instant(event, Property.DTSTART)).isEqualTo("2026-07-07T00:35:00Z");
    Calendar calendar = read(text);
    assertThat(calendar.getComponents(Component.VTIMEZONE)).hasSize(1);
    assertThat(text.indexOf("TZID:America/New_York")).isLessThan(text.indexOf("BEGIN:VEVENT"));
    assertThat(text).doesNotContain("http");
  }

  /** The clocks of New York go forward on 14 March 2027. */
  @Test
  void theDaysBeforeTheClocksGoForwardKeepTheirHour() {
    for (int day = 7; day <= 20; day++) {
      LocalDateTime time = LocalDateTime.of(2027, 3, day, 20, 35);
      assertThat(write(book(Books.cover("x", time, time.plusHours(1)))))
          .contains("DTSTART;TZID=America/New_York:202703%02dT203500\r\n".formatted(day));
    }
  }

  @Test
  void aZoneUnderAnotherNameKeepsTheNameOfThePlan() {
    String text =
        write(book(ZoneId.of("US/Eastern"), Books.cover("x", DUSK, DUSK.plusMinutes(35))));
    assertThat(text).contains("TZID:US/Eastern\r\n").contains("DTSTART;TZID=US/Eastern:");
  }

  @Test
  void hoursInAZoneWithoutANameAreInUtc() {
    String text = write(book(ZoneId.of("-04:00"), Books.cover("x", DUSK, DUSK.plusMinutes(35))));
    assertThat(text).contains("DTSTART:20260707T003500Z\r\n").doesNotContain("VTIMEZONE");
  }

  /**
   * Both halves of the year, in both hemispheres. Not the days next to the change of clocks: there
   * this library reads a wrong hour, and other readers are asked.
   */
  @Test
  void summerTimeIsKept() {
    ZoneId auckland = ZoneId.of("Pacific/Auckland");
    for (ZoneId zone : List.of(Books.NEW_YORK, auckland, ZoneId.of("Europe/Oslo"))) {
      for (int month = 1; month <= 12; month++) {
        LocalDateTime time = LocalDateTime.of(2026, month, 20, 20, 0);
        VEvent event = event(write(book(zone, Books.cover("x", time, time.plusHours(1)))));
        assertThat(instant(event, Property.DTSTART)).isEqualTo(time.atZone(zone).toInstant());
      }
    }
  }

  @Test
  void everyEntryRings() {
    Chore sow = Books.sow("x", 5, 9);
    Chore cover = Books.cover("x", DUSK, DUSK.plusMinutes(35));
    Calendar calendar = read(write(book(sow, cover)));
    List<VEvent> events = calendar.getComponents(Component.VEVENT);
    assertThat(events).allSatisfy(e -> assertThat(e.getAlarms()).hasSize(1));
    VAlarm evening = events.get(1).getAlarms().get(0);
    assertThat(text(evening, Property.ACTION)).isEqualTo("DISPLAY");
    assertThat(text(evening, Property.TRIGGER)).isEqualTo("-PT30M");
    assertThat(text(evening, Property.DESCRIPTION)).isEqualTo("Cover x");
    assertThat(Duration.parse(text(events.get(0).getAlarms().get(0), Property.TRIGGER)))
        .isEqualTo(Duration.ofHours(-6));
  }

  @Test
  void cautionsStandFirst() {
    Chore chore =
        new Chore(
            ChoreKind.LOOK_AT_FRUIT,
            "x",
            "x:look-at-fruit",
            "Look",
            ChoreTime.on(LocalDate.of(2026, 8, 1)),
            List.of("Signs."),
            List.of("Taste and spit.", "Keep cold."),
            slipday.measure.Reason.byDefault("made by hand"));
    assertThat(text(event(write(book(chore))), Property.DESCRIPTION))
        .isEqualTo("CAUTION: Taste and spit.\n\nCAUTION: Keep cold.\n\nSigns.");
  }

  @Test
  void whatACalendarMustSay() {
    Calendar calendar = read(write(book(Books.sow("x", 5, 9))));
    assertThat(calendar.getProperties())
        .extracting(p -> ((Property) p).getName() + "=" + ((Property) p).getValue())
        .containsExactly(
            "VERSION=2.0",
            "PRODID=-//Slipday//Season calendar//EN",
            "CALSCALE=GREGORIAN",
            "NAME=Quince End 2026",
            "COLOR=olivedrab",
            "REFRESH-INTERVAL=P1D");
    VEvent event = calendar.<VEvent>getComponents(Component.VEVENT).get(0);
    assertThat(text(event, Property.UID)).isEqualTo("slipday:2026:quince-end:x:sow");
    assertThat(text(event, Property.DTSTAMP)).isEqualTo("20260101T000000Z");
    assertThat(text(event, Property.SEQUENCE)).isEqualTo("0");
    assertThat(text(event, Property.CATEGORIES)).isEqualTo("sowing and planting");
    assertThat(calendar.validate().hasErrors()).isFalse();
  }

  @Test
  void tasksAreDue() {
    Chore harden =
        Books.chore(
            ChoreKind.HARDEN_OFF,
            "x",
            "Harden off",
            "text",
            new ChoreTime.Days(LocalDate.of(2026, 5, 21), LocalDate.of(2026, 5, 30)));
    Chore cover = Books.cover("x", DUSK, DUSK.plusMinutes(35));
    String text = write(book(Books.sow("x", 5, 9), harden, cover), true);
    Calendar calendar = read(text);
    assertThat(calendar.getComponents(Component.VEVENT)).isEmpty();
    List<VToDo> tasks = calendar.getComponents(Component.VTODO);
    assertThat(tasks)
        .extracting(t -> text(t, Property.DUE))
        .containsExactly("20260509", "20260530", "20260706T211000");
    // RFC 5545, 3.8.2.3: a task's DUE is later than its DTSTART; 3.8.6.3: without DTSTART a trigger
    // is from DUE.
    assertThat(tasks.get(0).getProperty(Property.DTSTART)).isEmpty();
    assertThat(text).contains("TRIGGER;RELATED=END:-PT6H");
    assertThat(text(tasks.get(1), Property.DTSTART)).isEqualTo("20260521");
    assertThat(text(tasks.get(2), Property.UID)).endsWith(":cover:task");
    assertThat(calendar.validate().hasErrors()).isFalse();
  }

  @Test
  void sameChoresSameBytes() {
    Chore[] chores = Books.hardTexts().toArray(Chore[]::new);
    assertThat(write(book(chores))).isEqualTo(write(book(chores)));
    assertThat(write(book())).contains("END:VTIMEZONE\r\nEND:VCALENDAR\r\n");
  }

  /** The calendar library would ask the web for newer rules of a zone if it were let. */
  @Test
  void nothingIsFetched() {
    List<URI> asked = new ArrayList<>();
    ProxySelector before = ProxySelector.getDefault();
    ProxySelector.setDefault(
        new ProxySelector() {
          @Override
          public List<Proxy> select(URI uri) {
            asked.add(uri);
            return List.of(Proxy.NO_PROXY);
          }

          @Override
          public void connectFailed(URI uri, SocketAddress address, IOException e) {}
        });
    try {
      write(book(ZoneId.of("Australia/Hobart"), Books.cover("x", DUSK, DUSK.plusMinutes(35))));
    } finally {
      ProxySelector.setDefault(before);
    }
    assertThat(asked).isEmpty();
  }

  private static Calendar read(String text) {
    try {
      return new CalendarBuilder().build(new StringReader(text));
    } catch (IOException | ParserException e) {
      throw new AssertionError(text, e);
    }
  }

  private static VEvent event(String text) {
    return read(text).<VEvent>getComponents(Component.VEVENT).get(0);
  }

  private static String text(Component component, String property) {
    return component.getProperty(property).orElseThrow().getValue();
  }

  private static Instant instant(Component component, String property) {
    DateProperty<?> date = (DateProperty<?>) component.getProperty(property).orElseThrow();
    Temporal when = date.getDate();
    return when instanceof Instant i ? i : ZonedDateTime.from(when).toInstant();
  }
}
