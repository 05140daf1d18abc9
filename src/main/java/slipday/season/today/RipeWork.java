package slipday.season.today;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slipday.garden.Planting;
import slipday.garden.record.Asides;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.MarkedFruit;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** Fruit that should be ripening, and what must be tasted before anything of it is eaten. */
final class RipeWork {
  private final Season season;
  private final Recorded recorded;
  private final LocalDate date;
  private final Asides asides;

  RipeWork(Season season, Recorded recorded, LocalDate date) {
    this.season = season;
    this.recorded = recorded;
    this.date = date;
    this.asides = new Asides(season.garden().record());
  }

  /** The one that is furthest past its usual day first. */
  List<TodayList.RipeFruit> ripe() {
    return season.fruits().stream()
        .filter(f -> f.hangs() && isDue(f))
        .sorted(
            Comparator.comparingLong(this::past)
                .reversed()
                .thenComparing(MarkedFruit::pollinated)
                .thenComparing(MarkedFruit::tag))
        .map(f -> new TodayList.RipeFruit(f, isOverdue(f), stake(f), notes(f)))
        .toList();
  }

  private Optional<String> stake(MarkedFruit fruit) {
    return recorded.stake(fruit.story().fruit().seedParent());
  }

  private List<String> notes(MarkedFruit fruit) {
    return asides.ofFruit(fruit.story().fruit()).stream().flatMap(a -> a.text().stream()).toList();
  }

  private static DateSpread expected(MarkedFruit fruit) {
    return fruit.expected().value();
  }

  private boolean isDue(MarkedFruit fruit) {
    return expected(fruit).early().filter(d -> !d.isAfter(date)).isPresent();
  }

  private boolean isOverdue(MarkedFruit fruit) {
    return expected(fruit).late().filter(date::isAfter).isPresent();
  }

  /** Days past the usual day; the early one stands for it where it is seldom ripe at all. */
  private long past(MarkedFruit fruit) {
    LocalDate usual = expected(fruit).usual().or(() -> expected(fruit).early()).orElse(date);
    return ChronoUnit.DAYS.between(usual, date);
  }

  List<TodayList.Taste> taste() {
    return season.plantings().stream()
        .filter(p -> !p.planting().crop().isBitter() && isToTaste(p))
        .map(PlantingSeason::planting)
        .map(this::taste)
        .filter(this::isLeft)
        .toList();
  }

  /** By its seed, or since one of its plants tasted bitter: then all of the lot are in doubt. */
  private boolean isToTaste(PlantingSeason planting) {
    return !recorded.tasted(planting.name(), true).isEmpty()
        || (planting.planting().lot().bitterRisk(season.garden()) && hasFruit(planting));
  }

  private TodayList.Taste taste(Planting planting) {
    int gone = recorded.gone(planting.name());
    return new TodayList.Taste(
        planting,
        planting.plants().map(n -> Math.max(0, n.value() - gone)),
        recorded.tasted(planting.name(), false),
        recorded.tasted(planting.name(), true));
  }

  /** Whether a plant is left that was not tasted, or one that tasted bitter. */
  private boolean isLeft(TodayList.Taste taste) {
    int plants = taste.plants().orElse(Integer.MAX_VALUE);
    return !taste.bitter().isEmpty() || taste.clean().size() < plants;
  }

  private boolean hasFruit(PlantingSeason planting) {
    boolean marked =
        season.fruits().stream()
            .anyMatch(f -> f.planting().name().equals(planting.name()) && f.hangs() && isDue(f));
    boolean picked = recorded.has(planting.name(), Event.RIPE);
    boolean forecast =
        planting
            .date(Event.RIPE)
            .flatMap(d -> d.value().early())
            .filter(d -> !d.isAfter(date) && season.garden().season().contains(date))
            .isPresent();
    return marked || picked || forecast;
  }
}
