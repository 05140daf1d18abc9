package slipday.season.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slipday.climate.SunTimes;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.measure.Range;
import slipday.season.Event;
import slipday.season.MarkedFruit;
import slipday.season.PollinationPlan;
import slipday.season.Season;
import slipday.season.chore.ChoreTime;
import slipday.season.chore.SunHours;

/** Covering, pollinating, uncovering, and looking whether it took. */
final class FlowerWork {
  /** A take shows after about a week; common practice, no source. */
  private static final int TAKE_SHOWS = 7;

  /** Later than this a fruit tells by its size, and is asked after when it should be ripe. */
  private static final int TAKE_ASKED = 35;

  private static final int CLOSED_TOLD = 21;

  private static final Range USUAL_MALES = new Range(2, 3);

  private final Season season;
  private final Recorded recorded;
  private final LocalDate date;

  FlowerWork(Season season, Recorded recorded, LocalDate date) {
    this.season = season;
    this.recorded = recorded;
    this.date = date;
  }

  private SunTimes sun(LocalDate day) {
    return season.climate().sun(day);
  }

  private static boolean isPerfect(Planting planting) {
    return planting.line().sex().fruitingFlowersArePerfect();
  }

  List<TodayList.Covered> thisMorning() {
    List<TodayList.Covered> all = new ArrayList<>();
    for (Planting planting : season.garden().plantings()) {
      int flowers = recorded.idle(planting.name(), date.minusDays(1));
      if (flowers > 0) {
        ChoreTime hours = SunHours.morning(sun(date), isPerfect(planting));
        all.add(new TodayList.Covered(planting, flowers, hours));
      }
    }
    return all;
  }

  List<TodayList.Pollination> pollinations() {
    return season.pollinations().stream().flatMap(p -> pollination(p).stream()).toList();
  }

  /** Told for some weeks after the last day from which a fruit still ripens. */
  List<PollinationPlan> closed() {
    return season.pollinations().stream()
        .filter(p -> p.left() > 0 && recorded.isKept())
        .filter(p -> p.until().filter(this::isOfLate).isPresent())
        .filter(p -> !recorded.isNeverSown(season, p.seedParent().name(), date))
        .toList();
  }

  private boolean isOfLate(LocalDate day) {
    return day.isBefore(date) && !day.isBefore(date.minusDays(CLOSED_TOLD));
  }

  private Optional<TodayList.Pollination> pollination(PollinationPlan plan) {
    String mother = plan.seedParent().name();
    int flowers = recorded.isNeverSown(season, mother, date) ? 0 : plan.flowersOn(date.plusDays(1));
    if (flowers == 0) {
      return Optional.empty();
    }
    SunTimes evening = sun(date);
    return Optional.of(
        new TodayList.Pollination(
            plan,
            flowers,
            males(plan, flowers),
            recorded.covered(mother, date),
            recorded.has(mother, Event.FIRST_FRUITING),
            plan.emasculate() ? Optional.of(SunHours.beforeSunset(evening)) : Optional.empty(),
            SunHours.dusk(evening),
            SunHours.morning(sun(date.plusDays(1)), isPerfect(plan.seedParent()))));
  }

  private static Optional<Range> males(PollinationPlan plan, int flowers) {
    boolean has = plan.pollenParent().line().sex().hasMaleFlowers();
    Range each = plan.seedParent().facts().valueOr(CropFacts.MALES_PER_FLOWER, USUAL_MALES);
    return has ? Optional.of(each.times(flowers)) : Optional.empty();
  }

  List<TodayList.Uncover> uncover() {
    List<TodayList.Uncover> all = new ArrayList<>();
    for (Planting planting : season.garden().plantings()) {
      int from = (int) Math.round(planting.coverStays().low());
      int to = (int) Math.round(planting.coverStays().high());
      List<MarkedFruit> fruits =
          season.fruits().stream()
              .filter(f -> f.hangs() && f.planting().name().equals(planting.name()))
              .filter(f -> f.age(date) >= from && f.age(date) <= to)
              .toList();
      int idle = 0;
      for (int days = from; days <= to; days++) {
        idle += recorded.idle(planting.name(), date.minusDays(days));
      }
      if (!fruits.isEmpty() || idle > 0) {
        all.add(new TodayList.Uncover(planting, fruits, idle));
      }
    }
    return all;
  }

  List<MarkedFruit> unchecked() {
    return season.fruits().stream()
        .filter(f -> f.hangs() && f.story().checked().isEmpty() && f.age(date) >= TAKE_SHOWS)
        .filter(f -> f.age(date) <= TAKE_ASKED)
        .sorted(Comparator.comparing(MarkedFruit::pollinated))
        .toList();
  }
}
