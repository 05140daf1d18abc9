package slipday.season;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Planting;
import slipday.garden.record.At;
import slipday.garden.record.Fact;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Stand;
import slipday.measure.Reasoned;

/**
 * What was recorded of a planting's own days this season. A first is the first of any of its
 * plants.
 */
record Observed(Map<Event, Reasoned<LocalDate>> days) {
  static final Observed NOTHING = new Observed(Map.of());

  static Observed of(GardenRecord record, Planting planting) {
    Map<Event, Reasoned<LocalDate>> days = new EnumMap<>(Event.class);
    for (Fact fact : record.facts()) {
      event(fact)
          .filter(e -> isOf(stand(fact), planting))
          .ifPresent(e -> days.putIfAbsent(e, dated(fact.at())));
    }
    return days.isEmpty() ? NOTHING : new Observed(days);
  }

  private static Reasoned<LocalDate> dated(At at) {
    return new Reasoned<>(at.date(), at.reason());
  }

  private static boolean isOf(Optional<Stand> stand, Planting planting) {
    return stand.flatMap(Stand::planting).filter(p -> p.name().equals(planting.name())).isPresent();
  }

  private static Optional<Stand> stand(Fact fact) {
    if (fact instanceof Fact.Sowed s) {
      return Optional.of(s.stand());
    }
    if (fact instanceof Fact.Emerged e) {
      return Optional.of(e.stand());
    }
    if (fact instanceof Fact.PottedOn p) {
      return Optional.of(p.stand());
    }
    if (fact instanceof Fact.PlantedOut p) {
      return Optional.of(p.stand());
    }
    return fact instanceof Fact.FirstFlowers f ? Optional.of(f.plants().stand()) : Optional.empty();
  }

  private static Optional<Event> event(Fact fact) {
    if (fact instanceof Fact.Sowed) {
      return Optional.of(Event.SOW);
    }
    if (fact instanceof Fact.Emerged) {
      return Optional.of(Event.EMERGED);
    }
    if (fact instanceof Fact.PottedOn) {
      return Optional.of(Event.POT_ON);
    }
    if (fact instanceof Fact.PlantedOut) {
      return Optional.of(Event.PLANT_OUT);
    }
    return fact instanceof Fact.FirstFlowers f
        ? Optional.of(f.male() ? Event.FIRST_MALE : Event.FIRST_FRUITING)
        : Optional.empty();
  }

  Optional<Reasoned<LocalDate>> day(Event event) {
    return Optional.ofNullable(days.get(event));
  }

  Optional<LocalDate> date(Event event) {
    return day(event).map(Reasoned::value);
  }

  /** The day that the season is reckoned from: planted out, or sown in place. */
  Optional<Reasoned<LocalDate>> start(boolean indoors) {
    return day(indoors ? Event.PLANT_OUT : Event.SOW);
  }
}
