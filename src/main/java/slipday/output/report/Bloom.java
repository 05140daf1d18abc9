package slipday.output.report;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Planting;
import slipday.season.Event;
import slipday.season.Exposure;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** Where on the calendar pollen and flowers meet, by their usual days. */
final class Bloom {
  private final Map<String, PlantingSeason> plantings = new HashMap<>();

  Bloom(Season season) {
    season.plantings().forEach(p -> plantings.put(p.name(), p));
  }

  /** Days, both included. */
  record Window(LocalDate from, LocalDate to) {
    Window with(Window other) {
      return new Window(
          from.isBefore(other.from) ? from : other.from, to.isAfter(other.to) ? to : other.to);
    }
  }

  /**
   * When a source sheds while the receiver's flowers are open; of a neighbour, whose calendar
   * nobody knows, all the time they are.
   */
  Optional<Window> together(Exposure e) {
    Optional<Window> open = window(e.receiver(), Event.FIRST_FRUITING);
    Optional<Window> sheds =
        e.source().planting().isEmpty()
            ? open
            : e.source().planting().flatMap(p -> window(p, Event.FIRST_MALE));
    return open.flatMap(o -> sheds.flatMap(s -> both(o, s)));
  }

  private static Optional<Window> both(Window a, Window b) {
    LocalDate from = a.from.isAfter(b.from) ? a.from : b.from;
    LocalDate to = a.to.isBefore(b.to) ? a.to : b.to;
    return from.isAfter(to) ? Optional.empty() : Optional.of(new Window(from, to));
  }

  private Optional<Window> window(Planting planting, Event first) {
    Optional<PlantingSeason> season = Optional.ofNullable(plantings.get(planting.name()));
    Optional<LocalDate> from =
        season.flatMap(p -> usual(p, first).or(() -> usual(p, Event.FIRST_FRUITING)));
    Optional<LocalDate> to = season.flatMap(p -> usual(p, Event.BLOOM_ENDS));
    return from.flatMap(f -> to.filter(t -> !t.isBefore(f)).map(t -> new Window(f, t)));
  }

  private static Optional<LocalDate> usual(PlantingSeason planting, Event event) {
    return planting.date(event).flatMap(d -> d.value().usual().or(d.value()::early));
  }
}
