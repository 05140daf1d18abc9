package slipday.nextseason;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Bed;
import slipday.garden.Cross;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.record.Fact;

/**
 * What can follow this season: which lot comes after which planting, how many plants of it, in
 * which bed, and what is left out and why.
 *
 * @param garden this season's
 * @param year the next season, by its first year
 * @param left seeds of each lot after this season, by its name; none where never counted
 * @param followers by this season's planting, the names of those that follow it
 * @param dropped lines given up, by name
 */
public record NextSeason(
    Garden garden,
    int year,
    List<Sown> plantings,
    List<Made> crosses,
    List<LeftOut> leftOut,
    List<Resting> resting,
    Map<String, Integer> left,
    Map<String, List<String>> followers,
    Map<String, Fact.Dropped> dropped) {
  public NextSeason {
    plantings = List.copyOf(plantings);
    crosses = List.copyOf(crosses);
    leftOut = List.copyOf(leftOut);
    resting = List.copyOf(resting);
    left = Map.copyOf(left);
    followers = Map.copyOf(followers);
    dropped = Map.copyOf(dropped);
  }

  /** Why a lot is sown. */
  public enum Role {
    /** The line goes on, from seed of this season. */
    CARRIED_ON,
    /** The lot sown this season is sown again. */
    AGAIN,
    /** One plant's selfed seed of a line that is being fixed. */
    FAMILY,
    /** An older generation beside a newer one, to tell seasons from gain. */
    CHECK,
    /** Seed of a cross made this season. */
    NEW_CROSS
  }

  /**
   * A lot to be sown.
   *
   * @param from this season's planting whose ways it is grown by
   * @param bed empty where the planting it follows has none
   * @param fruits to be pollinated by hand, 0 for none
   * @param fromPlants at least so many plants are to bear them, 0 where it does not matter
   * @param toSow seeds for its plants in 19 of 20 cases
   * @param remnant seeds left after that; empty where the lot was never counted
   * @param why sentences for the gardener
   */
  public record Sown(
      Lot lot,
      Planting from,
      Role role,
      Optional<Bed> bed,
      int plants,
      boolean selfed,
      int fruits,
      int fromPlants,
      boolean seedSaved,
      int toSow,
      Optional<Integer> remnant,
      List<String> why) {
    public Sown {
      why = List.copyOf(why);
    }

    public String name() {
      return lot.name();
    }

    Sown in(Optional<Bed> other, List<String> words) {
      return new Sown(
          lot,
          from,
          role,
          other,
          plants,
          selfed,
          fruits,
          fromPlants,
          seedSaved,
          toSow,
          remnant,
          words);
    }
  }

  /** A cross still to be made, with the plantings that stand in for its parents. */
  public record Made(Cross cross, String seedParent, String pollenParent) {}

  /** What this season had and the next one has not. */
  public record LeftOut(String name, String why) {}

  /**
   * A lot that lies in the seed box for a season.
   *
   * @param growOnBy the season by which it is best grown on
   */
  public record Resting(Lot lot, Line line, Optional<Integer> left, Optional<Integer> growOnBy) {}

  /** What can follow a season, with the rules of {@link Successors} and {@link BedPlan}. */
  public static NextSeason of(Garden garden) {
    return new Successors(garden).nextSeason();
  }
}
