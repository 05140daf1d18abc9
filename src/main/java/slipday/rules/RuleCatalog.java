package slipday.rules;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import slipday.rules.bed.BedNotTold;
import slipday.rules.bed.BedOverfull;
import slipday.rules.bed.BedsOverlap;
import slipday.rules.bed.SameFamilyAgain;
import slipday.rules.crossing.BitterPollen;
import slipday.rules.crossing.BloomNotApart;
import slipday.rules.crossing.KernelsSpoilt;
import slipday.rules.crossing.OtherSpeciesPollen;
import slipday.rules.crossing.PollenFromOutside;
import slipday.rules.crossing.SeedOpenToCrossing;
import slipday.rules.crossing.UnmarkedFruitCrossed;
import slipday.rules.goal.AimNotMeasured;
import slipday.rules.goal.FewerParentsThanGoal;
import slipday.rules.pollination.CrossCannotBeMade;
import slipday.rules.pollination.FlowersLeftOpen;
import slipday.rules.pollination.MoreFruitsThanPlantsBear;
import slipday.rules.pollination.NoPollenForSeed;
import slipday.rules.pollination.OneSexOnly;
import slipday.rules.pollination.ParentsDoNotMeet;
import slipday.rules.pollination.TooFewFlowers;
import slipday.rules.record.BackcrossToNeitherParent;
import slipday.rules.record.BitterSeedKept;
import slipday.rules.record.DownToOneParent;
import slipday.rules.record.GenerationDoesNotFollow;
import slipday.rules.record.PickedTooSoon;
import slipday.rules.record.PlantingKnownHereOnly;
import slipday.rules.record.ScoredBeforeTasted;
import slipday.rules.record.SeedFromUncoveredFlower;
import slipday.rules.record.SeedFromUnmarkedFruit;
import slipday.rules.record.SeedOfOffType;
import slipday.rules.record.SelfOrCross;
import slipday.rules.record.TagCheckWrong;
import slipday.rules.record.UnlikelyDay;
import slipday.rules.record.UnlikelyFigure;
import slipday.rules.record.UnripeSeedKept;
import slipday.rules.seed.BiennialSeed;
import slipday.rules.seed.DoubtfulParent;
import slipday.rules.seed.LastSeedSown;
import slipday.rules.seed.MayBeBitter;
import slipday.rules.seed.MayCarryDisease;
import slipday.rules.seed.OldSeedUntested;
import slipday.rules.seed.SeedTooOld;
import slipday.rules.seed.SeedWillNotComeUp;
import slipday.rules.seed.SelfingHarms;
import slipday.rules.seed.TooFewPlants;
import slipday.rules.seed.TooFewSeeds;
import slipday.rules.seed.WrongAgeToPlantOut;
import slipday.rules.weather.ClockOffTheSun;
import slipday.rules.weather.FrostAfterPlanting;
import slipday.rules.weather.FrostNotKnown;
import slipday.rules.weather.FruitNotRipe;
import slipday.rules.weather.HeatAtFlowering;
import slipday.rules.weather.ImpossibleSeason;
import slipday.rules.weather.NightsTooCold;
import slipday.rules.weather.SeedNotRipe;
import slipday.rules.weather.ShortDayFlowering;
import slipday.rules.weather.SoilReadingMovesDates;
import slipday.rules.weather.SoilTooCold;
import slipday.rules.weather.SunNeverSets;
import slipday.rules.weather.ToldInVain;

/** The one list of everything a finding can be called. */
public final class RuleCatalog {
  /** The rules of the garden, by id. */
  private static final List<Rule> RULES =
      List.of(
          new AimNotMeasured(),
          new BackcrossToNeitherParent(),
          new BedNotTold(),
          new BedOverfull(),
          new BedsOverlap(),
          new BiennialSeed(),
          new BitterPollen(),
          new BitterSeedKept(),
          new BloomNotApart(),
          new ClockOffTheSun(),
          new CrossCannotBeMade(),
          new DoubtfulParent(),
          new DownToOneParent(),
          new FewerParentsThanGoal(),
          new ShortDayFlowering(),
          new FlowersLeftOpen(),
          new FrostAfterPlanting(),
          new FrostNotKnown(),
          new FruitNotRipe(),
          new GenerationDoesNotFollow(),
          new HeatAtFlowering(),
          new ImpossibleSeason(),
          new KernelsSpoilt(),
          new LastSeedSown(),
          new MayBeBitter(),
          new MayCarryDisease(),
          new MoreFruitsThanPlantsBear(),
          new NightsTooCold(),
          new NoPollenForSeed(),
          new OldSeedUntested(),
          new OneSexOnly(),
          new OtherSpeciesPollen(),
          new ParentsDoNotMeet(),
          new PickedTooSoon(),
          new PlantingKnownHereOnly(),
          new PollenFromOutside(),
          new SameFamilyAgain(),
          new ScoredBeforeTasted(),
          new SeedFromUncoveredFlower(),
          new SeedFromUnmarkedFruit(),
          new SeedNotRipe(),
          new SeedOfOffType(),
          new SeedOpenToCrossing(),
          new SeedTooOld(),
          new SeedWillNotComeUp(),
          new SelfOrCross(),
          new SelfingHarms(),
          new SoilReadingMovesDates(),
          new SoilTooCold(),
          new SunNeverSets(),
          new TagCheckWrong(),
          new ToldInVain(),
          new TooFewFlowers(),
          new TooFewPlants(),
          new TooFewSeeds(),
          new UnlikelyDay(),
          new UnlikelyFigure(),
          new UnmarkedFruitCrossed(),
          new UnripeSeedKept(),
          new WrongAgeToPlantOut());

  private static final SortedSet<String> IDS = allIds();

  private RuleCatalog() {}

  public static List<Rule> rules() {
    return RULES;
  }

  /** Ids that no rule finds and no {@code allow} silences. */
  public static List<String> mistakes() {
    return Mistakes.IDS;
  }

  /** Every id a finding can carry, sorted. */
  public static SortedSet<String> ids() {
    return IDS;
  }

  public static Optional<Rule> rule(String id) {
    return RULES.stream().filter(r -> r.id().equals(id)).findFirst();
  }

  private static SortedSet<String> allIds() {
    SortedSet<String> ids = new TreeSet<>(Mistakes.IDS);
    RULES.forEach(r -> ids.add(r.id()));
    return java.util.Collections.unmodifiableSortedSet(ids);
  }
}
