package slipday.output.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipday.outside.OutsideTools;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreBook;
import slipday.season.chore.ChoreTime;
import slipday.season.chore.Gardens;

/** Our calendars read by Python's icalendar and by ical.js: texts, times and alarms agree. */
class OutsideReadersTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String PYTHON =
      """
      import sys, json, datetime, icalendar
      def when(v):
        if not isinstance(v, datetime.datetime): return v.isoformat()
        return v.astimezone(datetime.timezone.utc).strftime('%Y-%m-%dT%H:%M:%SZ')
      def at(e, name): return when(e[name].dt) if name in e else None
      cal = icalendar.Calendar.from_ical(open(sys.argv[1], 'rb').read())
      print(json.dumps([
        dict(uid=e['UID'], summary=e['SUMMARY'], description=e['DESCRIPTION'],
             start=at(e, 'DTSTART'), end=at(e, 'DTEND'), due=at(e, 'DUE'),
             alarms=[int(a['TRIGGER'].dt.total_seconds()) for a in e.walk('VALARM')])
        for e in cal.walk() if e.name in ('VEVENT', 'VTODO')]))
      """;

  private static final String NODE =
      """
      const ICAL = require('ical.js');
      const text = require('fs').readFileSync(process.argv[1], 'utf8');
      const all = new ICAL.Component(ICAL.parse(text));
      for (const z of all.getAllSubcomponents('vtimezone')) ICAL.TimezoneService.register(z);
      const when = t => !t ? null : t.isDate ? t.toString()
        : t.toJSDate().toISOString().replace('.000Z', 'Z');
      const of = c => ({uid: c.getFirstPropertyValue('uid'),
        summary: c.getFirstPropertyValue('summary'),
        description: c.getFirstPropertyValue('description'),
        start: when(c.getFirstPropertyValue('dtstart')),
        end: when(c.getFirstPropertyValue('dtend')),
        due: when(c.getFirstPropertyValue('due')),
        alarms: c.getAllSubcomponents('valarm').map(
          a => a.getFirstPropertyValue('trigger').toSeconds())});
      console.log(JSON.stringify(
        ['vevent', 'vtodo'].flatMap(n => all.getAllSubcomponents(n).map(of))));
      """;

  @TempDir private Path folder;

  private record Read(
      String uid,
      String summary,
      String description,
      String start,
      String end,
      String due,
      List<Long> alarms) {}

  @Test
  void pythonReadsHardTextsAndEveryHourOfTheYear() {
    assertReadWith(OutsideTools.pythonWithIcalendar(), PYTHON, hard());
  }

  @Test
  void icalJsReadsHardTextsAndEveryHourOfTheYear() {
    assertReadWith(OutsideTools.nodeWithIcalJs(), NODE, hard(Books.backslashBeforeN()));
  }

  @Test
  void pythonReadsWholeSeasons() {
    OutsideTools.Tool python = OutsideTools.pythonWithIcalendar();
    seasons().forEach(book -> assertReadWith(python, PYTHON, book));
  }

  @Test
  void icalJsReadsWholeSeasons() {
    OutsideTools.Tool node = OutsideTools.nodeWithIcalJs();
    seasons().forEach(book -> assertReadWith(node, NODE, book));
  }

  private void assertReadWith(OutsideTools.Tool tool, String script, ChoreBook book) {
    for (boolean tasks : List.of(false, true)) {
      List<Read> expected = book.chores().stream().map(c -> expected(book, c, tasks)).toList();
      assertThat(read(tool, script, Books.write(book, tasks)))
          .containsExactlyElementsOf(sorted(expected));
    }
  }

  private List<Read> read(OutsideTools.Tool tool, String script, String calendar) {
    try {
      Path file = Files.writeString(folder.resolve("season.ics"), calendar);
      List<Read> read = new ArrayList<>();
      for (JsonNode entry : JSON.readTree(tool.run(script, file.toString()))) {
        read.add(JSON.treeToValue(entry, Read.class));
      }
      return sorted(read);
    } catch (JsonProcessingException e) {
      throw new AssertionError(e);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static List<Read> sorted(List<Read> entries) {
    return entries.stream().sorted(Comparator.comparing(Read::uid)).toList();
  }

  private static Read expected(ChoreBook book, Chore chore, boolean tasks) {
    String start;
    String end;
    boolean oneDay = false;
    if (chore.time() instanceof ChoreTime.Hours hours) {
      start = hours.from().atZone(book.zone()).toInstant().toString();
      end = hours.to().atZone(book.zone()).toInstant().toString();
    } else {
      start = chore.time().start().toLocalDate().toString();
      end = chore.time().lastDay().plusDays(tasks ? 0 : 1).toString();
      oneDay = start.equals(chore.time().lastDay().toString());
    }
    String description =
        String.join(
            "\n\n",
            Stream.concat(
                    chore.cautions().stream().map(c -> "CAUTION: " + c),
                    chore.description().stream())
                .toList());
    return new Read(
        Uids.of(book, chore, tasks),
        chore.title(),
        description,
        tasks && oneDay ? null : start,
        tasks ? null : end,
        tasks ? end : null,
        List.of(chore.kind().alarm().toSeconds()));
  }

  /** Hard texts, and an hour of every day, through both changes of the clocks. */
  private static ChoreBook hard(Chore... more) {
    List<Chore> chores = new ArrayList<>(Books.hardTexts());
    chores.addAll(List.of(more));
    for (int day = 0; day < 365; day++) {
      LocalDateTime dusk = LocalDateTime.of(2026, 1, 1, 20, 35).plusDays(day);
      chores.add(Books.cover("day-" + day, dusk, dusk.plusMinutes(35)));
    }
    return Books.book(chores.toArray(Chore[]::new));
  }

  private static List<ChoreBook> seasons() {
    String plan =
        Gardens.lot("pip", "muskmelon")
            + "  flowers cover the chosen\n  pollinate self by hand, for 3 fruits\n  seed saved\n"
            + Gardens.lot("pulp", "acorn-squash")
            + "  flowers open\n  seed saved\n"
            + "cross pip-pod\n  seed parent pip\n  pollen parent pod\n  fruits 2\n"
            + Gardens.lot("pod", "casaba");
    assertThat(Gardens.south(plan).zone()).isEqualTo(ZoneId.of("Pacific/Auckland"));
    return List.of(Gardens.north(plan), Gardens.south(plan));
  }
}
