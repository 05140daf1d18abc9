package slipday.season;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Planting;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * One planting in the season.
 *
 * @param dates the events that apply to it, each with its reasons; a biennial has no flowers here
 * @param choice the planting-out day (or sowing day in place) and what bounds it
 * @param traces the days of its events in every weather year and pace, for whoever compares
 *     plantings
 * @param sureOfFlowers false where it waits for short days: its flowering is then told without
 *     confidence
 * @param ownDays days from pollination to ripe, or to full seed, where the line's own record tells
 *     them: a range that holds 8 of 10 fruits
 * @param gone the day on which the last of its plants died or was taken out, by the record
 */
public record PlantingSeason(
    Planting planting,
    Model model,
    boolean indoors,
    Map<Event, Reasoned<DateSpread>> dates,
    DateChoice choice,
    Traces traces,
    boolean sureOfFlowers,
    Reason modelReason,
    Map<Event, Reasoned<Range>> ownDays,
    Optional<Reasoned<LocalDate>> gone) {
  /** °C where seed is raised indoors, where the plan tells no temperature. */
  public static final double INDOORS = 21;

  public Optional<Reasoned<DateSpread>> date(Event event) {
    return Optional.ofNullable(dates.get(event));
  }

  public String name() {
    return planting.name();
  }

  /**
   * How long a tunnel or fleece lies over it.
   *
   * @param from the day it goes on: with the plants, or with seed that is sown in place
   * @param off the day it comes off
   */
  public record Covered(String what, LocalDate from, LocalDate off) {}

  public Optional<Covered> covered() {
    LocalDate from = choice.date();
    return planting
        .cover()
        .map(Reasoned::value)
        .map(c -> new Covered(c.what(), from, from.plusDays(Math.round(c.days()))));
  }

  public boolean flowers() {
    return dates.containsKey(Event.FIRST_FRUITING);
  }
}
