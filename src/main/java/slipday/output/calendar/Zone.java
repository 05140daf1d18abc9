package slipday.output.calendar;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.fortuna.ical4j.model.TimeZoneRegistryFactory;
import net.fortuna.ical4j.model.component.VTimeZone;

/** The rules of a time zone, as the calendar library has them. */
final class Zone {
  private Zone() {}

  /**
   * The VTIMEZONE's content lines, under the name the plan gives the zone. Empty where the library
   * does not know the zone; hours are then told in UTC.
   */
  static Optional<List<String>> lines(ZoneId zone) {
    return Optional.ofNullable(
            TimeZoneRegistryFactory.getInstance().createRegistry().getTimeZone(zone.getId()))
        .map(known -> lines(known.getVTimeZone(), zone.getId()));
  }

  private static List<String> lines(VTimeZone zone, String id) {
    Stream<String> observances = zone.getObservances().stream().flatMap(o -> o.toString().lines());
    return Stream.of(
            Stream.of("BEGIN:VTIMEZONE", "TZID:" + id), observances, Stream.of("END:VTIMEZONE"))
        .flatMap(s -> s)
        .toList();
  }
}
