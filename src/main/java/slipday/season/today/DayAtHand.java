package slipday.season.today;

import java.time.LocalDate;
import java.util.List;
import slipday.garden.Garden;
import slipday.season.Season;
import slipday.season.SeasonBuilder;

/** From a season and a day to what there is to do on it. */
public final class DayAtHand {
  private DayAtHand() {}

  /**
   * @param days how many days after it to look ahead
   */
  public static TodayList of(Season whole, LocalDate date, int days) {
    Season season = asOf(whole, date);
    Garden garden = season.garden();
    Recorded recorded = new Recorded(garden);
    FlowerWork flowers = new FlowerWork(season, recorded, date);
    RipeWork fruit = new RipeWork(season, recorded, date);
    SeedWork seed = new SeedWork(garden.record(), date);
    Ahead ahead = new Ahead(season, recorded, date);
    List<TodayList.SeedFruit> picked = seed.fruits();
    return new TodayList(
        date,
        season,
        recorded.isKept(),
        flowers.thisMorning(),
        flowers.pollinations(),
        flowers.closed(),
        flowers.uncover(),
        flowers.unchecked(),
        fruit.ripe(),
        fruit.taste(),
        picked.stream().filter(p -> !p.ready().isAfter(date)).toList(),
        seed.left(),
        new Steps(season, recorded, date).unrecorded(),
        ahead.doing(),
        ahead.within(days, picked),
        ahead.next(picked));
  }

  /** The season as it was known at the end of a day. */
  @SuppressWarnings("ReferenceEquality") // The garden gives itself where nothing lies ahead.
  public static Season asOf(Season season, LocalDate date) {
    Garden garden = season.garden().asOf(date);
    return garden == season.garden() ? season : SeasonBuilder.build(garden, season.climate());
  }
}
