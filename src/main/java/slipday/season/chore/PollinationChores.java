package slipday.season.chore;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slipday.climate.SunTimes;
import slipday.season.PollinationPlan;

/** The evenings and mornings of one pollination by hand, and what follows them. */
final class PollinationChores {
  private static final int WITHERS_FROM = 2;
  private static final int WITHERS_TO = 3;
  private static final int WEEK = 7;

  private final SeasonIndex season;
  private final Map<LocalDate, SunTimes> sun = new HashMap<>();

  PollinationChores(SeasonIndex season) {
    this.season = season;
  }

  List<Chore> of(PollinationPlan plan) {
    List<LocalDate> mornings = season.mornings(plan);
    if (mornings.isEmpty()) {
      return List.of();
    }
    PollinationText text = new PollinationText(plan);
    List<Chore> chores = new ArrayList<>();
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
    List<Chore> chores = new ArrayList<>();
    chores.add(
        due(
            text.uncover(),
            new ChoreTime.Days(first.plusDays(WITHERS_FROM), last.plusDays(WITHERS_TO)),
            plan));
    int checks = 1 + (int) (last.toEpochDay() - first.toEpochDay() + WEEK - 1) / WEEK;
    for (int i = 1; i <= checks; i++) {
      LocalDate day = first.plusDays((long) i * WEEK);
      chores.add(due(text.checkTake(i), ChoreTime.on(day), plan));
    }
    LocalDate end = plan.until().orElse(last);
    LocalDate told = last.plusDays(WEEK);
    chores.add(due(text.stop(end), ChoreTime.on(told.isBefore(end) ? told : end), plan));
    return chores;
  }

  private static Chore due(Draft draft, ChoreTime time, PollinationPlan plan) {
    return draft.due(time, plan.reason(), plan.take().reason());
  }
}
