package slipday.output.calendar;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.parameter.Value;
import net.fortuna.ical4j.model.property.CalScale;
import net.fortuna.ical4j.model.property.Color;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.RefreshInterval;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import slipday.season.chore.ChoreBook;

/** What a calendar says of itself; NAME, COLOR and REFRESH-INTERVAL are of RFC 7986. */
final class CalendarHeader {
  static final String PRODUCT = "-//Slipday//Season calendar//EN";

  private static final String LEAF_GREEN = "olivedrab";
  private static final Set<String> NAMES =
      Set.of("VERSION", "PRODID", "CALSCALE", "NAME", "COLOR", "REFRESH-INTERVAL", "METHOD");

  private CalendarHeader() {}

  static List<String> lines(ChoreBook book, List<String> earlier) {
    List<Property> properties =
        List.of(
            ImmutableVersion.VERSION_2_0,
            new ProdId(PRODUCT),
            new CalScale(CalScale.VALUE_GREGORIAN),
            new Name(Entry.plain(book.title() + " " + book.season())),
            new Color(new ParameterList(), LEAF_GREEN),
            new RefreshInterval(new ParameterList(List.of(Value.DURATION)), Duration.ofDays(1)));
    List<String> lines = new ArrayList<>();
    properties.forEach(p -> lines.add(p.toString().strip()));
    earlier.stream().filter(line -> !NAMES.contains(ContentLines.name(line))).forEach(lines::add);
    return lines;
  }
}
