package slipday.output.data;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.record.Fruit;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.season.DateSpread;
import slipday.season.MarkedFruit;
import slipday.season.PollinationPlan;
import slipday.season.chore.ChoreTime;
import slipday.season.today.TodayList;

/**
 * All there is to do on one day.
 *
 * @param date the day it is for
 * @param recordKept whether anything of this season is on record
 * @param thisMorning flowers covered the evening before and not pollinated by the record
 * @param pollinations to cover for tonight and to pollinate tomorrow morning
 * @param closed pollinations that are over with too few fruits
 * @param uncover whose covers can come off
 * @param unchecked flowers pollinated a week ago or more of which no take is recorded
 * @param ripe marked fruit that should be ripening, the most urgent first
 * @param taste plantings of which every plant is to be tasted for bitterness first
 * @param seed picked fruit whose seed is to be taken
 * @param seedDone seed that is taken, and not dry or not counted by the record
 * @param unrecorded what was planned or forecast for an earlier day and is not in the record
 * @param chores other things to do on that day
 * @param coming what comes in the days that were asked for
 * @param next what comes first after that day
 */
public record TodayData(
    Head slipday,
    String plan,
    SeasonData season,
    LocalDate date,
    boolean recordKept,
    List<CoveredData> thisMorning,
    List<TonightData> pollinations,
    List<ClosedData> closed,
    List<UncoverData> uncover,
    List<TaggedData> unchecked,
    List<RipeData> ripe,
    List<TasteData> taste,
    List<SeedFruitData> seed,
    List<SeedLeftData> seedDone,
    List<UnrecordedData> unrecorded,
    List<DoingData> chores,
    List<ComingData> coming,
    List<ComingData> next) {

  /**
   * Hours by the garden's clock.
   *
   * @param from such as {@code 2026-07-15T20:25}
   * @param to such as {@code 2026-07-15T21:00}
   */
  public record HoursData(String from, String to) {
    static HoursData of(ChoreTime time) {
      LocalDateTime to =
          time instanceof ChoreTime.Hours hours ? hours.to() : time.lastDay().atStartOfDay();
      return new HoursData(time.start().toString(), to.toString());
    }
  }

  /**
   * Flowers covered the evening before.
   *
   * @param flowers how many of them are left to pollinate
   * @param hours when to
   */
  public record CoveredData(String planting, int flowers, HoursData hours) {
    static CoveredData of(TodayList.Covered c) {
      return new CoveredData(c.planting().name(), c.flowers(), HoursData.of(c.hours()));
    }
  }

  /**
   * One pollination by hand, tonight and tomorrow morning.
   *
   * @param subject the planting or the cross
   * @param way {@code self}, {@code sib} or {@code cross}
   * @param flower what is counted: {@code female flower}, {@code perfect flower}, or as the kind
   *     has it
   * @param bagged whether it is bagged; else it is taped shut
   * @param flowers to do
   * @param males to cover with them, from and to; null where the pollen parent has none
   * @param covered flowers of the seed parent covered tonight by the record
   * @param inFlower whether the first flowers of the seed parent are on record
   * @param anthers when the anthers come out; null where they stay
   * @param cover when to cover
   * @param pollinate when to pollinate
   * @param wanted fruits wanted in all
   * @param set fruits that set, by the record
   * @param waiting flowers pollinated whose take is not known yet
   * @param take the share of flowers expected to take
   * @param stillWanted fruits wanted, less those set, less the waiting flowers times the take
   * @param fromPlants the least number of plants they should come from
   */
  public record TonightData(
      String subject,
      String seedParent,
      String pollenParent,
      String way,
      String flower,
      boolean bagged,
      int flowers,
      Optional<MalesData> males,
      int covered,
      boolean inFlower,
      Optional<HoursData> anthers,
      HoursData cover,
      HoursData pollinate,
      int wanted,
      int set,
      int waiting,
      double take,
      double stillWanted,
      Optional<Integer> fromPlants) {
    static TonightData of(TodayList.Pollination p) {
      PollinationPlan plan = p.plan();
      return new TonightData(
          plan.subject(),
          plan.seedParent().name(),
          plan.pollenParent().name(),
          plan.cross().isPresent() ? "cross" : plan.selfing() ? "self" : "sib",
          plan.seedParent().fruitingFlower(),
          plan.seedParent().facts().valueOr(CropFacts.BAGGED, true),
          p.flowers(),
          p.males().map(m -> MalesData.of(m, plan.pollenParent().males())),
          p.covered(),
          p.inFlower(),
          p.anthers().map(HoursData::of),
          HoursData.of(p.cover()),
          HoursData.of(p.pollinate()),
          plan.wanted(),
          plan.set(),
          plan.waiting(),
          plan.take().value(),
          plan.stillWanted(),
          plan.fromPlants());
    }
  }

  /**
   * Male flowers, from and to so many.
   *
   * @param low the least
   * @param high the most
   * @param called what they are called in few words: males, or tassels
   */
  public record MalesData(int low, int high, String called) {
    static MalesData of(Range range, String called) {
      return new MalesData((int) Math.round(range.low()), (int) Math.round(range.high()), called);
    }
  }

  /**
   * A pollination by hand that is over with too few fruits.
   *
   * @param subject the planting or the cross
   * @param last the last day from which a fruit usually still ripens
   * @param wanted fruits wanted in all
   * @param set fruits that set, by the record
   * @param waiting flowers pollinated whose take is not known yet
   */
  public record ClosedData(String subject, LocalDate last, int wanted, int set, int waiting) {
    static ClosedData of(PollinationPlan plan) {
      return new ClosedData(
          plan.subject(), plan.until().orElseThrow(), plan.wanted(), plan.set(), plan.waiting());
    }
  }

  /**
   * Covers that can come off.
   *
   * @param planting whose flowers they are on
   * @param tags of fruit whose flowers have withered by now
   * @param idle flowers covered on earlier evenings and not pollinated by the record
   */
  public record UncoverData(String planting, List<String> tags, int idle) {
    static UncoverData of(TodayList.Uncover u) {
      return new UncoverData(
          u.planting().name(), u.fruits().stream().map(MarkedFruit::tag).toList(), u.idle());
    }
  }

  /**
   * A tagged flower.
   *
   * @param tag its tag this season
   * @param pollinated the day of its pollination
   * @param plant its number; null where not recorded
   * @param days since its pollination
   */
  public record TaggedData(
      String tag, String planting, Optional<Integer> plant, LocalDate pollinated, int days) {
    static TaggedData of(MarkedFruit f, LocalDate date) {
      return new TaggedData(
          f.tag(),
          f.planting().name(),
          f.story().fruit().seedParent().plant(),
          f.pollinated(),
          f.age(date));
    }
  }

  /**
   * A marked fruit that should be ripening.
   *
   * @param tag its tag this season
   * @param plant its plant's number; null where not recorded
   * @param pollinated the day of its pollination
   * @param days since then
   * @param stake the number on its plant's stake
   * @param waitsFor {@code ripe}, or {@code seed-ripe} where the seed fills after the eating stage
   * @param early days from its pollination by which it is ripe in 1 case of 10
   * @param usual the same in 5 of 10; null where it is seldom ripe before the frost
   * @param late the same in 9 of 10
   * @param overdue whether it is past that
   * @param takeSeen whether its take is on record
   * @param slip whether it slips from the vine when ripe: {@code full}, {@code half} or {@code
   *     none}; null where the crop does not say
   * @param signs of ripeness of its type
   * @param notes what was noted of it
   */
  public record RipeData(
      String tag,
      String planting,
      String crop,
      Optional<Integer> plant,
      Optional<String> stake,
      LocalDate pollinated,
      int days,
      String waitsFor,
      Optional<Integer> early,
      Optional<Integer> usual,
      Optional<Integer> late,
      boolean overdue,
      boolean takeSeen,
      Optional<String> slip,
      List<String> signs,
      List<String> notes) {
    static RipeData of(TodayList.RipeFruit r, LocalDate date) {
      MarkedFruit f = r.fruit();
      DateSpread spread = f.expected().value();
      return new RipeData(
          f.tag(),
          f.planting().name(),
          f.planting().crop().name(),
          f.story().fruit().seedParent().plant(),
          r.stake(),
          f.pollinated(),
          f.age(date),
          f.ripens().id(),
          spread.early().map(f::age),
          spread.usual().map(f::age),
          spread.late().map(f::age),
          r.overdue(),
          f.story().took().orElse(false),
          f.planting().facts().get(CropFacts.SLIP).map(Reasoned::value),
          f.planting().facts().all(CropFacts.SIGN).stream().map(Reasoned::value).toList(),
          r.notes());
    }
  }

  /**
   * Plants to taste for bitterness before anything else is done with their fruit.
   *
   * @param plants how many were planted by the plan; null where it does not say
   * @param clean numbers of plants that tasted clean
   * @param bitter numbers of plants that tasted bitter and still stand by the record
   */
  public record TasteData(
      String planting, Optional<Integer> plants, List<Integer> clean, List<Integer> bitter) {
    static TasteData of(TodayList.Taste t) {
      return new TasteData(t.planting().name(), t.plants(), t.clean(), t.bitter());
    }
  }

  /**
   * A picked fruit whose seed is not taken.
   *
   * @param tag its tag in its season
   * @param season the first year of the season its tag belongs to
   * @param picked the day it was picked
   * @param ready the day from which its seed can be taken
   */
  public record SeedFruitData(
      String tag, int season, String planting, LocalDate picked, LocalDate ready) {
    static SeedFruitData of(TodayList.SeedFruit s) {
      Fruit fruit = s.story().fruit();
      return new SeedFruitData(
          fruit.tag(), fruit.year(), fruit.seedParent().stand().name(), s.picked(), s.ready());
    }
  }

  /**
   * Seed that was taken into a lot, and what is left to do with it.
   *
   * @param taken the last day on which some was
   * @param toDry whether it is not dry by the record
   * @param toCount whether it is not counted by the record
   */
  public record SeedLeftData(String lot, LocalDate taken, boolean toDry, boolean toCount) {
    static SeedLeftData of(TodayList.SeedLeft s) {
      return new SeedLeftData(s.lot(), s.taken(), s.toDry(), s.toCount());
    }
  }

  /**
   * A step the record says nothing of.
   *
   * @param step the event: {@code sow}, {@code plant-out} …
   * @param due the day by which it should have been
   * @param tooLate the last day on which it could be done; null while it still can
   */
  public record UnrecordedData(
      String planting, String step, LocalDate due, Optional<LocalDate> tooLate) {
    static UnrecordedData of(TodayList.Unrecorded u) {
      return new UnrecordedData(u.planting().name(), u.event().id(), u.due(), u.tooLate());
    }
  }

  /**
   * A chore of the day.
   *
   * @param kind what is done: {@code harden-off}, {@code thin} …
   * @param subject the planting, lot or site it is about
   * @param last the last day on which it can be done
   */
  public record DoingData(String kind, String subject, LocalDate last) {
    static DoingData of(TodayList.Doing d) {
      return new DoingData(d.kind().id(), d.subject(), d.last());
    }
  }

  /**
   * What comes on a later day.
   *
   * @param kind the chore: {@code plant-out}, {@code look-at-fruit} …
   * @param subjects plantings, crosses or lots; tags where marked fruit begins to ripen or is at
   *     rest
   */
  public record ComingData(LocalDate date, String kind, List<String> subjects) {
    static ComingData of(TodayList.Coming c) {
      return new ComingData(c.date(), c.kind().id(), c.subjects());
    }
  }

  public boolean nothingToDo() {
    return thisMorning.isEmpty()
        && pollinations.isEmpty()
        && closed.isEmpty()
        && uncover.isEmpty()
        && unchecked.isEmpty()
        && ripe.isEmpty()
        && taste.isEmpty()
        && seed.isEmpty()
        && seedDone.isEmpty()
        && unrecorded.isEmpty()
        && chores.isEmpty();
  }

  public static TodayData of(String plan, TodayList list) {
    LocalDate date = list.date();
    return new TodayData(
        Head.of("today"),
        plan,
        SeasonData.of(list.season()),
        date,
        list.kept(),
        list.thisMorning().stream().map(CoveredData::of).toList(),
        list.pollinations().stream().map(TonightData::of).toList(),
        list.closed().stream().map(ClosedData::of).toList(),
        list.uncover().stream().map(UncoverData::of).toList(),
        list.unchecked().stream().map(f -> TaggedData.of(f, date)).toList(),
        list.ripe().stream().map(f -> RipeData.of(f, date)).toList(),
        list.taste().stream().map(TasteData::of).toList(),
        list.seed().stream().map(SeedFruitData::of).toList(),
        list.seedDone().stream().map(SeedLeftData::of).toList(),
        list.unrecorded().stream().map(UnrecordedData::of).toList(),
        list.chores().stream().map(DoingData::of).toList(),
        list.coming().stream().map(ComingData::of).toList(),
        list.next().stream().map(ComingData::of).toList());
  }
}
