package slipday.output.data;

import java.util.List;
import java.util.Optional;
import slipday.garden.Lot;
import slipday.genetics.Odds;
import slipday.genetics.SeedLife;
import slipday.measure.Reasoned;
import slipday.season.Season;
import slipday.seed.SeedLot;

/** Every lot of seed in hand. */
public record LotsData(Head slipday, String plan, SeasonData season, List<LotData> lots) {
  /**
   * One lot.
   *
   * @param cross as Purdy and others (1968) write it
   * @param parents the plants its seed was saved from, as words; empty where not recorded
   * @param seedsLeft null where never counted
   * @param atMost whether some was taken uncounted
   * @param age whole seasons since harvest
   * @param germination expected this season, shares from 0 to 1
   * @param reckoning by what, a sentence each
   * @param facts of the crop that this rests on
   * @param growOnBy the season, by its first year, before which it is best grown on
   * @param plantsWanted of plantings not yet sown, or as asked for
   * @param seedsToSow for these; null where no number is enough
   * @param asUsual whether those are enough only if it keeps as usual, which nobody tested
   * @param remnant left after that; negative where it is too few
   * @param bitterParent what tasted bitter of those that it comes of, so that it is to be destroyed
   * @param isolated what kept all other pollen from the open flowers it is of; null where nothing
   *     did, or nobody knows
   * @param diseases seen on the plants it comes of, that its seed may carry
   * @param asides notes and photos of it, its plants and the fruits it came of
   * @param identity {@code known}, {@code doubtful} or {@code unknown}
   */
  public record LotData(
      String name,
      String line,
      String lineTitle,
      String crop,
      Optional<String> generation,
      Optional<String> cross,
      List<String> parents,
      Optional<Integer> harvested,
      Optional<Integer> seedsLeft,
      boolean atMost,
      Optional<Integer> age,
      Optional<TestData> test,
      Optional<GerminationData> germination,
      List<String> reckoning,
      List<ReasonData> facts,
      Optional<Integer> growOnBy,
      int plantsWanted,
      Optional<Integer> seedsToSow,
      boolean asUsual,
      Optional<Integer> remnant,
      Optional<Integer> keepBack,
      String identity,
      boolean mayBeBitter,
      Optional<String> bitterParent,
      Optional<ReasonData> isolated,
      List<String> diseases,
      List<AsideData> asides) {
    static LotData of(SeedLot s) {
      Lot lot = s.lot();
      return new LotData(
          lot.name(),
          lot.line().name(),
          lot.line().title(),
          lot.line().crop().name(),
          s.generation(),
          s.cross(),
          s.parents(),
          lot.harvested().map(Reasoned::value),
          s.left(),
          s.atMost(),
          s.age(),
          lot.tested().map(t -> TestData.of(t.value())),
          s.outlook().germination().map(GerminationData::of),
          s.outlook().reckoning(),
          s.outlook().facts().stream().map(ReasonData::of).toList(),
          s.outlook().growOnBy(),
          s.wanted(),
          s.toSow() < Odds.MOST ? Optional.of(s.toSow()) : Optional.empty(),
          s.outlook().asUsual(),
          s.remnant(),
          lot.keepBack().map(Reasoned::value),
          Ids.of(lot.identity()),
          s.mayBeBitter(),
          s.bitterParent().map(b -> b.culprit().name()),
          lot.isolated().map(ReasonData::of),
          lot.diseases().stream().map(Reasoned::value).toList(),
          AsideData.of(s.asides()));
    }
  }

  /** So many seedlings of so many seeds. */
  public record TestData(int seedlings, int seeds, Optional<Integer> year) {
    static TestData of(Lot.GerminationTest test) {
      return new TestData(test.seedlings(), test.of(), test.year());
    }
  }

  /** A share with its range. */
  public record GerminationData(double low, double usual, double high) {
    static GerminationData of(SeedLife.Germination g) {
      return new GerminationData(g.low(), g.usual(), g.high());
    }
  }

  public static LotsData of(String plan, Season season, List<SeedLot> lots) {
    return new LotsData(
        Head.of("lots"), plan, SeasonData.of(season), lots.stream().map(LotData::of).toList());
  }
}
