package slipday.season.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipday.garden.CropFacts;
import slipday.garden.Facts;
import slipday.garden.record.Fact;
import slipday.garden.record.FruitStory;
import slipday.garden.record.GardenRecord;
import slipday.measure.Range;

/** Seed to take out of picked fruit, to dry and to count; of the season before, too. */
final class SeedWork {
  /** What is older was done, and not recorded. */
  private static final int WITHIN_DAYS = 300;

  /** So long after its rest at most a fruit is still whole, and was not eaten. */
  private static final int KEEPS_DAYS = 60;

  private final GardenRecord record;
  private final LocalDate date;

  SeedWork(GardenRecord record, LocalDate date) {
    this.record = record;
    this.date = date;
  }

  private boolean isOfLate(LocalDate day) {
    return !day.isBefore(date.minusDays(WITHIN_DAYS));
  }

  /** Every picked fruit whose seed is not taken, ready or at rest. */
  List<TodayList.SeedFruit> fruits() {
    return FruitStory.all(record).stream()
        .filter(s -> s.state() == FruitStory.State.PICKED)
        .filter(s -> !date.isAfter(picked(s).plusDays(Math.round(rest(s).high()) + KEEPS_DAYS)))
        .map(s -> new TodayList.SeedFruit(s, picked(s), ready(s)))
        .sorted(Comparator.comparing(TodayList.SeedFruit::ready))
        .toList();
  }

  private static LocalDate picked(FruitStory story) {
    return story.picked().orElseThrow().date();
  }

  private static Range rest(FruitStory story) {
    Facts facts = story.fruit().seedParent().stand().lot().line().facts();
    return facts.valueOr(CropFacts.SEED_RESTS, Range.of(0));
  }

  private static LocalDate ready(FruitStory story) {
    return picked(story).plusDays(Math.round(rest(story).low()));
  }

  List<TodayList.SeedLeft> left() {
    Set<String> dry = new HashSet<>();
    Set<String> counted = new HashSet<>();
    record.every(Fact.Dried.class).forEach(d -> dry.add(d.lot().name()));
    record.every(Fact.Counted.class).forEach(c -> counted.add(c.lot().name()));
    Map<String, List<Fact.Saved>> lots = new LinkedHashMap<>();
    record
        .every(Fact.Saved.class)
        .forEach(s -> lots.computeIfAbsent(s.lot().name(), n -> new ArrayList<>()).add(s));
    List<TodayList.SeedLeft> left = new ArrayList<>();
    lots.forEach(
        (lot, taken) -> {
          LocalDate last = taken.get(taken.size() - 1).date();
          boolean toCount =
              !counted.contains(lot) && taken.stream().anyMatch(s -> s.seeds().isEmpty());
          // What was counted after its drying, or sown, was dry.
          boolean toDry = !dry.contains(lot) && !counted.contains(lot);
          if (isOfLate(last) && (toDry || toCount)) {
            left.add(new TodayList.SeedLeft(lot, last, toDry, toCount));
          }
        });
    return left;
  }
}
