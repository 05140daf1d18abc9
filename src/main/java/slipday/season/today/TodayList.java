package slipday.season.today;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.garden.Planting;
import slipday.garden.record.FruitStory;
import slipday.measure.Range;
import slipday.season.Event;
import slipday.season.MarkedFruit;
import slipday.season.PollinationPlan;
import slipday.season.Season;
import slipday.season.chore.ChoreKind;
import slipday.season.chore.ChoreTime;

/**
 * All there is to do on one day.
 *
 * @param season as it stands on that day by the record
 * @param kept whether anything of this season is on record
 * @param thisMorning flowers covered the evening before and not pollinated yet
 * @param pollinations to cover for tonight and to pollinate tomorrow morning
 * @param closed pollinations that are over with too few fruits
 * @param uncover whose covers can come off
 * @param unchecked flowers pollinated a week ago or more of which no take is recorded
 * @param ripe fruit that should be ripening, the most urgent first
 * @param taste plantings of which every plant is to be tasted for bitterness first
 * @param seed picked fruit whose seed is to be taken, the longest picked first
 * @param seedDone seed that is taken, and not dry or not counted by the record
 * @param unrecorded what was planned for an earlier day and is not in the record
 * @param chores other things to do on that day
 * @param coming what comes in the days after it that were asked for
 * @param next the first that comes after it, however late
 */
public record TodayList(
    LocalDate date,
    Season season,
    boolean kept,
    List<Covered> thisMorning,
    List<Pollination> pollinations,
    List<PollinationPlan> closed,
    List<Uncover> uncover,
    List<MarkedFruit> unchecked,
    List<RipeFruit> ripe,
    List<Taste> taste,
    List<SeedFruit> seed,
    List<SeedLeft> seedDone,
    List<Unrecorded> unrecorded,
    List<Doing> chores,
    List<Coming> coming,
    List<Coming> next) {

  /** Flowers of a planting, with the hours to pollinate them in. */
  public record Covered(Planting planting, int flowers, ChoreTime hours) {}

  /**
   * One pollination by hand.
   *
   * @param flowers to cover tonight and to pollinate tomorrow
   * @param males to cover with them; empty where the pollen parent has none
   * @param covered flowers of the seed parent that were covered tonight by the record
   * @param inFlower whether the first flowers of the seed parent are on record
   * @param anthers when to take the anthers out, where they must be
   * @param cover when to cover
   * @param pollinate when to pollinate
   */
  public record Pollination(
      PollinationPlan plan,
      int flowers,
      Optional<Range> males,
      int covered,
      boolean inFlower,
      Optional<ChoreTime> anthers,
      ChoreTime cover,
      ChoreTime pollinate) {}

  /**
   * Covers that can come off.
   *
   * @param fruits pollinated two or three days ago
   * @param idle flowers covered on earlier evenings and never pollinated
   */
  public record Uncover(Planting planting, List<MarkedFruit> fruits, int idle) {}

  /**
   * A marked fruit that should be ripening.
   *
   * @param overdue whether it is past the day by which nine of ten are ripe
   * @param stake the number on its plant's stake, where recorded
   * @param notes what was noted of it
   */
  public record RipeFruit(
      MarkedFruit fruit, boolean overdue, Optional<String> stake, List<String> notes) {}

  /**
   * Plants of seed that may be bitter.
   *
   * @param plants how many stand by plan and record; empty where the plan does not say
   * @param clean plants that tasted clean
   * @param bitter plants that tasted bitter and still stand by the record
   */
  public record Taste(
      Planting planting, Optional<Integer> plants, List<Integer> clean, List<Integer> bitter) {}

  /**
   * A picked fruit whose seed is not taken.
   *
   * @param ready the day from which its seed can be taken; fruit of some kinds rests first
   */
  public record SeedFruit(FruitStory story, LocalDate picked, LocalDate ready) {}

  /** Seed that was taken into a lot. */
  public record SeedLeft(String lot, LocalDate taken, boolean toDry, boolean toCount) {}

  /**
   * A planned step of which the record says nothing.
   *
   * @param due the day by which it should have been
   * @param tooLate the last day on which it could be done, where that is past
   */
  public record Unrecorded(
      Planting planting, Event event, LocalDate due, Optional<LocalDate> tooLate) {}

  /** A chore that is due, or goes on till a last day. */
  public record Doing(ChoreKind kind, String subject, LocalDate last) {}

  /**
   * What comes on a later day.
   *
   * @param kind the chore
   * @param subjects plantings, crosses or lots; tags where marked fruit begins to ripen
   */
  public record Coming(LocalDate date, ChoreKind kind, List<String> subjects) {}
}
