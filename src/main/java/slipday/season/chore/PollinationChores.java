package slipday.season.chore;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import slipday.climate.SunTimes;
import slipday.garden.record.FruitStory;
import slipday.measure.Range;
import slipday.season.PollinationPlan;

/** The evenings and mornings of one pollination by hand, and what follows them. */
final class PollinationChores {
  private static final int WEEK = 7;

  private final SeasonIndex season;
  private final Map<LocalDate, SunTimes> sun = new HashMap<>();

  PollinationChores(SeasonIndex season) {
    this.season = season;
  }

  List<Chore> of(PollinationPlan plan) {
    List<LocalDate> mornings = season.mornings(plan);
    PollinationText text = new PollinationText(plan, season.season().garden().units());
    List<Chore> chores = new ArrayList<>(checks(plan, text, mornings));
    if (mornings.isEmpty()) {
      return chores;
    }
    for (int i = 0; i < mornings.size(); i++) {
      SunTimes evening = sun(mornings.get(i).minusDays(1));
      SunTimes morning = sun(mornings.get(i));
      if (plan.emasculate()) {
        chores.add(due(text.removeAnthers(i + 1), SunHours.beforeSunset(evening), plan));
      }
      chores.add(due(text.cover(i + 1), SunHours.dusk(evening), plan));
      chores.add(due(text.pollinate(i + 1), SunHours.morning(morning, text.perfect()), plan));
    }
    chores.addAll(after(plan, text, mornings));
    return chores;
  }

  private SunTimes sun(LocalDate day) {
    return sun.computeIfAbsent(day, season.season().climate()::sun);
  }

  private static List<Chore> after(
      PollinationPlan plan, PollinationText text, List<LocalDate> mornings) {
    LocalDate first = mornings.get(0);
    LocalDate last = mornings.get(mornings.size() - 1);
    Range covered = plan.seedParent().coverStays();
    List<Chore> chores = new ArrayList<>();
    chores.add(
        due(
            text.uncover(),
            new ChoreTime.Days(
                first.plusDays(Math.round(covered.low())),
                last.plusDays(Math.round(covered.high()))),
            plan));
    LocalDate end = plan.until().orElse(last);
    LocalDate told = last.plusDays(WEEK);
    chores.add(due(text.stop(end), ChoreTime.on(told.isBefore(end) ? told : end), plan));
    return chores;
  }

  /** A week after the first flower, and each week on which one of that age is to be looked at. */
  private static List<Chore> checks(
      PollinationPlan plan, PollinationText text, List<LocalDate> mornings) {
    Stream<LocalDate> waiting =
        plan.pollinated().stream()
            .filter(s -> s.state() == FruitStory.State.PENDING)
            .map(s -> s.fruit().date());
    List<LocalDate> flowers = Stream.concat(waiting, mornings.stream()).sorted().toList();
    List<Chore> chores = new ArrayList<>();
    if (flowers.isEmpty()) {
      return chores;
    }
    LocalDate last = flowers.get(flowers.size() - 1).plusDays(WEEK);
    LocalDate day = flowers.get(0).plusDays(WEEK);
    for (int i = 1; day.isBefore(last.plusDays(WEEK)); i++, day = day.plusDays(WEEK)) {
      LocalDate check = day;
      if (flowers.stream().anyMatch(f -> isAWeekBefore(f, check))) {
        chores.add(due(text.checkTake(i), ChoreTime.on(check), plan));
      }
    }
    return chores;
  }

  private static boolean isAWeekBefore(LocalDate flower, LocalDate check) {
    LocalDate shows = flower.plusDays(WEEK);
    return !shows.isAfter(check) && shows.isAfter(check.minusDays(WEEK));
  }

  private static Chore due(Draft draft, ChoreTime time, PollinationPlan plan) {
    return draft.due(time, plan.reason(), plan.take().reason());
  }
}
