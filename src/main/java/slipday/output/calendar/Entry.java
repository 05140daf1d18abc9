package slipday.output.calendar;

import static java.time.ZoneOffset.UTC;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.TextList;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VToDo;
import net.fortuna.ical4j.model.parameter.Related;
import net.fortuna.ical4j.model.parameter.TzId;
import net.fortuna.ical4j.model.property.Action;
import net.fortuna.ical4j.model.property.Categories;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Due;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Transp;
import net.fortuna.ical4j.model.property.Trigger;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.XProperty;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreBook;
import slipday.season.chore.ChoreTime;

/** A chore as an event or a task. */
final class Entry {
  private static final String CAUTION = "CAUTION: ";
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);

  private final ChoreBook book;
  private final boolean tasks;
  private final boolean zoneKnown;

  /**
   * @param zoneKnown whether the calendar can say the zone's rules; else hours are told in UTC
   */
  Entry(ChoreBook book, boolean tasks, boolean zoneKnown) {
    this.book = book;
    this.tasks = tasks;
    this.zoneKnown = zoneKnown;
  }

  /** A new entry's content lines; the season's first day stands for when it was made. */
  List<String> first(Chore chore) {
    Instant made = book.firstDay().atStartOfDay(UTC).toInstant();
    return lines(chore, new DtStamp(made), new Sequence(0));
  }

  /** The content lines of an entry that was otherwise before. */
  List<String> changed(Chore chore, int sequence, Instant stamp) {
    return lines(chore, new DtStamp(stamp), new LastModified(stamp), new Sequence(sequence));
  }

  private List<String> lines(Chore chore, Property... marks) {
    List<Property> properties = new ArrayList<>();
    properties.add(new Uid(Uids.of(book, chore, tasks)));
    properties.addAll(List.of(marks));
    properties.addAll(times(chore.time()));
    properties.add(new Summary(plain(chore.title())));
    properties.add(new Description(plain(description(chore))));
    properties.add(new Categories(new TextList(List.of(chore.kind().group().words()))));
    if (!tasks) {
      properties.add(new Transp(Transp.VALUE_TRANSPARENT));
    }
    ComponentList<VAlarm> alarms = new ComponentList<>(List.of(alarm(chore)));
    Component component =
        tasks
            ? new VToDo(new PropertyList(properties), alarms)
            : new VEvent(new PropertyList(properties), alarms);
    return component.toString().lines().toList();
  }

  private List<Property> times(ChoreTime time) {
    if (time instanceof ChoreTime.Hours hours) {
      return List.of(
          clock(Property.DTSTART, hours.from()),
          clock(tasks ? Property.DUE : Property.DTEND, hours.to()));
    }
    LocalDate first = time.start().toLocalDate();
    if (!tasks) {
      return List.of(new DtStart<>(first), new DtEnd<>(time.lastDay().plusDays(1)));
    }
    return oneDay(time)
        ? List.of(new Due<>(first))
        : List.of(new DtStart<>(first), new Due<>(time.lastDay()));
  }

  /** RFC 5545 wants a task due later than it starts, so a task of one day has no start. */
  private static boolean oneDay(ChoreTime time) {
    return time instanceof ChoreTime.Days days && days.first().equals(days.last());
  }

  /**
   * As text: the library's own date properties move an hour on the last days before the clocks go
   * forward (ical4j 4.2.0, New York, 10 March 2027).
   */
  private Property clock(String property, LocalDateTime time) {
    return zoneKnown
        ? new XProperty(
            property, new ParameterList(List.of(new TzId(book.zone().getId()))), CLOCK.format(time))
        : new XProperty(
            property, CLOCK.format(time.atZone(book.zone()).withZoneSameInstant(UTC)) + "Z");
  }

  private VAlarm alarm(Chore chore) {
    Duration when = chore.kind().alarm();
    Trigger trigger =
        tasks && oneDay(chore.time())
            ? new Trigger(new ParameterList(List.of(Related.END)), when)
            : new Trigger(when);
    return new VAlarm(
        new PropertyList(
            List.of(
                new Action(Action.VALUE_DISPLAY), trigger, new Description(plain(chore.title())))));
  }

  private static String description(Chore chore) {
    return Stream.concat(
            chore.cautions().stream().map(c -> CAUTION + c), chore.description().stream())
        .collect(Collectors.joining("\n\n"));
  }

  /**
   * Without what a calendar's text may not hold (control characters, but for line ends) and without
   * the spaces around it, which readers drop.
   */
  static String plain(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    text.replace("\r\n", "\n")
        .codePoints()
        .map(c -> Character.isISOControl(c) && c != '\n' ? ' ' : c)
        .forEach(plain::appendCodePoint);
    return plain.toString().strip();
  }
}
