package slipday.season.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import slipday.season.Event;
import slipday.season.MarkedFruit;
import slipday.season.PollinationPlan;
import slipday.season.Season;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreKind;
import slipday.season.chore.ChoreTime;
import slipday.season.chore.Chores;

/** The season's other chores: those of the day, and those that come. */
final class Ahead {
  /** What a page of its own part tells, out of the record. */
  private static final Set<ChoreKind> TOLD_ELSEWHERE =
      EnumSet.of(
          ChoreKind.COVER,
          ChoreKind.POLLINATE,
          ChoreKind.REMOVE_ANTHERS,
          ChoreKind.UNCOVER,
          ChoreKind.CHECK_TAKE);

  private final Season season;
  private final Recorded recorded;
  private final LocalDate date;
  private final List<Chore> chores;
  private final Set<String> withMarkedFruit;
  private final Set<String> byHand;

  Ahead(Season season, Recorded recorded, LocalDate date) {
    this.season = season;
    this.recorded = recorded;
    this.date = date;
    this.chores = Chores.of(season).chores();
    this.withMarkedFruit =
        season.fruits().stream()
            .filter(MarkedFruit::hangs)
            .map(f -> f.planting().name())
            .collect(Collectors.toSet());
    this.byHand =
        season.pollinations().stream().map(PollinationPlan::subject).collect(Collectors.toSet());
  }

  List<TodayList.Doing> doing() {
    return chores.stream()
        .filter(c -> c.time() instanceof ChoreTime.Days && !TOLD_ELSEWHERE.contains(c.kind()))
        .filter(c -> !first(c).isAfter(date) && !c.time().lastDay().isBefore(date))
        .filter(c -> !isDone(c) && !recorded.isNeverSown(season, c.subject(), date))
        .map(c -> new TodayList.Doing(c.kind(), subject(c), c.time().lastDay()))
        .toList();
  }

  /** What is done for the garden as a whole is done with this season's seed. */
  private String subject(Chore chore) {
    boolean ofAll = chore.subject().equals(season.garden().site().name());
    return ofAll ? "this season's seed" : chore.subject();
  }

  private static LocalDate first(Chore chore) {
    return chore.time().start().toLocalDate();
  }

  private boolean isDone(Chore chore) {
    String name = chore.subject();
    return isByFruit(chore)
        || switch (chore.kind()) {
          case SOW -> recorded.isDone(name, Event.SOW);
          case POT_ON -> recorded.isDone(name, Event.POT_ON);
          case HARDEN_OFF, PLANT_OUT -> recorded.isDone(name, Event.PLANT_OUT);
          case WATCH_FLOWERS -> recorded.isDone(name, Event.FIRST_FRUITING);
          default -> false;
        };
  }

  /** Marked fruit is told of fruit by fruit, and so is its seed once a record is kept. */
  private boolean isByFruit(Chore chore) {
    return switch (chore.kind()) {
      case LOOK_AT_FRUIT -> withMarkedFruit.contains(chore.subject());
      case TAKE_SEED -> recorded.isKept() && byHand.contains(chore.subject());
      default -> false;
    };
  }

  /** Covers go on the evening before; what follows a pollination is told when it was done. */
  private boolean isToldAhead(Chore chore) {
    return chore.kind() == ChoreKind.POLLINATE
        ? first(chore).isAfter(date.plusDays(1))
        : !TOLD_ELSEWHERE.contains(chore.kind());
  }

  /** What comes in so many days, day by day and kind by kind. */
  List<TodayList.Coming> within(int days, List<TodayList.SeedFruit> picked) {
    LocalDate until = date.plusDays(days);
    return coming(picked).stream().filter(c -> !c.date().isAfter(until)).toList();
  }

  /** All that comes on the first day on which anything does. */
  List<TodayList.Coming> next(List<TodayList.SeedFruit> picked) {
    List<TodayList.Coming> all = coming(picked);
    return all.stream().filter(c -> c.date().equals(all.get(0).date())).toList();
  }

  private record On(LocalDate date, ChoreKind kind) implements Comparable<On> {
    @Override
    public int compareTo(On other) {
      int byDate = date.compareTo(other.date);
      return byDate != 0 ? byDate : kind.compareTo(other.kind);
    }
  }

  private List<TodayList.Coming> coming(List<TodayList.SeedFruit> picked) {
    Map<On, List<String>> days = new TreeMap<>();
    for (Chore chore : chores) {
      if (isToldAhead(chore) && !isByFruit(chore)) {
        add(days, first(chore), chore.kind(), chore.subject());
      }
    }
    for (MarkedFruit fruit : season.fruits()) {
      if (fruit.hangs()) {
        fruit
            .expected()
            .value()
            .early()
            .ifPresent(d -> add(days, d, ChoreKind.LOOK_AT_FRUIT, fruit.tag()));
      }
    }
    for (TodayList.SeedFruit fruit : picked) {
      add(days, fruit.ready(), ChoreKind.TAKE_SEED, fruit.story().fruit().tag());
    }
    List<TodayList.Coming> coming = new ArrayList<>();
    days.forEach((on, subjects) -> coming.add(new TodayList.Coming(on.date, on.kind, subjects)));
    return coming;
  }

  private void add(Map<On, List<String>> days, LocalDate day, ChoreKind kind, String subject) {
    if (day.isAfter(date)) {
      List<String> subjects = days.computeIfAbsent(new On(day, kind), o -> new ArrayList<>());
      if (!subjects.contains(subject)) {
        subjects.add(subject);
      }
    }
  }
}
