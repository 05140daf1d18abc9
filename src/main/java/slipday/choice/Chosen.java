package slipday.choice;

import java.util.List;
import java.util.Optional;

/**
 * The fruits whose seed goes on, and what is to be expected of it.
 *
 * @param candidates whom it was chosen from
 * @param parts the fruits, the largest share first
 * @param plants of the next generation that the shares are dealt in
 * @param limits what the choice keeps to, and how far each is used
 * @param index the mean of what is chosen: 0 where all aims are met, below 0 elsewhere; empty where
 *     nothing can be valued
 * @param bound no other choice within the limits is better than this; empty likewise
 * @param proved whether none is better at all
 * @param unlimited the index of the best without limits; empty likewise
 * @param kinship how near of kin and how inbred
 * @param promises by trait, those aimed at first
 * @param release what selfing can still set free; empty for a line that is to be kept
 * @param remnants seed to keep that is not chosen, the best first
 * @param notes what is lacking, taken for granted or advised, a sentence each
 */
public record Chosen(
    Candidates candidates,
    List<Part> parts,
    int plants,
    List<Bound> limits,
    Optional<Double> index,
    Optional<Double> bound,
    boolean proved,
    Optional<Double> unlimited,
    Kinship kinship,
    List<Promise> promises,
    Optional<Release> release,
    List<Remnant> remnants,
    List<String> notes) {
  public Chosen {
    parts = List.copyOf(parts);
    limits = List.copyOf(limits);
    promises = List.copyOf(promises);
    remnants = List.copyOf(remnants);
    notes = List.copyOf(notes);
  }

  /**
   * A fruit that is chosen.
   *
   * @param plants how many plants of the next generation are grown of it
   */
  public record Part(Candidate plant, Candidate.SeedFruit fruit, int plants) {
    public String tag() {
      return fruit.fruit().tag();
    }
  }

  /**
   * A limit.
   *
   * @param says what it asks for, in words
   * @param used what the choice has of it, in the same measure
   */
  public record Bound(String says, double used) {}

  /**
   * @param parents plants that bear the seed
   * @param parentsAlike how many used alike they count for: 1 ÷ the sum of their squared shares
   * @param effectiveSize 1 ÷ the sum of the squared shares of all plants that give pollen or seed
   * @param coancestry mean of all pairs of the chosen, each with itself included
   * @param coancestryOfAll the same of all that may be parents, used alike: what was there to
   *     choose from
   * @param inbreedingNow mean F of all that may be parents
   * @param inbreedingNext mean F of the chosen seed
   */
  public record Kinship(
      int parents,
      double parentsAlike,
      double effectiveSize,
      double coancestry,
      double coancestryOfAll,
      double inbreedingNow,
      double inbreedingNext) {}

  /**
   * What the next generation will be like in one trait, grown beside this one.
   *
   * @param aim what the goal says; empty where it says nothing
   * @param now the candidates' mean
   * @param next the expected mean of the chosen seed, between what it is in 4 cases of 5
   * @param unlimited that of the best choice without limits
   * @param aimed whether the expected mean meets the aim; empty without one
   */
  public record Promise(
      Trait trait,
      Optional<String> aim,
      double now,
      Predicted next,
      Optional<Double> unlimited,
      Optional<Boolean> aimed) {}

  /**
   * What selfing can still set free in the chosen families.
   *
   * @param within the share of the additive differences among plants of the next generation that
   *     lies within families
   * @param shown the share of all that selfing can bring out that differs between plants by now
   * @param traits by trait
   */
  public record Release(double within, double shown, List<TraitRelease> traits) {
    public Release {
      traits = List.copyOf(traits);
    }
  }

  /**
   * @param deviation standard deviation of breeding values within a family of the next generation
   * @param ceiling the same among all pure lines that the families can end in
   * @param best how far from the expected mean, towards the aim, the best of a hundred such lines
   *     lies: no selfing brings more
   * @param inReach whether the aim lies within that; empty without an aim
   */
  public record TraitRelease(
      Trait trait, double deviation, double ceiling, double best, Optional<Boolean> inReach) {}

  /**
   * Seed that is kept and not sown.
   *
   * @param seeds how many there will be; empty where nobody counted
   * @param chosen whether some of it is sown
   */
  public record Remnant(
      Candidate plant, Candidate.SeedFruit fruit, Optional<Integer> seeds, boolean chosen) {}
}
