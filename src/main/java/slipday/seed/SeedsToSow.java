package slipday.seed;

import java.util.Optional;
import java.util.OptionalInt;
import slipday.garden.CropFacts;
import slipday.garden.Lot;
import slipday.genetics.Odds;
import slipday.measure.Reasoned;

/** How many seeds of a lot give the plants wanted. */
public final class SeedsToSow {
  /** In 19 of 20 cases. */
  public static final double SURE = 0.95;

  /** Where a plant takes more seeds than these, the seed is as good as dead. */
  public static final int HARDLY_ANY = 200;

  private SeedsToSow() {}

  /**
   * With the lot's own test and its uncertainty; else at its kind's least germination for sale;
   * else as if every seed came up.
   *
   * @return {@link Odds#MOST} where no number of seeds is enough, or hardly any comes up: then the
   *     figure would tell of the prior more than of the seed
   */
  public static int of(Lot lot, int plants) {
    Optional<Lot.GerminationTest> test = lot.tested().map(Reasoned::value);
    if (test.isPresent()) {
      int seedlings = test.get().seedlings();
      return orHardlyAny(Odds.seedsToSow(plants, seedlings, test.get().of(), SURE), plants);
    }
    return lot.line()
        .facts()
        .get(CropFacts.LEAST_GERMINATION)
        .map(least -> Odds.seedsToSow(plants, least.value(), SURE).orElse(Odds.MOST))
        .orElse(plants);
  }

  private static int orHardlyAny(OptionalInt seeds, int plants) {
    return seeds.stream()
        .filter(n -> n <= (long) HARDLY_ANY * plants)
        .findFirst()
        .orElse(Odds.MOST);
  }

  /**
   * As many as that, or more where its seed is by now expected to come up worse than was reckoned.
   */
  public static int of(Lot lot, int plants, Outlook outlook) {
    int fresh = of(lot, plants);
    return outlook
        .germination()
        .map(g -> orHardlyAny(Odds.seedsToSow(plants, g.usual(), SURE), plants))
        .map(aged -> Math.max(fresh, aged))
        .orElse(fresh);
  }

  /**
   * How many plants so many seeds are sure to give: the other way round.
   *
   * @param most it is not asked beyond so many
   */
  public static int plants(Lot lot, int seeds, int most, Outlook outlook) {
    int low = 0;
    int high = Math.min(seeds, most);
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (of(lot, middle, outlook) <= seeds) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }
}
