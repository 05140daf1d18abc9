package slipday.season.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.measure.Reasoned;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** Steps that were planned or forecast for an earlier day, and that the record does not tell of. */
final class Steps {
  private static final List<Event> STEPS =
      List.of(Event.SOW, Event.EMERGED, Event.POT_ON, Event.PLANT_OUT, Event.FIRST_FRUITING);

  /** What is older is not recorded any more, or was never done. */
  private static final int ASKED_FOR_DAYS = 56;

  private final Season season;
  private final Recorded recorded;
  private final LocalDate date;

  Steps(Season season, Recorded recorded, LocalDate date) {
    this.season = season;
    this.recorded = recorded;
    this.date = date;
  }

  /** Of each planting one: the sowing, or else the last that is missing. */
  List<TodayList.Unrecorded> unrecorded() {
    List<TodayList.Unrecorded> all = new ArrayList<>();
    if (!season.garden().season().contains(date)) {
      return all;
    }
    for (PlantingSeason planting : season.plantings()) {
      missed(planting).ifPresent(all::add);
    }
    return all;
  }

  /** First flowers matter where something is done to them. */
  private boolean applies(PlantingSeason planting, Event event) {
    return planting.date(event).isPresent()
        && (event != Event.FIRST_FRUITING
            || season.pollinations().stream()
                .anyMatch(p -> p.seedParent().name().equals(planting.name())));
  }

  private Optional<TodayList.Unrecorded> missed(PlantingSeason planting) {
    List<TodayList.Unrecorded> missed =
        STEPS.stream()
            .filter(e -> applies(planting, e) && !recorded.isDone(planting.name(), e))
            .flatMap(e -> missed(planting, e).stream())
            .toList();
    boolean unsown = !missed.isEmpty() && missed.get(0).event() == Event.SOW;
    return missed.stream().skip(unsown ? 0 : Math.max(0, missed.size() - 1)).findFirst();
  }

  private Optional<TodayList.Unrecorded> missed(PlantingSeason planting, Event event) {
    Optional<LocalDate> due = planting.date(event).map(Reasoned::value).flatMap(DateSpread::late);
    Optional<LocalDate> latest = planting.choice().latest().filter(date::isAfter);
    boolean starts = event == Event.SOW || event == Event.PLANT_OUT;
    LocalDate since = date.minusDays(ASKED_FOR_DAYS);
    return due.filter(d -> d.isBefore(date) && !(starts ? latest.orElse(d) : d).isBefore(since))
        .map(
            d ->
                new TodayList.Unrecorded(
                    planting.planting(), event, d, starts ? latest : Optional.empty()));
  }
}
