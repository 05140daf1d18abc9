package slipday.output.data;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.garden.record.Fact;
import slipday.season.Season;
import slipday.storage.Keeping;
import slipday.storage.KeptFruit;
import slipday.storage.Store;

/**
 * What lies in store, and how it keeps.
 *
 * @param today the day it is told for
 * @param fruits those still there, most urgent first
 * @param keeping how fruit of each line keeps, by all that was looked at
 * @param seed where the seed of a lot lies
 */
public record StoreData(
    Head slipday,
    String plan,
    SeasonData season,
    LocalDate today,
    List<FruitData> fruits,
    List<KeepingData> keeping,
    List<SeedPlace> seed) {
  /**
   * One fruit, or fruit of a planting.
   *
   * @param name its tag, or the planting's name
   * @param since the day it was picked, or else first seen in store
   * @param days from then to today
   * @param where it lies; null where not told
   * @param looked the day it was last looked at
   * @param state how it was then
   * @param bitter whether it or its plant tasted bitter: it is destroyed, and never eaten
   * @param firstKilograms as weighed first
   * @param lastKilograms as weighed last
   * @param best when fruit of its line tasted best; null of a soft or bitter one, which is thrown
   *     away
   * @param eatBy when the first of its line had spoilt; null of a soft or bitter one
   */
  public record FruitData(
      String name,
      String line,
      LocalDate since,
      int days,
      Optional<String> where,
      Optional<LocalDate> looked,
      Optional<String> state,
      boolean bitter,
      Optional<Double> firstKilograms,
      Optional<Double> lastKilograms,
      Optional<LocalDate> best,
      Optional<LocalDate> eatBy) {
    static FruitData of(KeptFruit f, Store store, LocalDate today) {
      return new FruitData(
          f.name(),
          f.line().name(),
          f.since(),
          Store.age(f, today),
          f.where(),
          f.lastLook().map(Fact::date),
          f.lastLook().map(Fact.LookedAt::state),
          f.bitter(),
          f.first().map(KeptFruit.Weighed::kilograms),
          f.last().map(KeptFruit.Weighed::kilograms),
          store.best(f),
          store.eatBy(f));
    }
  }

  /**
   * One line.
   *
   * @param fruits looked at
   * @param spoilt of them, that were soft, rotten or shrivelled
   * @param soundDays the longest that one was seen sound, from picking
   * @param spoiltDays the soonest that one was seen spoilt
   * @param bestDays from picking, at which flavour was scored highest; null unless scored at two
   *     ages
   * @param bestFlavour the mean score then, as a share of the points to be had
   * @param lostAMonth the mean share of its weight it lost in 30 days
   * @param gained fruits weighed heavier later than first; they are left out of what was lost
   */
  public record KeepingData(
      String line,
      int fruits,
      int spoilt,
      Optional<Integer> soundDays,
      Optional<Integer> spoiltDays,
      Optional<Integer> bestDays,
      Optional<Double> bestFlavour,
      Optional<Double> lostAMonth,
      int gained) {
    static KeepingData of(Keeping k) {
      return new KeepingData(
          k.line().name(),
          k.fruits(),
          k.spoilt(),
          k.soundDays(),
          k.spoiltDays(),
          k.best(),
          k.bestFlavour(),
          k.lostAMonth(),
          k.gained());
    }
  }

  /**
   * Where the seed of a lot lies.
   *
   * @param lot by its name
   * @param where as last told
   */
  public record SeedPlace(String lot, String where) {}

  public static StoreData of(String plan, Season season, Store store, LocalDate today) {
    return new StoreData(
        Head.of("store"),
        plan,
        SeasonData.of(season),
        today,
        store.fruits().stream().map(f -> FruitData.of(f, store, today)).toList(),
        store.keeping().stream().map(KeepingData::of).toList(),
        store.seed().entrySet().stream()
            .map(e -> new SeedPlace(e.getKey().name(), e.getValue()))
            .toList());
  }
}
